import type { BinnedAside, Quarantined } from '../../storage/port';

/**
 * Rows that cannot be read, as a text to be kept: each with its table, its id, what is wrong with it, and the row itself as it was stored.
 * It is no workbook, and is refused as one.
 */
export const textOfAside = (rows: readonly Quarantined[]): string =>
  rawText({
    holds: 'rows set aside',
    rows: rows.map(({ table, id, refusals, raw }) => ({
      table,
      id,
      why: refusals.map(({ path, code, found, expected }) => ({ path, code, found, expected })),
      row: raw,
    })),
  });

/** A row that lies in the bin and cannot be read, as the same kind of text. */
export const textOfBinnedAside = ({ table, id, raw, deletedAt }: BinnedAside): string =>
  rawText({ holds: 'rows set aside', rows: [{ table, id, deletedAt, row: raw }] });

/** Everything that could be read of a database, store by store, as the same kind of text. */
export const textOfSalvage = (stores: Readonly<Record<string, readonly unknown[]>>): string =>
  rawText({ holds: 'a database as it was found', stores });

/** A text nested deeper than this is read by nobody. Source: our own. */
const DEEPEST = 200;

/** A database may hold what JSON has no word for; nothing of the rest is lost for it. */
function rawText(value: object): string {
  const above: unknown[] = [];
  return `${JSON.stringify(
    value,
    function (this: unknown, _key, inner: unknown) {
      if (typeof inner === 'bigint') return `${inner}`;
      if (typeof inner !== 'object' || inner === null) return inner;
      while (above.length > 0 && above.at(-1) !== this) above.pop();
      if (above.includes(inner) || above.length >= DEEPEST) return '(not written out)';
      const shown = inner instanceof Map || inner instanceof Set ? [...inner] : inner;
      above.push(shown);
      return shown;
    },
    2,
  )}\n`;
}

/** The name a row goes by, read or not; its id where it says none. */
export function nameOfRaw(raw: unknown, id: string): string {
  const name: unknown = typeof raw === 'object' && raw !== null ? Reflect.get(raw, 'name') : null;
  return typeof name === 'string' && name.trim() !== '' ? name.slice(0, 80) : id;
}
