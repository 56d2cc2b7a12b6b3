import { parse } from 'papaparse';
import { type Guest, guest, MOST_GUESTS } from '../src/core/rows/guests';
import { cleanLine } from '../src/core/rows/text';

/** A line of a list that is no guest: which one, counted from 1, and what stands there. */
interface UnreadLine {
  readonly line: number;
  readonly text: string;
}

/** What a list says, before anything of it is kept. */
export interface HeardGuests {
  readonly guests: readonly Guest[];
  /** Favors the list names that no line of the event is called, each once. */
  readonly unknownFavors: readonly string[];
  readonly unread: readonly UnreadLine[];
  /** Guests beyond the most an event keeps. */
  readonly left: number;
}

/** A favor of the event as the list may call it. */
interface NamedLine {
  readonly id: string;
  readonly name: string;
}

type Field = 'name' | 'first' | 'last' | 'table' | 'needs' | 'favor';

/** What people write above their columns. source: common practice, no source */
const HEADS: readonly (readonly [Field, RegExp])[] = [
  ['first', /^(first|given) ?(names?)?$/],
  ['last', /^(last|family|sur) ?-?(names?)?$/],
  ['name', /^((full|guest|guest’s|guest's) )?names?$|^guests?$|^who$/],
  ['table', /^tables?( ?(no|nr|number|#))?\.?$/],
  ['favor', /^favou?rs?$|^gifts?$|^box(es)?$/],
  ['needs', /^needs?$|diet|allerg|^notes?$|^requests?$|^restrictions?$/],
];
/** Columns of a list without heads. */
const USUAL: readonly Field[] = ['name', 'table', 'needs', 'favor'];

/**
 * A guest list as it is pasted from a spreadsheet or saved as CSV: commas, semicolons or tabs; with heads in any order, or name, table,
 * needs, favor without. A guest keeps the same id however often the list is read, so that a newer list changes only what is new.
 */
export function readGuests(text: string, lines: readonly NamedLine[]): HeardGuests {
  const source = text.replace(/^\uFEFF/, '');
  const isOneColumn = !/[,;\t]/.test(source);
  const { data } = parse<string[]>(source, isOneColumn ? { delimiter: '\t' } : {});
  const columns = headsOf(data[0] ?? []);
  const taken = new Map<string, number>();
  const guests: Guest[] = [];
  const unread: UnreadLine[] = [];
  const unknown = new Set<string>();
  for (const [at, cells] of data.entries()) {
    if ((columns && at === 0) || cells.every((cell) => cell.trim() === '')) continue;
    const said = fieldsOf(cells, columns ?? USUAL);
    const line = lines.find((each) => sameName(each.name, said.favor));
    if (said.favor !== '' && !line) unknown.add(said.favor);
    const name = said.name || `${said.first} ${said.last}`.trim();
    const read = guest.safeParse({
      id: idOf(name, taken),
      name,
      table: said.table,
      needs: said.needs,
      lineId: line?.id ?? null,
    });
    if (read.success) guests.push(read.data);
    else unread.push({ line: at + 1, text: cleanLine(cells.join(', ')).slice(0, 80) });
  }
  return {
    guests: guests.slice(0, MOST_GUESTS),
    unknownFavors: [...unknown],
    unread,
    left: Math.max(0, guests.length - MOST_GUESTS),
  };
}

/** What each column holds, by the list's first line; null where that line is a guest already. */
function headsOf(first: readonly string[]): readonly (Field | null)[] | null {
  const heads = first.map((cell) => {
    const said = cell.trim().toLowerCase();
    return HEADS.find(([, pattern]) => pattern.test(said))?.[0] ?? null;
  });
  return heads.some((head) => head === 'name' || head === 'first' || head === 'last') ? heads : null;
}

function fieldsOf(
  cells: readonly string[],
  columns: readonly (Field | null)[],
): Readonly<Record<Field, string>> {
  const said = { name: '', first: '', last: '', table: '', needs: '', favor: '' };
  for (const [at, cell] of cells.entries()) {
    const field = columns[at];
    // Two columns of one kind (diet, notes) are one text.
    if (field) said[field] = [said[field], cell.trim()].filter(Boolean).join(', ');
  }
  return said;
}

const sameName = (a: string, b: string): boolean =>
  b !== '' && a.trim().toLowerCase() === b.trim().toLowerCase();

/** An id that goes with the name: `guest-` and the FNV-1a hash of it; a second guest of one name is told apart by number. */
function idOf(name: string, taken: Map<string, number>): string {
  let hash = 0x811c9dc5;
  for (const letter of name.trim().toLowerCase().normalize('NFC'))
    hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  const id = `guest-${(hash >>> 0).toString(16)}`;
  const before = taken.get(id) ?? 0;
  taken.set(id, before + 1);
  return before === 0 ? id : `${id}-${before + 1}`;
}
