import type { AnyRow } from '../../../shared/tables';
import { sameValue } from './same-value';

/**
 * One field of a row, before and after; `undefined` where it is not there. Named sizes and options are fields of their own
 * (`['sizesMm', 'width']`); a list is one field, whose entries are told apart by `mergeValues`. This is also the grain at which two devices could be brought together.
 */
export interface FieldChange {
  readonly at: readonly [field: string] | readonly [field: string, name: string];
  readonly before: unknown;
  readonly after: unknown;
}

/** What storage keeps for itself and no maker edits. */
const KEPT_BY_STORAGE = ['id', 'rev', 'changedAt'];

type Fields = Readonly<Record<string, unknown>>;
const fieldsOf = (row: AnyRow): Fields => row;
const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The fields in which two rows of one table differ. */
export function compareRows(before: AnyRow, after: AnyRow): readonly FieldChange[] {
  const [old, now] = [fieldsOf(before), fieldsOf(after)];
  return namesIn(old, now)
    .filter((field) => !KEPT_BY_STORAGE.includes(field))
    .flatMap((field): FieldChange[] => {
      const [was, is] = [old[field], now[field]];
      if (isFields(was) && isFields(is))
        return namesIn(was, is)
          .filter((name) => !sameValue(was[name], is[name]))
          .map((name) => ({ at: [field, name], before: was[name], after: is[name] }));
      return sameValue(was, is) ? [] : [{ at: [field], before: was, after: is }];
    });
}

const namesIn = (a: Fields, b: Fields): string[] => [...new Set([...Object.keys(a), ...Object.keys(b)])];

/** The row with these fields as they were (`before`) or as they became (`after`). */
export function setFields(row: AnyRow, changes: readonly FieldChange[], to: 'before' | 'after'): Fields {
  return changes.reduce<Fields>((fields, change) => {
    const [field, name] = change.at;
    const inner = fields[field];
    return name === undefined
      ? setField(fields, field, change[to])
      : setField(fields, field, setField(isFields(inner) ? inner : {}, name, change[to]));
  }, fieldsOf(row));
}

/** What stands in a field now. */
export function fieldAt(fields: Fields, [field, name]: FieldChange['at']): unknown {
  const value = fields[field];
  if (name === undefined) return value;
  return isFields(value) ? value[name] : undefined;
}

function setField(fields: Fields, name: string, value: unknown): Fields {
  const { [name]: _, ...rest } = fields;
  return value === undefined ? rest : { ...fields, [name]: value };
}

export const contentIsSame = (a: AnyRow, b: AnyRow): boolean => compareRows(a, b).length === 0;

/** Whether foreign data is a change of a field; what it holds is not looked at. */
export const isFieldChange = (raw: unknown): raw is FieldChange =>
  isFields(raw) &&
  Array.isArray(raw['at']) &&
  (raw['at'].length === 1 || raw['at'].length === 2) &&
  raw['at'].every((name) => typeof name === 'string');
