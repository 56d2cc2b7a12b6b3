/** How one sheet is cut, without positions: pieces are pushed to the left and near edges, and trimmed to what lies on them. */
export type PatternTree =
  | { readonly kind: 'item'; readonly item: number; readonly turned: boolean }
  | {
      readonly kind: 'cut';
      readonly upright: boolean;
      readonly first: PatternTree;
      readonly second: PatternTree;
    };

export interface Pattern {
  /** Copies of each item of the problem. */
  readonly counts: readonly number[];
  /** Null: nothing is cut. */
  readonly tree: PatternTree | null;
}

/** Copies of each of `items` items in a tree. */
export function countItems(tree: PatternTree | null, items: number): number[] {
  const counts = new Array<number>(items).fill(0);
  const visit = (node: PatternTree): void => {
    if (node.kind === 'item') counts[node.item] = (counts[node.item] ?? 0) + 1;
    else {
      visit(node.first);
      visit(node.second);
    }
  };
  if (tree !== null) visit(tree);
  return counts;
}

/** A cut between two trees, or the one of them that holds anything. */
export const joinPieces = (
  upright: boolean,
  first: PatternTree | null,
  second: PatternTree | null,
): PatternTree | null =>
  first !== null && second !== null ? { kind: 'cut', upright, first, second } : (first ?? second);

/** The pattern of a tree. */
export const patternOf = (tree: PatternTree | null, items: number): Pattern => ({
  counts: countItems(tree, items),
  tree,
});

/** The tree without the copies that are not wanted: at most `wanted[i]` of item i stay. */
export function keepWanted(tree: PatternTree | null, wanted: readonly number[]): PatternTree | null {
  const left = [...wanted];
  const prune = (node: PatternTree): PatternTree | null => {
    if (node.kind === 'item') {
      const still = left[node.item] ?? 0;
      if (still <= 0) return null;
      left[node.item] = still - 1;
      return node;
    }
    const first = prune(node.first);
    const second = prune(node.second);
    if (first === null) return second;
    if (second === null) return first;
    return first === node.first && second === node.second ? node : { ...node, first, second };
  };
  return tree === null ? null : prune(tree);
}
