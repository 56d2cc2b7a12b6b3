import type { CaseProof, CaseTree, RoundedRow } from '../types';
import type { PartGroup } from './group-parts';
import type { Content } from './list-layouts';

/** What a case leaves open: parts still to be cut, sheets for them, and layouts that may be used only so often from here on. */
interface Open {
  readonly left: readonly number[];
  readonly sheets: number;
  readonly caps: ReadonlyMap<string, number>;
}

/**
 * Follows a proof by cases over `layouts`, which are all that a plan on `sheets` sheets could use: every choice must be a choice between all
 * there is, and every case must close in whole numbers. Answers what is wrong, or null. Shares no line with the search.
 */
export function checkCases(
  { tree }: CaseProof,
  groups: readonly PartGroup[],
  layouts: readonly Content[],
  sheets: number,
): string | null {
  const byName = new Map(layouts.map((content) => [content.join(), content]));
  const figure = (figures: Readonly<Record<string, number>>): number[] =>
    groups.map(({ ids }) => ids.reduce((sum, id) => sum + (figures[id] ?? 0), 0));
  const follow = (node: CaseTree, open: Open): string | null => {
    if ('points' in node) return closes(node, groups, byName, open);
    const content = byName.get(figure(node.layout).join());
    if (content === undefined) return 'a case speaks of a layout that is none';
    if (!Number.isSafeInteger(node.atMost) || node.atMost < 0) return `a layout used ${node.atMost} times`;
    const name = content.join();
    const cap = open.caps.get(name);
    const times = node.atMost + 1;
    const less = new Map(open.caps).set(name, Math.min(cap ?? node.atMost, node.atMost));
    const more = cap === undefined ? open.caps : new Map(open.caps).set(name, cap - times);
    const left = open.left.map((count, group) => Math.max(0, count - times * content[group]!));
    if (cap === undefined || cap >= times) {
      const fault = follow(node.more, { left, sheets: open.sheets - times, caps: more });
      if (fault !== null) return fault;
    }
    return follow(node.less, { ...open, caps: less });
  };
  return follow(tree, { left: groups.map(({ count }) => count), sheets, caps: new Map() });
}

type Figures = Readonly<Record<string, number>>;

/** Whether the points show that what is left is too much for the sheets left. */
function closes(
  { points, rows = [] }: { readonly points: Figures; readonly rows?: readonly RoundedRow[] },
  groups: readonly PartGroup[],
  layouts: ReadonlyMap<string, Content>,
  { left, sheets, caps }: Open,
): string | null {
  if (sheets < 0) return null;
  const each = groups.map(({ ids }) => points[ids[0] ?? ''] ?? 0);
  if (!each.every((point) => Number.isSafeInteger(point) && point >= 0)) return 'points that are no counts';
  const rounded = rows.map((row) => ({
    ...row,
    each: groups.map(({ ids }) => row.times[ids[0] ?? ''] ?? 0),
  }));
  for (const { over, points, each } of rounded)
    if (![over - 1, points, ...each].every((count) => Number.isSafeInteger(count) && count >= 0))
      return 'a rounded weight that is none';
  const worth = (content: Content): bigint => {
    const held = content.map((count, i) => BigInt(Math.min(count, left[i]!)));
    const weigh = (each: readonly number[]): bigint =>
      held.reduce((sum, count, i) => sum + count * BigInt(each[i]!), 0n);
    // A weight over `over`, rounded up in whole numbers.
    return rounded.reduce(
      (sum, { over, points, each }) =>
        sum + BigInt(points) * ((weigh(each) + BigInt(over - 1)) / BigInt(over)),
      weigh(each),
    );
  };
  let most = 0n;
  for (const [name, content] of layouts) {
    if (caps.has(name)) continue;
    const points = worth(content);
    if (points > most) most = points;
  }
  let total = worth(left);
  for (const [name, times] of caps) {
    const over = worth(layouts.get(name)!) - most;
    if (over > 0n) total -= over * BigInt(times);
  }
  return total > most * BigInt(sheets)
    ? null
    : `a case is left open: ${total} points on ${sheets} sheets of ${most}`;
}
