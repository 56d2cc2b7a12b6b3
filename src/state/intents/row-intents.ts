import { type AnyRow, readRow, TABLES, type TableName } from '../../../shared/tables';
import { compareRows } from '../keeping/field-changes';
import { forgetTypedBack } from '../keeping/history';
import { checkSettings } from '../keeping/notes';
import type { RowChange } from '../keeping/steps';
import { isoTime } from '../ports';
import { rowAt } from '../shelf';
import type { Made, MadeAll, NewRow, Refusals, WorkbookIntents } from '../workbook-state';
import type { Workshop } from '../workshop';
import { type Content, firstEvent, firstRecipe } from './first-rows';

const NOT_THERE: Refusals = [
  { code: 'missing-field', path: 'id', found: 'nothing', expected: 'a row that is there' },
];

const isExample = (row: AnyRow): boolean => 'example' in row && row.example === true;

type RowIntents = Pick<
  WorkbookIntents,
  | 'edit'
  | 'editTogether'
  | 'create'
  | 'createAll'
  | 'createTogether'
  | 'createRecipe'
  | 'createEvent'
  | 'duplicate'
  | 'remove'
  | 'makeMine'
  | 'undo'
  | 'redo'
  | 'takeBack'
  | 'typedBack'
  | 'changeSettings'
  | 'dismiss'
>;

/** A row without what is its own alone. */
function contentOf(row: AnyRow) {
  const { id: _id, rev: _rev, createdAt: _made, changedAt: _changed, ...content } = row;
  return content;
}

/** Changing rows. Nothing gets onto the shelf that could not be read back from storage. */
export function rowIntents(shop: Workshop): RowIntents {
  const making = rowMaking(shop);
  return {
    createAll: making.createAll,
    create: making.create,
    createTogether: (label, parts) => making.createTogether(label, parts),
    ...rowEditing(shop),
    createRecipe: (given) =>
      making.create('recipes', firstRecipe(given, shop.state.settings.unit), 'New box'),
    createEvent: (given) =>
      making.create('events', firstEvent({ currency: shop.state.settings.currency, ...given }), 'New event'),

    duplicate(key, name) {
      const row = rowAt(shop.state.rows, key);
      if (!row) return { ok: false, refusals: NOT_THERE };
      const photos = [...shop.state.rows.photos.values()].filter(({ recipeId }) => recipeId === key.id);
      const parts = [
        { table: key.table, content: () => ({ ...contentOf(row), name }) },
        ...photos.map((photo) => ({
          table: 'photos',
          content: ([recipeId]: readonly string[]) => ({ ...contentOf(photo), recipeId }),
        })),
      ] as NewRow[];
      const made = making.createTogether('Copy', parts, row.name);
      return made.ok ? { ok: true, id: made.ids[0] ?? '' } : made;
    },

    remove(key) {
      const row = rowAt(shop.state.rows, key);
      const step = row && shop.take('Delete', [{ ...key, do: 'remove', row }]);
      if (step) shop.notify('deleted', row.name, step);
    },

    makeMine() {
      const freed = (table: TableName): RowChange[] =>
        [...shop.state.rows[table].values()].filter(isExample).map(({ id }) => ({
          table,
          id,
          do: 'edit',
          fields: [{ at: ['example'], before: true, after: undefined }],
        }));
      shop.take('Make it yours', TABLES.flatMap(freed));
      shop.set({ notices: shop.state.notices.filter(({ code }) => code !== 'exampleStays') });
    },

    undo: () => shop.move('undo'),
    redo: () => shop.move('redo'),
    typedBack: () => shop.set({ history: forgetTypedBack(shop.state.history, shop.ports.now()) }),

    takeBack(noticeKey) {
      const notice = shop.state.notices.find(({ key }) => key === noticeKey);
      if (notice?.step)
        shop.takeBack(notice.step, notice.code === 'deleted' ? 'Restore' : 'Take out what was read in');
      shop.set({ notices: shop.state.notices.filter(({ key }) => key !== noticeKey) });
    },

    changeSettings(change) {
      const checked = checkSettings({ ...shop.state.settings, ...change });
      if ('refusals' in checked) return checked.refusals;
      shop.set({ settings: checked.settings });
      shop.saver.touchNotes();
      return [];
    },

    dismiss: (noticeKey) => shop.set({ notices: shop.state.notices.filter(({ key }) => key !== noticeKey) }),
  };
}

/** New rows, each read as storage will read it. */
function rowMaking(shop: Workshop) {
  const createAll = <T extends TableName>(
    table: T,
    contents: readonly Content<T>[],
    label: string,
  ): MadeAll =>
    createTogether(
      label,
      contents.map((content) => ({ table, content: () => content }) as NewRow),
    );

  function createTogether(label: string, parts: readonly NewRow[], copyOf: string | null = null): MadeAll {
    const now = isoTime(shop.ports.now());
    const changes: RowChange[] = [];
    for (const { table, content } of parts) {
      const id = shop.ports.newId();
      const { example: _, ...own }: Record<string, unknown> = content(changes.map((change) => change.id));
      const reading = readRow(table, { ...own, id, rev: 0, createdAt: now, changedAt: now });
      if (!reading.ok) return reading;
      changes.push({ table, id, do: 'add', row: reading.row });
    }
    const step = changes.length > 0 ? shop.take(label, changes) : null;
    if (step && copyOf !== null) shop.notify('copied', copyOf, step);
    return { ok: true, ids: changes.map(({ id }) => id) };
  }

  function create<T extends TableName>(table: T, content: Content<T>, label: string): Made {
    const made = createAll(table, [content], label);
    return made.ok ? { ok: true, id: made.ids[0] ?? '' } : made;
  }

  return { create, createAll, createTogether };
}

/** An edit whose table and change are known to belong together. */
interface AnyEdit {
  readonly table: TableName;
  readonly id: string;
  readonly change: (row: AnyRow) => AnyRow;
}

/** Changes of rows that are there, as one step; the example keeps its own. */
function rowEditing(shop: Workshop): Pick<RowIntents, 'edit' | 'editTogether'> {
  function editAll(label: string, edits: readonly AnyEdit[]): Refusals {
    const changes: RowChange[] = [];
    for (const { table, id, change } of edits) {
      const before = shop.state.rows[table].get(id);
      if (!before) return NOT_THERE;
      if (isExample(before)) {
        // Nothing is wrong with what was typed; the example just keeps its own.
        shop.notify('exampleStays', before.name);
        return [];
      }
      const reading = readRow(table, change(before));
      if (!reading.ok) return reading.refusals;
      const fields = compareRows(before, reading.row);
      if (fields.length > 0) changes.push({ table, id, do: 'edit', fields });
    }
    if (changes.length > 0) shop.take(label, changes);
    return [];
  }

  return {
    editTogether: (label, edits) => editAll(label, edits as readonly AnyEdit[]),
    edit: (table, id, label, change) => editAll(label, [{ table, id, change } as unknown as AnyEdit]),
  };
}
