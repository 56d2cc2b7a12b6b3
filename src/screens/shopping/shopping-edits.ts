import type { Bought, FavorEvent } from '../../../shared/workbook';
import { type ShoppingRow, stockPaper, stockSupply, tickOff, unitsOf } from '../../core/plan';
import { useWorkbook } from '../../state/use-workbook';
import type { RowEdit } from '../../state/workbook-state';
import { usePageWords } from '../../ui/words';

/** Ticking the list off and putting what was bought on hand; each is one step that undo takes back. */
export function useShoppingEdits(event: FavorEvent) {
  const words = usePageWords().buying;
  const edit = useWorkbook((state) => state.edit);
  const editTogether = useWorkbook((state) => state.editTogether);
  const rows = useWorkbook((state) => state.rows);

  const put = (label: string, change: (bought: readonly Bought[]) => Bought[]) =>
    void edit('events', event.id, label, (old) => ({ ...old, bought: change(old.bought ?? []) }));
  const isSame = (a: Bought) => (b: Bought) => a.of === b.of && a.received === b.received;

  /** The entries marked, and as many units more (or fewer) on hand. */
  function move(label: string, entries: readonly Bought[], received: boolean): void {
    const stock = entries.flatMap((entry): RowEdit[] => {
      const units = received ? unitsOf(entry) : -unitsOf(entry);
      if (rows.papers.has(entry.of))
        return [{ table: 'papers', id: entry.of, change: (paper) => stockPaper(paper, units) }];
      if (rows.supplies.has(entry.of))
        return [{ table: 'supplies', id: entry.of, change: (supply) => stockSupply(supply, units) }];
      return [];
    });
    const mark = (old: FavorEvent) => ({
      ...old,
      bought: (old.bought ?? []).map((each) => (entries.includes(each) ? { ...each, received } : each)),
    });
    void editTogether(label, [{ table: 'events', id: event.id, change: mark }, ...stock]);
  }

  return {
    tick: (row: ShoppingRow) => put(words.tickOf(row.name), (bought) => [...bought, tickOff(row)]),
    untick: (entry: Bought) => put(words.untick, (bought) => bought.filter((each) => !isSame(entry)(each))),
    receive: (label: string, entries: readonly Bought[]) => move(label, entries, true),
    takeBack: (label: string, entry: Bought) => move(label, [entry], false),
  };
}

export type ShoppingEdits = ReturnType<typeof useShoppingEdits>;
