/** A rectangle wanted `demand` times; `turns` lets it lie either way. Whole numbers in the problem's own unit. */
export interface CuttingItem {
  readonly width: number;
  readonly height: number;
  readonly turns: boolean;
  readonly demand: number;
}

/**
 * Rectangles to cut from equal sheets by edge-to-edge cuts. Squaring, kerf and grain are already taken into account, lengths are divided by
 * their common measure, and every item fits the sheet.
 */
export interface CuttingProblem {
  readonly width: number;
  readonly height: number;
  readonly items: readonly CuttingItem[];
  /** Longest cut the tool makes, in the same unit; null: any. */
  readonly longestCut: number | null;
  readonly stages: 'free' | 2 | 3;
}

/** One way an item may lie. */
export interface Lie {
  readonly item: number;
  readonly width: number;
  readonly height: number;
  readonly turned: boolean;
}

/** Every way an item may lie on the sheet and be cut free within the tool's reach. */
export function liesOf(problem: CuttingProblem): Lie[] {
  const reach = reachOf(problem);
  const lies: Lie[] = [];
  const lay = (lie: Lie): void => {
    const fits = lie.width <= problem.width && lie.height <= problem.height;
    if (fits && canTrim(problem.width, problem.height, lie, reach)) lies.push(lie);
  };
  for (const [item, { width, height, turns }] of problem.items.entries()) {
    lay({ item, width, height, turned: false });
    if (turns && width !== height) lay({ item, width: height, height: width, turned: true });
  }
  return lies;
}

/** The longest cut of the tool in the problem's unit; infinite where it cuts any length. */
export const reachOf = ({ longestCut }: CuttingProblem): number => longestCut ?? Number.POSITIVE_INFINITY;

/** Whether the tool's reach forbids any cut of this sheet. */
export const isReachBinding = ({ width, height, longestCut }: CuttingProblem): boolean =>
  longestCut !== null && longestCut < Math.max(width, height);

/**
 * Whether a larger piece may be worth less than a smaller one. With free turns and one side of the sheet within reach it never is: a cut
 * along that side always frees the smaller piece.
 */
export const mayLargerBeWorse = (problem: CuttingProblem): boolean =>
  isReachBinding(problem) &&
  (problem.stages !== 'free' || reachOf(problem) < Math.min(problem.width, problem.height));

/** Whether a piece can be trimmed to an item: one or two cuts, in one order or the other, within the tool's reach. */
export function canTrim(
  width: number,
  height: number,
  item: Pick<Lie, 'width' | 'height'>,
  reach: number,
): boolean {
  if (width === item.width) return height === item.height || width <= reach;
  if (height === item.height) return height <= reach;
  return (height <= reach && item.width <= reach) || (width <= reach && item.height <= reach);
}
