import { useCallback, useState } from 'react';
import { nameOfRaw, textOfBinnedAside } from '../../state/keeping/as-it-is';
import type { Keeping } from '../../state/keeping/keeping';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { useKeepingWords } from '../../ui/words/keeping-words';
import { saveText } from './save-text';
import { useAnswer } from './use-keeping';

const STAYS_MS = 30 * 86_400_000;

/** What was deleted in the last thirty days: what can be read goes back to the shelf, what cannot goes back to where it was set aside. */
export function KeptBin({ keeping }: { keeping: Keeping }) {
  const words = useKeepingWords();
  const listBin = useWorkbook((state) => state.listBin);
  const restore = useWorkbook((state) => state.restoreFromBin);
  const shelf = useWorkbook((state) => state.rows);
  const quarantined = useWorkbook((state) => state.quarantined);
  const [moved, setMoved] = useState(0);
  const bin = useAnswer(listBin);
  const unread = useAnswer(
    useCallback(() => keeping.listBinAside(), [keeping]),
    `${moved} ${quarantined.length}`,
  );
  const lying = bin?.ok ? bin.value.filter(({ table, row }) => !shelf[table].has(row.id)) : [];
  const asideLying = unread?.ok ? unread.value : [];
  const stays = (deletedAt: string) =>
    words.leavesBin(
      words.when(deletedAt, keeping.now()),
      words.day(new Date(Date.parse(deletedAt) + STAYS_MS).toISOString()),
    );
  return (
    <section aria-labelledby="keeping-bin">
      <h2 id="keeping-bin">{words.bin}</h2>
      <p>
        {words.binWhy} {bin?.ok && lying.length + asideLying.length === 0 && words.binEmpty}
      </p>
      {bin && !bin.ok && <p role="alert">{words.notListed}</p>}
      <ul className="keeping-rows">
        {lying.map((thing) => (
          <BinRow
            key={thing.id}
            name={words.thing(thing.table, thing.row.name)}
            stays={stays(thing.deletedAt)}
            onTakeOut={() => restore(thing)}
          />
        ))}
        {asideLying.map((thing) => {
          const name = nameOfRaw(thing.raw, thing.id);
          return (
            <BinRow
              key={thing.id}
              name={words.thing(thing.table, name)}
              stays={`${words.unreadable} ${stays(thing.deletedAt)}`}
              onTakeOut={() => void keeping.unbinAside(thing).then(() => setMoved((count) => count + 1))}
              onSave={() => saveText(`${words.asideFile} ${name}`, textOfBinnedAside(thing))}
            />
          );
        })}
      </ul>
    </section>
  );
}

interface BinRowProps {
  readonly name: string;
  readonly stays: string;
  readonly onTakeOut: () => void;
  readonly onSave?: () => void;
}

function BinRow({ name, stays, onTakeOut, onSave }: BinRowProps) {
  const words = useKeepingWords();
  return (
    <li>
      <div className="keeping-row-face">
        <strong>{name}</strong>
        <p className="soft">{stays}</p>
      </div>
      <div className="keeping-acts">
        {onSave && (
          <Button onClick={onSave}>
            {words.saveAsIs}
            <span className="said-only">, {name}</span>
          </Button>
        )}
        <Button tone="quiet" onClick={onTakeOut}>
          {words.takeOut}
          <span className="said-only">, {name}</span>
        </Button>
      </div>
    </li>
  );
}
