import { sameValue } from './same-value';

/** What two changes of one value come to; where both changed the same thing, theirs stays and `clashes` says so. */
export interface Merged {
  readonly value: unknown;
  readonly clashes: boolean;
}

type Fields = Readonly<Record<string, unknown>>;
const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What the entries of a list go by, whichever of these every one of them has. */
const ENTRY_NAMES = ['id', 'stage', 'act', 'of'] as const;

/**
 * Lays two changes of one value together, field by field, and entry by entry where the entries of a list have names of their own. `base`
 * is what both began from. Says the same whoever is asked first, but for the order of entries both added.
 */
export function mergeValues(base: unknown, mine: unknown, theirs: unknown): Merged {
  if (sameValue(mine, base) || sameValue(mine, theirs)) return { value: theirs, clashes: false };
  if (sameValue(theirs, base)) return { value: mine, clashes: false };
  if (isFields(mine) && isFields(theirs)) return mergeFields(isFields(base) ? base : {}, mine, theirs);
  if (Array.isArray(mine) && Array.isArray(theirs) && (base === undefined || Array.isArray(base))) {
    const [was, my, their] = [byName(base ?? []), byName(mine), byName(theirs)];
    if (was && my && their) return mergeEntries(was, my, their);
  }
  return { value: theirs, clashes: true };
}

function mergeFields(base: Fields, mine: Fields, theirs: Fields): Merged {
  let clashes = false;
  const value: Record<string, unknown> = {};
  for (const name of new Set([...Object.keys(theirs), ...Object.keys(mine)])) {
    const merged = mergeValues(base[name], mine[name], theirs[name]);
    clashes ||= merged.clashes;
    if (merged.value !== undefined) value[name] = merged.value;
  }
  return { value, clashes };
}

type Entries = ReadonlyMap<string, unknown>;

/** A list by the names of its entries; null where they have none, or not each its own. */
function byName(list: readonly unknown[]): Entries | null {
  for (const name of ENTRY_NAMES) {
    const entries = new Map<string, unknown>();
    for (const entry of list) {
      const said = isFields(entry) ? nameOf(entry, name) : undefined;
      if (typeof said !== 'string' || entries.has(said)) break;
      entries.set(said, entry);
    }
    if (entries.size === list.length) return entries;
  }
  return null;
}

/** What was counted at one stage by one device is an entry of its own. */
const nameOf = (entry: Fields, name: string): unknown =>
  name === 'stage' && typeof entry['by'] === 'string'
    ? `${String(entry['stage'])} ${entry['by']}`
    : entry[name];

/** Entries in the order of the side that moved them; what only the other side has comes after what stood before it there. */
function mergeEntries(base: Entries, mine: Entries, theirs: Entries): Merged {
  const kept = new Map<string, unknown>();
  let clashes = false;
  for (const name of new Set([...theirs.keys(), ...mine.keys()])) {
    const merged = mergeValues(base.get(name), mine.get(name), theirs.get(name));
    clashes ||= merged.clashes;
    if (merged.value !== undefined) kept.set(name, merged.value);
  }
  const theyMoved = !sameOrder(base, theirs);
  const order = theyMoved ? [...theirs.keys()] : [...mine.keys()];
  const others = theyMoved ? [...mine.keys()] : [...theirs.keys()];
  for (const [at, name] of others.entries())
    if (!order.includes(name)) order.splice(order.indexOf(others[at - 1] ?? '') + 1, 0, name);
  return { value: order.filter((name) => kept.has(name)).map((name) => kept.get(name)), clashes };
}

/** Whether what two lists share stands in the same order in both. */
function sameOrder(a: Entries, b: Entries): boolean {
  const [inA, inB] = [
    [...a.keys()].filter((name) => b.has(name)),
    [...b.keys()].filter((name) => a.has(name)),
  ];
  return inA.every((name, at) => name === inB[at]);
}
