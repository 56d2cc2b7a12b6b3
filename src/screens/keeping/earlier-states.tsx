import { useCallback, useMemo, useState } from 'react';
import { type EarlierRow, earlierRows } from '../../state/keeping/earlier-states';
import type { Keeping } from '../../state/keeping/keeping';
import { keyText } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { Opening } from '../../ui/frame/opening';
import { useKeepingWords } from '../../ui/words/keeping-words';
import { EarlierLook } from './earlier-look';
import { FreeRoom } from './free-room';
import { useAnswer } from './use-keeping';

/** Rows listed before the maker asks for more. source: our own, two screens of them */
const AT_FIRST = 20;

/** Everything that was changed, with its earlier states: to be looked at, and brought back beside what is there now. */
export function EarlierStates({ keeping }: { keeping: Keeping }) {
  const words = useKeepingWords();
  const shelf = useWorkbook((state) => state.rows);
  const [freed, setFreed] = useState(0);
  const listed = useAnswer(
    useCallback(() => keeping.listEarlier(), [keeping]),
    freed,
  );
  const rows = useMemo(() => (listed?.ok ? earlierRows(listed.value, shelf) : []), [listed, shelf]);
  const [all, setAll] = useState(false);
  const [said, setSaid] = useState('');
  return (
    <section aria-labelledby="keeping-earlier">
      <h2 id="keeping-earlier">{words.earlier}</h2>
      <p>{words.earlierWhy}</p>
      {listed && !listed.ok && <p role="alert">{words.notListed}</p>}
      {listed?.ok && rows.length === 0 && <p className="soft">{words.noEarlier}</p>}
      <ul className="keeping-earlier">
        {(all ? rows : rows.slice(0, AT_FIRST)).map((row) => (
          <EarlierOf key={keyText(row)} row={row} keeping={keeping} onSaid={setSaid} />
        ))}
      </ul>
      {!all && rows.length > AT_FIRST && (
        <Button onClick={() => setAll(true)}>{words.showAll(rows.length)}</Button>
      )}
      {rows.length > 0 && (
        <FreeRoom
          ask={words.forgetEarlier}
          sure={words.forgetEarlierSure}
          onSure={() =>
            void keeping.freeRoom(true).then((freed) => {
              setSaid(freed === null ? words.notListed : words.earlierForgotten);
              setFreed((count) => count + 1);
            })
          }
        />
      )}
      <p role="status">{said}</p>
    </section>
  );
}

interface EarlierOfProps {
  readonly row: EarlierRow;
  readonly keeping: Keeping;
  readonly onSaid: (words: string) => void;
}

/** One thing; its states are drawn only once it is opened. */
function EarlierOf({ row, keeping, onSaid }: EarlierOfProps) {
  const words = useKeepingWords();
  const [open, setOpen] = useState(false);
  const newest = row.states[0]?.snapshot.takenAt ?? '';
  return (
    <li>
      <Opening
        open={open}
        onToggle={setOpen}
        head={
          <>
            <strong>{words.thing(row.table, row.name)}</strong>{' '}
            {!row.onShelf && <span className="soft">{words.notHere}, </span>}
            <span className="soft">
              {words.statesOfRow(row.states.length, words.when(newest, keeping.now()))}
            </span>
          </>
        }
      >
        {open && (
          <ul className="keeping-rows">
            {row.states.map((state) => (
              <EarlierLook key={state.snapshot.id} state={state} keeping={keeping} onSaid={onSaid} />
            ))}
          </ul>
        )}
      </Opening>
    </li>
  );
}
