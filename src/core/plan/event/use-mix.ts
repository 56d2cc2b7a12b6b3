import type { EventLine, Paper } from '../../rows';
import type { PartOnPaper } from './event-parts';

/**
 * Parts of lines that have a mix, on the papers that it names, in its order. What the mix does not cover, where more is made since, is cut from
 * the last whole paper it names; what it covers too much is left out. Papers that are gone are passed over.
 */
export function placeMix(
  parts: readonly PartOnPaper[],
  lines: readonly EventLine[],
  papers: readonly Paper[],
): readonly PartOnPaper[] {
  return parts.flatMap((whole) => {
    const { part } = whole;
    const line = lines.find(({ id }) => id === part.lineId);
    const its = (line?.mix ?? []).filter(({ piece, paperId }) => `${part.lineId}.${piece}` === part.id && papers.some(({ id }) => id === paperId)); // biome-ignore format: one row
    if (its.length === 0) return [whole];
    let left = part.count;
    const shares = its.map(({ paperId, count }) => {
      const taken = Math.min(left, count);
      left -= taken;
      return { paperId, count: taken };
    });
    const last = shares.findLast(({ paperId }) => papers.find(({ id }) => id === paperId)?.offcutOfId === undefined); // biome-ignore format: one row
    if (last) last.count += left;
    else shares.push({ paperId: whole.paperId ?? '', count: left });
    return shares.filter(({ count }) => count > 0).map(({ paperId, count }) => ({ paperId, part: { ...part, count } })); // biome-ignore format: one row
  });
}
