import { Download } from 'lucide-react';
import { useState } from 'react';
import { nameOfRaw, textOfAside, textOfSalvage } from '../../state/keeping/as-it-is';
import type { Keeping } from '../../state/keeping/keeping';
import { useWorkbook } from '../../state/use-workbook';
import type { WorkbookData } from '../../state/workbook-state';
import { Button } from '../../ui/fields/button';
import { useWords } from '../../ui/words';
import { useKeepingWords } from '../../ui/words/keeping-words';
import { saveText } from './save-text';

type Quarantined = WorkbookData['quarantined'][number];

/** What could not be read: what it is and why, to be kept as it is, tried again, or put into the bin. */
export function SetAside({ keeping }: { keeping: Keeping }) {
  const words = useKeepingWords();
  const rows = useWorkbook((state) => state.quarantined);
  const salvaged = useWorkbook((state) => state.salvaged);
  const [said, setSaid] = useState('');
  return (
    <section className="keeping-aside" aria-labelledby="keeping-aside">
      <h2 id="keeping-aside">{words.aside}</h2>
      {salvaged && (
        <>
          <p>{words.salvaged}</p>
          <div className="keeping-acts">
            <Button
              tone="act"
              icon={<Download aria-hidden="true" />}
              onClick={() => saveText(words.salvageFile, textOfSalvage(salvaged))}
            >
              {words.saveAsIs}
            </Button>
          </div>
        </>
      )}
      {rows.length > 0 && (
        <p>
          <strong>{words.asideCount(rows.length)}</strong> {words.asideWhy}
        </p>
      )}
      <ul className="keeping-rows">
        {rows.map((row, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a row without an id of its own has no better key than its place
          <AsideRow key={`${row.table}/${row.id}/${at}`} row={row} keeping={keeping} onSaid={setSaid} />
        ))}
      </ul>
      <p role="status">{said}</p>
    </section>
  );
}

interface AsideRowProps {
  readonly row: Quarantined;
  readonly keeping: Keeping;
  readonly onSaid: (words: string) => void;
}

function AsideRow({ row, keeping, onSaid }: AsideRowProps) {
  const words = useKeepingWords();
  const refusals = useWords().refusals;
  const name = nameOfRaw(row.raw, row.id);
  const thing = words.thing(row.table, name);
  const tryAgain = async () => onSaid(words.tried[await keeping.tryAgain(row)](thing));
  const bin = async () => onSaid(words.tried[(await keeping.binAside(row)) ? 'binned' : 'not-binned'](thing));
  const movable = keeping.canMoveAside() && row.id !== '';
  return (
    <li>
      <div className="keeping-row-face">
        <strong>{thing}</strong>
        <ul className="keeping-reasons soft">
          {row.refusals.slice(0, 4).map((refusal) => (
            <li key={`${refusal.path} ${refusal.code}`}>
              {refusal.path !== '' && <code>{refusal.path}: </code>}
              {refusals[refusal.code](refusal.found, refusal.expected)}
            </li>
          ))}
        </ul>
      </div>
      <div className="keeping-acts">
        <Button onClick={() => saveText(`${words.asideFile} ${name}`, textOfAside([row]))}>
          {words.saveAsIs}
          <span className="said-only">, {thing}</span>
        </Button>
        {movable && (
          <>
            <Button onClick={() => void tryAgain()}>
              {words.tryAgain}
              <span className="said-only">, {thing}</span>
            </Button>
            <Button tone="quiet" onClick={() => void bin()}>
              {words.intoBin}
              <span className="said-only">, {thing}</span>
            </Button>
          </>
        )}
      </div>
    </li>
  );
}
