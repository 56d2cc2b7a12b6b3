import { useState } from 'react';
import { Link } from 'react-router';
import { styleById } from '../../core/styles';
import { Button } from '../../ui/fields/button';
import { StylePicture } from '../../ui/folded/style-picture';
import { START } from '../../ui/frame/addresses';
import { useWords } from '../../ui/words';
import { useOpenExample } from './open-example';

/** A shelf with nothing on it: what this is for, and one button that fills it with a finished example. */
export function EmptyShelf({ exampleFailed }: { readonly exampleFailed: boolean }) {
  const words = useWords().shelf;
  const openExample = useOpenExample();
  const [failed, setFailed] = useState(exampleFailed);
  const style = styleById('open-top');

  const open = async () => setFailed(!(await openExample()));

  return (
    <section className="empty-shelf">
      <div className="empty-shelf-words">
        <h1>{words.promise}</h1>
        <p>{words.promiseWhy}</p>
        <p className="empty-shelf-acts">
          <Button tone="act" onClick={() => void open()}>
            {words.openDemo}
          </Button>
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
