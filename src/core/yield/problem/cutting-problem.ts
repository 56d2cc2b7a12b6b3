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

/** Every way an item may lie on the sheet at all. */
export function liesOf(problem: CuttingProblem): Lie[] {
  const lies: Lie[] = [];
  for (const [item, { width, height, turns }] of problem.items.entries()) {
    if (width <= problem.width && height <= problem.height) lies.push({ item, width, height, turned: false });
    if (turns && width !== height && height <= problem.width && width <= problem.height)
      lies.push({ item, width: height, height: width, turned: true });
  }
  return lies;
}

/** Whether the tool's reach forbids any cut of this sheet. */
export const isReachBinding = ({ width, height, longestCut }: CuttingProblem): boolean =>
  longestCut !== null && longestCut < Math.max(width, height);

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
