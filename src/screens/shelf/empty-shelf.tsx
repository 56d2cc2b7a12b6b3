import { useState } from 'react';
import { Link, useOutletContext } from 'react-router';
import { styleById } from '../../core/styles';
import { Button } from '../../ui/fields/button';
import { StylePicture } from '../../ui/folded/style-picture';
import { START } from '../../ui/frame/addresses';
import type { ExampleName, ShelfDoors } from '../../ui/frame/shelf-doors';
import { useWords } from '../../ui/words';

/** A shelf with nothing on it: what this is for, and one button that fills it with a finished example. */
export function EmptyShelf({ exampleFailed }: { readonly exampleFailed: boolean }) {
  const words = useWords().shelf;
  const { openExample } = useOutletContext<ShelfDoors>();
  const [failed, setFailed] = useState(exampleFailed);
  const style = styleById('open-top');

  const open = async (name: ExampleName) => setFailed(!(await openExample(name)));

  return (
    <section className="empty-shelf">
      <div className="empty-shelf-words">
        <h1>{words.promise}</h1>
        <p>{words.promiseWhy}</p>
        <p className="empty-shelf-acts">
          <Button tone="act" onClick={() => void open('supper')}>
            {words.openDemo}
          </Button>
          <Button onClick={() => void open('season')}>{words.openSeason}</Button>
          <Link className="button button-plain" to={START}>
            {words.ownBox}
          </Link>
        </p>
        {failed && <p role="alert">{words.demoFailed}</p>}
        <p className="soft">{words.staysHere}</p>
      </div>
      {style && <StylePicture style={style} />}
    </section>
  );
}
