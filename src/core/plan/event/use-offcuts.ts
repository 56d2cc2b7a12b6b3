import type { Paper, Tool } from '../../rows';
import { countOnSheet } from '../../yield/count-on-sheet';
import { cuttingToolOf, sheetOfPaper } from '../buying/stock-rows';
import type { PartOnPaper } from './event-parts';

/**
 * Liners, layers, bands and tags moved to the offcuts that lie on the shelf from their own paper, the smallest offcut that holds one first,
 * never more than are on hand. Boxes are always cut from whole sheets. A part that is split stands in the list twice, its counts apart.
 */
export function takeOffcuts(
  parts: readonly PartOnPaper[],
  papers: readonly Paper[],
  tool: Tool | undefined,
): readonly PartOnPaper[] {
  const stock = papers
    .filter(({ offcutOfId, onHandSheets }) => offcutOfId !== undefined && onHandSheets > 0)
    .map((paper) => ({ paper, left: paper.onHandSheets }))
    .sort((a, b) => areaOf(a.paper) - areaOf(b.paper));
  if (stock.length === 0) return parts;
  const largestFirst = [...parts].sort((a, b) => sizeOf(b) - sizeOf(a));
  const moved = new Map<PartOnPaper, PartOnPaper[]>();
  for (const whole of largestFirst) {
    const { part, paperId } = whole;
    let rest = part.count;
    const pieces: PartOnPaper[] = [];
    for (const offcut of part.kind === 'box' ? [] : stock) {
      if (offcut.paper.offcutOfId !== paperId || offcut.left === 0 || rest === 0) continue;
      const { count: each } = countOnSheet(part, sheetOfPaper(offcut.paper), cuttingToolOf(tool));
      const taken = Math.min(rest, each * offcut.left);
      if (taken === 0) continue;
      pieces.push({ paperId: offcut.paper.id, part: { ...part, count: taken } });
      offcut.left -= Math.ceil(taken / each);
      rest -= taken;
    }
    if (pieces.length > 0) moved.set(whole, rest > 0 ? [...pieces, { paperId, part: { ...part, count: rest } }] : pieces); // biome-ignore format: one row
  }
  return parts.flatMap((part) => moved.get(part) ?? [part]);
}

const areaOf = ({ acrossMm, upMm }: Paper): number => acrossMm * upMm;
const sizeOf = ({ part }: PartOnPaper): number => part.across * part.up;
