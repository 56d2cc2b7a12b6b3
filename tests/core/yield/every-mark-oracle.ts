/** What a brute-force search is asked: whole numbers in any unit. */
export interface OracleSheet {
  readonly across: number;
  readonly up: number;
  readonly kerf: number;
  readonly reach: number;
}

export interface OracleShape {
  readonly across: number;
  readonly up: number;
  readonly worth: number;
}

/**
 * The most worth that edge-to-edge cuts get out of one sheet, by trying a cut at every single mark of every size of piece. Slow, obvious, and
 * written without a look at the solver: no normal or raster points, no trimming rule (a trim is a cut like any other), kerf as itself.
 */
export function bestByEveryMark(
  { across, up, kerf, reach }: OracleSheet,
  shapes: readonly OracleShape[],
): number {
  const best = Array.from({ length: across + 1 }, () => new Float64Array(up + 1));
  for (let width = 1; width <= across; width++)
    for (let height = 1; height <= up; height++) {
      let most = 0;
      for (const shape of shapes)
        if (shape.across === width && shape.up === height) most = Math.max(most, shape.worth);
      if (height <= reach)
        for (let cut = 1; cut < width; cut++)
          most = Math.max(most, best[cut]![height]! + best[Math.max(0, width - cut - kerf)]![height]!);
      if (width <= reach)
        for (let cut = 1; cut < height; cut++)
          most = Math.max(most, best[width]![cut]! + best[width]![Math.max(0, height - cut - kerf)]!);
      best[width]![height] = most;
    }
  return best[across]![up]!;
}
