import { keepWanted, type PatternTree } from '../pattern/pattern';
import type { LaidPart, SheetProblem } from '../problem/sheet-problem';
import type { PatternUse } from './pattern-plan';

/** A pattern cut `sheets` times with the same part in the same place each time; `names[i]` are the parts on item i, in cutting order. */
export interface NamedUse {
  readonly tree: PatternTree;
  readonly sheets: number;
  readonly names: readonly (readonly LaidPart[])[];
}

/** Copies that no sheet of a use needs are left uncut, on the rarest layout first: the card stays whole, and in one place. */
function dropSurplus(uses: readonly PatternUse[], demands: readonly number[]): PatternUse[] {
  const surplus = demands.map((demand, item) =>
    uses.reduce((sum, { pattern, sheets }) => sum + sheets * (pattern.counts[item] ?? 0), -demand),
  );
  const rarestFirst = [...uses].sort((a, b) => a.sheets - b.sheets);
  const kept = rarestFirst.map(({ pattern, sheets }) => {
    const counts = pattern.counts.map((count, item) => {
      const spare = Math.min(count, Math.floor(Math.max(0, surplus[item]!) / sheets));
      surplus[item] = surplus[item]! - spare * sheets;
      return count - spare;
    });
    return { sheets, pattern: { counts, tree: keepWanted(pattern.tree, counts) } };
  });
  return kept.reverse();
}

/** Which part lies where: parts of one size share their items, in the order given; a use is split where the names change. */
export function nameParts(uses: readonly PatternUse[], { kinds, problem }: SheetProblem): NamedUse[] {
  const left = kinds.map(({ parts }) => parts.map((laid) => ({ laid, count: laid.part.count })));
  const named: NamedUse[] = [];
  for (const { pattern, sheets } of dropSurplus(
    uses,
    problem.items.map(({ demand }) => demand),
  )) {
    // biome-ignore format: one line
    for (let done = 0; done < sheets && pattern.tree !== null; ) {
      const dealt = pattern.counts.map((count, item) => deal(left[item] ?? [], count));
      const same = Math.min(sheets - done, ...dealt.map(({ repeats }) => repeats));
      for (const { take } of dealt) take(same);
      const names = dealt.map((deal) => deal.names);
      const last = named.at(-1);
      // A deal that runs out of what is wanted goes on with surplus of the same name: the same layout to the hands.
      if (done > 0 && last !== undefined && sameNames(last.names, names))
        named[named.length - 1] = { ...last, sheets: last.sheets + same };
      else named.push({ tree: pattern.tree, sheets: same, names });
      done += same;
    }
  }
  return named;
}

const sameNames = (a: NamedUse['names'], b: NamedUse['names']): boolean =>
  a.every((names, item) => names.every(({ part }, i) => part.id === b[item]?.[i]?.part.id));

/** A part and how many of it are still to be named. */
interface OpenPart {
  readonly laid: LaidPart;
  count: number;
}

interface Deal {
  readonly names: LaidPart[];
  /** Sheets for which this deal can be repeated. */
  readonly repeats: number;
  readonly take: (sheets: number) => void;
}

function deal(left: OpenPart[], count: number): Deal {
  const names: LaidPart[] = [];
  const shares: { part: OpenPart; copies: number }[] = [];
  let open = count;
  for (const part of left) {
    const copies = Math.min(open, part.count);
    if (copies === 0) continue;
    shares.push({ part, copies });
    names.push(...new Array<LaidPart>(copies).fill(part.laid));
    open -= copies;
  }
  const last = left.at(-1);
  if (open > 0 && last !== undefined) names.push(...new Array<LaidPart>(open).fill(last.laid));
  const repeats = shares.map(({ part, copies }) => Math.floor(part.count / copies));
  return {
    names,
    repeats: open > 0 && shares.length > 0 ? 1 : Math.min(Number.POSITIVE_INFINITY, ...repeats),
    take: (sheets) => {
      for (const { part, copies } of shares) part.count -= copies * sheets;
    },
  };
}
