import type { AnyRow } from '../../shared/tables';
import type { RowChange } from '../state/keeping/steps';
import type { ComingRow, Exchange } from '../state/ports';
import { keyText, type RowKey } from '../state/shelf';
import { withHelpersOf, withoutHelpers } from './fields';
import type { SealedRows } from './sealed-rows';

/** A maker's own device: everything, both ways. */
export function wholeExchange(rows: SealedRows, agreed: readonly ComingRow[], told: () => void): Exchange {
  return {
    tell(changes) {
      rows.tell(changes);
      told();
    },
    watch: (listener) => rows.watch((coming) => coming.length > 0 && listener(coming)),
    told: withoutHelpers,
    agreed: () => agreed,
    all: rows.all,
    now: rows.now,
  };
}

/** A learner's: everything comes, marked so that nothing of it is changed here, and nothing goes. */
export function lookExchange(rows: SealedRows, agreed: readonly ComingRow[]): Exchange {
  const asExample = (coming: ComingRow): ComingRow =>
    coming.row === null || coming.table === 'photos'
      ? coming
      : { ...coming, row: { ...coming.row, example: true } };
  return {
    tell: () => undefined,
    told: (row) => row,
    watch: (listener) => rows.watch((coming) => coming.length > 0 && listener(coming.map(asExample))),
    agreed: () => agreed.map(asExample),
    all: () => rows.all().map(asExample),
    now: (key) => {
      const coming = rows.now(key);
      return coming && asExample(coming);
    },
  };
}

/** A helper's: the event comes with what it names, and only what was counted goes. */
export function helperExchange(rows: SealedRows, agreed: readonly ComingRow[], told: () => void): Exchange {
  const isCount = (change: RowChange): boolean =>
    change.table === 'events' &&
    change.do === 'edit' &&
    change.fields.some(({ at: [field] }) => field === 'run');
  const alone = (change: RowChange): RowChange =>
    change.do === 'edit'
      ? { ...change, fields: change.fields.filter(({ at: [field] }) => field === 'run') }
      : change;
  return {
    ...wholeExchange(rows, agreed, told),
    told: (row) => row,
    tell(changes) {
      const counts = changes.filter(isCount).map(alone);
      if (counts.length > 0) rows.tell(counts);
      told();
    },
  };
}

/** The maker's side of a bench link: the rows of one event go, and of what comes only the counts are taken. */
export function benchExchange(
  rows: SealedRows,
  agreed: readonly ComingRow[],
  event: string,
  partOf: () => readonly (RowKey & { readonly row: AnyRow })[],
): Exchange {
  const own = () => partOf().find(({ table, id }) => table === 'events' && id === event)?.row ?? null;
  const countsOf = (coming: ComingRow): ComingRow[] => {
    const [mine, theirs] = [own(), coming.row];
    if (coming.table !== 'events' || coming.id !== event || !mine || typeof theirs !== 'object' || !theirs)
      return [];
    return [{ ...coming, row: withHelpersOf(mine, theirs) }];
  };
  const send = () => {
    for (const { table, id, row } of partOf()) rows.tell([{ table, id, do: 'add', row }]);
  };
  return {
    told: (row) => row,
    tell(changes) {
      const part = new Set(partOf().map(keyText));
      if (changes.some((change) => part.has(keyText(change)))) send();
    },
    watch: (listener) =>
      rows.watch((coming) => {
        const counts = coming.flatMap(countsOf);
        if (counts.length > 0) listener(counts);
      }),
    agreed: () => agreed.flatMap(countsOf),
    all: () => rows.all().flatMap(countsOf),
    now: (key) => rows.now(key),
  };
}
