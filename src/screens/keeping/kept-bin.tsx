import { useCallback, useState } from 'react';
import { nameOfRaw, textOfBinnedAside } from '../../state/keeping/as-it-is';
import type { Keeping } from '../../state/keeping/keeping';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { useKeepingWords } from '../../ui/words/keeping-words';
import { FreeRoom } from './free-room';
import { saveText } from './save-text';
import { useAnswer } from './use-keeping';

/** What was deleted on the last thirty days of use: what can be read goes back to the shelf, what cannot goes back to where it was set aside. */
export function KeptBin({ keeping }: { keeping: Keeping }) {
  const words = useKeepingWords();
  const listBin = useWorkbook((state) => state.listBin);
  const restore = useWorkbook((state) => state.restoreFromBin);
  const shelf = useWorkbook((state) => state.rows);
  const quarantined = useWorkbook((state) => state.quarantined);
  const [moved, setMoved] = useState(0);
  const bin = useAnswer(listBin, moved);
  const unread = useAnswer(
    useCallback(() => keeping.listBinAside(), [keeping]),
    `${moved} ${quarantined.length}`,
  );
  const lying = bin?.ok ? bin.value.filter(({ table, row }) => !shelf[table].has(row.id)) : [];
  const asideLying = unread?.ok ? unread.value : [];
  const stays = (deletedAt: string) => words.deletedAt(words.when(deletedAt, keeping.now()));
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
      {lying.length + asideLying.length > 0 && (
        <FreeRoom
          ask={words.emptyBin}
          sure={words.emptyBinSure(lying.length + asideLying.length)}
          onSure={() => void keeping.freeRoom(false).then(() => setMoved((count) => count + 1))}
        />
      )}
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
