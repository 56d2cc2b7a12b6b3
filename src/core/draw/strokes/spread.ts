/** A label along an axis: where it wants its middle, and how much room it takes. */
export interface SpreadLabel {
  readonly at: number;
  readonly size: number;
}

/**
 * Middles for labels along one axis so that none touches another (`gap` between them) and the sum of squared shifts is least.
 * `labels` in rising order of `at`. Neighbors that collide are pooled into blocks (pool adjacent violators).
 */
export function spreadLabels(labels: readonly SpreadLabel[], gap: number): number[] {
  // With o(i) = room taken up to label i, places p(i) = q(i) + o(i) keep their distance exactly when q never falls.
  const offsets: number[] = [];
  labels.forEach((label, i) => {
    const before = labels[i - 1];
    offsets.push(before ? offsets[i - 1]! + (before.size + label.size) / 2 + gap : 0);
  });
  const blocks: { sum: number; count: number }[] = [];
  labels.forEach((label, i) => {
    let block = { sum: label.at - offsets[i]!, count: 1 };
    for (
      let last = blocks.at(-1);
      last && last.sum / last.count >= block.sum / block.count;
      last = blocks.at(-1)
    ) {
      block = { sum: last.sum + block.sum, count: last.count + block.count };
      blocks.pop();
    }
    blocks.push(block);
  });
  return blocks
    .flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count))
    .map((q, i) => q + offsets[i]!);
}
