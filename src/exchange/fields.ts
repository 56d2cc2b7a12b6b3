import type { AnyRow } from '../../shared/tables';
import type { RowChange } from '../state/keeping/steps';
import { keyText, type RowKey } from '../state/shelf';

/**
 * A row as single values, each under a path: `[row]` stands for the row itself, `[row, field]` for a field, `[row, field, name]` for a named
 * size or option, and `[row, 'run', 'stages', entry]` for what one device counted at one stage. Two devices that write different paths never meet.
 */
export type Path = readonly string[];
export type Values = ReadonlyMap<string, unknown>;

type Fields = Readonly<Record<string, unknown>>;
const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export const textOf = (path: Path): string => JSON.stringify(path);

interface Counted {
  readonly stage: string;
  readonly by?: string;
}
const entryOf = ({ stage, by = '' }: Counted): string => `${stage} ${by}`;
const isCounts = (field: string, name: string, value: unknown): value is readonly Counted[] =>
  field === 'run' && name === 'stages' && Array.isArray(value);

/** What one field of a row comes to. */
function valuesOfField(row: string, field: string, value: unknown): [Path, unknown][] {
  if (!isFields(value)) return [[[row, field], value]];
  // The field itself, for one that has no names in it yet.
  return [
    [[row, field], {}],
    ...Object.entries(value).flatMap(([name, inner]) => valuesOfName(row, field, name, inner)),
  ];
}

function valuesOfName(row: string, field: string, name: string, value: unknown): [Path, unknown][] {
  if (!isCounts(field, name, value)) return [[[row, field, name], value]];
  return [
    [[row, field, name], []],
    ...value.map((entry): [Path, unknown] => [[row, field, name, entryOf(entry)], entry]),
  ];
}

/** Every value of a row. */
function valuesOf(key: RowKey, { ...row }: AnyRow): [Path, unknown][] {
  const text = keyText(key);
  const fields = Object.entries({ ...row, rev: 0 }).filter(([, value]) => value !== undefined);
  return [[[text], 1], ...fields.flatMap(([field, value]) => valuesOfField(text, field, value))];
}

/** The row that values come to; null if it is not there. Counts stand in one order on every device. */
export function rowOf(text: string, values: Values): Fields | null {
  if (!values.has(textOf([text]))) return null;
  const row: Record<string, unknown> = {};
  // Shorter paths first: a field stands before what is named in it.
  const inOrder = [...values]
    .map(([place, value]) => ({ path: JSON.parse(place) as string[], place, value }))
    .sort((a, b) => a.path.length - b.path.length || (a.place < b.place ? -1 : 1));
  for (const { path, value } of inOrder) {
    const [, field, name, entry] = path;
    if (field === undefined) continue;
    const inner = row[field];
    if (name === undefined) row[field] = value;
    else if (!isFields(inner)) continue;
    else if (entry === undefined) row[field] = { ...inner, [name]: value };
    else if (Array.isArray(inner[name]))
      row[field] = { ...inner, [name]: [...(inner[name] as unknown[]), value] };
  }
  return row;
}

/**
 * What a change writes; `undefined`: takes away. `held`: what is held of the row now. What another device counted is never written over
 * or taken away, except with the whole row.
 */
export function writesOf(change: RowChange, held: Values, device: string): [Path, unknown][] {
  const text = keyText(change);
  const gone = (paths: Iterable<string>): [Path, unknown][] =>
    [...paths].map((place) => [JSON.parse(place) as string[], undefined]);
  if (change.do === 'remove') return gone(held.keys());
  const edits = change.do === 'edit' ? change.fields : null;
  const wanted = edits
    ? edits.flatMap(({ at: [field, name], after }) => {
        if (after === undefined) return [];
        return name === undefined
          ? valuesOfField(text, field, after)
          : valuesOfName(text, field, name, after);
      })
    : 'row' in change
      ? valuesOf(change, change.row)
      : [];
  const touched = edits ? edits.map(({ at }): readonly string[] => at) : [[]];
  const under = (place: string) => {
    const [, ...path] = JSON.parse(place) as string[];
    return touched.some((at) => at.every((part, index) => path[index] === part));
  };
  const before = new Map(
    (edits ?? []).flatMap(({ at: [field, name], before: value }): [string, string][] =>
      (name === undefined ? valuesOfField(text, field, value) : valuesOfName(text, field, name, value)).map(
        ([path, part]) => [textOf(path), JSON.stringify(part)],
      ),
    ),
  );
  const tookIn = new Set(
    wanted
      .filter(([path, value]) => before.get(textOf(path)) !== JSON.stringify(value))
      .map(([path]) => textOf(path)),
  );
  const named = new Set(wanted.map(([path]) => textOf(path)));
  const isOthers = (path: Path) => {
    const by = path[3]?.split(' ')[1];
    if (by === undefined || by === '' || by === device) return false;
    // Helpers hold no key of the shelf: what they counted is written by whichever device took it in, and by no other.
    return !(by.startsWith('h-') && tookIn.has(textOf(path)));
  };
  const stale = [...held.keys()].filter(
    (place) => under(place) && !named.has(place) && !isOthers(JSON.parse(place) as string[]),
  );
  const fresh = wanted.filter(([path, value]) => {
    const place = textOf(path);
    if (held.has(place) && isOthers(path)) return false;
    return !held.has(place) || JSON.stringify(held.get(place)) !== JSON.stringify(value);
  });
  return [...gone(stale), ...fresh];
}
