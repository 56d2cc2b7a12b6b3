import { useState } from 'react';
import { Link, useNavigate, useOutletContext } from 'react-router';
import { readWorkbook } from '../../../shared/read-workbook';
import { styleById } from '../../core/styles';
import { useWorkbook } from '../../state/use-workbook';
import { NEW_RECIPE, pageAddress } from '../../ui/addresses';
import { Button } from '../../ui/button';
import type { ShelfDoors } from '../../ui/shelf-doors';
import { StylePicture } from '../../ui/style-picture';
import { useWords } from '../../ui/words';

/** A shelf with nothing on it: what this is for, and one button that fills it with a finished example. */
export function EmptyShelf() {
  const words = useWords().shelf;
  const { fetchDemo } = useOutletContext<ShelfDoors>();
  const planImport = useWorkbook((state) => state.planImport);
  const importPlanned = useWorkbook((state) => state.importPlanned);
  const navigate = useNavigate();
  const [failed, setFailed] = useState(false);
  const style = styleById('open-top');

  const openDemo = async () => {
    const text = await fetchDemo();
    const reading = text === null ? null : readWorkbook(text);
    if (!reading?.ok) {
      setFailed(true);
      return;
    }
    const plan = planImport(reading.file);
    importPlanned(plan);
    const event = plan.rows.find(({ table }) => table === 'events');
    if (event) void navigate(pageAddress({ kind: 'event', id: event.row.id }, 'event'));
  };

  return (
    <section className="empty-shelf">
      <div className="empty-shelf-words">
        <h1>{words.promise}</h1>
        <p>{words.promiseWhy}</p>
        <p className="empty-shelf-acts">
          <Button tone="act" onClick={() => void openDemo()}>
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
