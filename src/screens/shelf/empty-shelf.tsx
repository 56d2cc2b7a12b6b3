import { useEffect, useState } from 'react';
import { Link } from 'react-router';
import { styleById } from '../../core/styles';
import { useWorkbook } from '../../state/use-workbook';
import { NEW_RECIPE } from '../../ui/addresses';
import { Button } from '../../ui/button';
import { StylePicture } from '../../ui/style-picture';
import { useWords } from '../../ui/words';
import { useOpenExample } from './open-example';

/** A shelf with nothing on it: what this is for, and one button that fills it with a finished example. The first time, the example opens by itself. */
export function EmptyShelf() {
  const words = useWords().shelf;
  const openExample = useOpenExample();
  const fresh = useWorkbook((state) => state.fresh);
  const [opening, setOpening] = useState(fresh);
  const [failed, setFailed] = useState(false);
  const style = styleById('open-top');

  const open = async () => setFailed(!(await openExample()));

  useEffect(() => {
    if (!opening) return;
    let here = true;
    void openExample().then((opened) => {
      if (!here || opened) return;
      setFailed(true);
      setOpening(false);
    });
    return () => {
      here = false;
    };
  }, [opening, openExample]);

  if (opening) return <div className="page-opening" aria-busy="true" />;
  return (
    <section className="empty-shelf">
      <div className="empty-shelf-words">
        <h1>{words.promise}</h1>
        <p>{words.promiseWhy}</p>
        <p className="empty-shelf-acts">
          <Button tone="act" onClick={() => void open()}>
            {words.openDemo}
          </Button>
          <Link className="button button-plain" to={NEW_RECIPE}>
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
