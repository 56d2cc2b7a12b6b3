import { type AnyRow, readRow, type TableName } from '../../../shared/tables';
import { fileOf } from '../keeping/export-file';
import { compareRows } from '../keeping/field-changes';
import type { RowChange } from '../keeping/steps';
import { keyText, type RowKey, rowAt } from '../shelf';
import type { Refusals, WorkbookIntents } from '../workbook-state';
import type { Workshop } from '../workshop';
import { planImport } from './import-plan';

type FileIntents = Pick<
  WorkbookIntents,
  | 'planImport'
  | 'importPlanned'
  | 'placeExample'
  | 'isStillFresh'
  | 'exportFile'
  | 'noteBackup'
  | 'listBin'
  | 'restoreFromBin'
  | 'listSnapshots'
  | 'restoreSnapshot'
>;

const OPENING = { ok: false, fault: { kind: 'absent', detail: 'storage is not open' } } as const;

/** Files in and out, and what was there before. Nothing here replaces a row without a way back. */
export function fileIntents(shop: Workshop): FileIntents {
  /** Puts an earlier state of a row back: as an edit where it is on the shelf, as a row where it is not. */
  function putBack(key: RowKey, raw: unknown, label: string): Refusals {
    const reading = readRow(key.table, raw);
    if (!reading.ok) return reading.refusals;
    const here = rowAt(shop.state.rows, key);
    const fields = here ? compareRows(here, reading.row) : [];
    const change: RowChange = here ? { ...key, do: 'edit', fields } : { ...key, do: 'add', row: reading.row };
    if (!here || fields.length > 0) shop.take(label, [change]);
    return [];
  }

  return {
    planImport: (file) =>
      planImport(
        file,
        shop.state.rows,
        () => shop.ports.newId(),
        new Set([...shop.state.quarantined.map(keyText)]),
      ),

    importPlanned(plan, label) {
      const added = plan.rows.filter(({ fate }) => fate !== 'same');
      if (added.length === 0) return;
      const changes = added.map(({ table, row }): RowChange => ({ table, id: row.id, do: 'add', row }));
      const step = shop.take(label, changes);
      if (step) shop.notify('imported', `${added.length}`, step);
      void shop.saver.keepNow();
    },

    async isStillFresh() {
      // Another tab may have made something a moment ago, and this one not heard of it.
      const kept = await shop.storage?.readNotes();
      if (kept?.ok && kept.value.generation > 0) shop.set({ fresh: false });
      return shop.state.fresh;
    },

    placeExample(plan) {
      const looked = (row: AnyRow, table: TableName): AnyRow =>
        table === 'photos' ? row : { ...row, example: true };
      const added = plan.rows.filter(({ fate }) => fate !== 'same');
      shop.place(
        added.map(({ table, row }): RowChange => ({ table, id: row.id, do: 'add', row: looked(row, table) })),
      );
    },

    exportFile: (what) => fileOf(shop.state.rows, what),

    noteBackup: (where, holds) => shop.noteBackup(where, holds),

    listBin: async () => shop.storage?.listBin() ?? OPENING,
    restoreFromBin: ({ table, row }) => putBack({ table, id: row.id }, row, 'Restore'),
    listSnapshots: async ({ table, id }) => shop.storage?.listSnapshots(table, id) ?? OPENING,
    restoreSnapshot: ({ table, of, row }) =>
      putBack({ table, id: of.slice(table.length + 1) }, row, 'Go back to an earlier state'),
  };
}
