import { useEffect, useState } from 'react';
import { useWorkbook } from '../../state/use-workbook';
import type { WorkbookIntents } from '../../state/workbook-state';
import { Button } from '../../ui/fields/button';
import { useWords } from '../../ui/words';

type Binned = Extract<Awaited<ReturnType<WorkbookIntents['listBin']>>, { ok: true }>['value'];

/** What was deleted in the last thirty days, each a press away from the shelf. */
export function Bin() {
  const words = useWords().shelf;
  const listBin = useWorkbook((state) => state.listBin);
  const restore = useWorkbook((state) => state.restoreFromBin);
  const rows = useWorkbook((state) => state.rows);
  const save = useWorkbook((state) => state.save);
  const [binned, setBinned] = useState<Binned>([]);
  useEffect(() => {
    let looking = true;
    void listBin().then((result) => {
      if (looking && result.ok) setBinned(result.value);
    });
    return () => {
      looking = false;
    };
  }, [listBin, save]);
  const lying = binned.filter(({ table, row }) => !rows[table].has(row.id));
  if (lying.length === 0) return <p className="soft">{words.binEmpty}</p>;
  return (
    <ul className="bin">
      {lying.map((thing) => (
        <li key={thing.id}>
          <span>{thing.row.name}</span>
          <Button tone="quiet" onClick={() => restore(thing)}>
            {words.takeOut}
          </Button>
        </li>
      ))}
    </ul>
  );
}
