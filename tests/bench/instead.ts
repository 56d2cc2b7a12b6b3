/**
 * What one would pick instead of our search: a general-purpose rectangle packer, first-fit shelves, and a general solver for whole-number
 * programs on the model of all patterns. Each gives a number of sheets, or null where it does not answer in time.
 */
import { createRequire } from 'node:module';
import loadHighs from 'highs';
import type { YieldInstance } from '../../shared/yield-instances';
import { groupParts } from '../../src/core/yield/proof/group-parts';
import { type Content, listLayouts } from '../../src/core/yield/proof/list-layouts';
import { orderOf } from '../outside/cut-problems';

const PACKER_PIECES = 3000; // More are too slow for the packer, whose work grows with the square.
const MODEL_SECONDS = 5;

// Its modules name no exports that Node finds, so it is fetched the older way.
const rectangles = createRequire(import.meta.url)('maxrects-packer') as typeof import('maxrects-packer');
const highs = await loadHighs();

/** Sheets of a packer that knows no blades: pieces may lie where no edge-to-edge cut frees them. */
export function packed({ sheet, items, rotation = false }: YieldInstance): number | null {
  const pieces = items.flatMap(({ w, h, demand }) => Array.from({ length: demand ?? 1 }, () => ({ w, h })));
  if (pieces.length > PACKER_PIECES) return null;
  const packer = new rectangles.MaxRectsPacker(sheet.w, sheet.h, 0, { smart: true, pot: false, square: false, allowRotation: rotation, border: 0 }); // biome-ignore format: one row
  const largestFirst = pieces.sort((a, b) => b.w * b.h - a.w * a.h);
  for (const { w, h } of largestFirst) packer.add(w, h, null);
  return packer.bins.length;
}

/** Every pattern that no other covers, and the fewest of them that cover the order, by a general solver; null: too many, or not in time. */
export function modelled(instance: YieldInstance): number | null {
  const { paper, parts, tool } = orderOf(instance);
  const groups = groupParts(parts, paper, tool.kerf, {});
  const end = performance.now() + MODEL_SECONDS * 1000;
  const patterns = listLayouts(groups, paper, [], () => performance.now() > end);
  if (patterns === null || patterns.length > 4000) return null;
  const solution = highs.solve(writeModel(patterns, groups.map(({ count }) => count)), { mip_rel_gap: 0, mip_abs_gap: 0.5, time_limit: MODEL_SECONDS }); // biome-ignore format: one row
  return solution.Status === 'Optimal' ? Math.round(solution.ObjectiveValue) : null;
}

function writeModel(patterns: readonly Content[], wanted: readonly number[]): string {
  const names = patterns.map((_, at) => `p${at}`);
  const rows = wanted.map((count, item) => {
    const terms = patterns.flatMap((pattern, at) => (pattern[item]! > 0 ? [`${pattern[item]!} p${at}`] : []));
    return ` r${item}: ${terms.join(' + ')} >= ${count}`;
  });
  return `Minimize\n obj: ${names.join(' + ')}\nSubject To\n${rows.join('\n')}\nGeneral\n ${names.join(' ')}\nEnd\n`;
}

/** First-fit shelves: the tallest piece first, each on the first shelf that has room; pieces that may turn lie on their longer side. */
export function shelved({ sheet, items, rotation = false }: YieldInstance): number {
  const lying = items.map(({ w, h, demand }) => {
    const turned = rotation && (h > w ? h <= sheet.w : w > sheet.w);
    return { w: turned ? h : w, h: turned ? w : h, count: demand ?? 1 };
  });
  const sheets: { left: number; readonly shelves: { readonly h: number; left: number }[] }[] = [];
  for (const { w, h, count } of lying.sort((a, b) => b.h - a.h))
    for (let piece = 0; piece < count; piece++) {
      const shelf = sheets.flatMap(({ shelves }) => shelves).find((one) => one.left >= w && one.h >= h);
      if (shelf) {
        shelf.left -= w;
        continue;
      }
      const open = sheets.find(({ left }) => left >= h) ?? { left: sheet.h, shelves: [] };
      if (open.shelves.length === 0) sheets.push(open);
      open.left -= h;
      open.shelves.push({ h, left: sheet.w - w });
    }
  return sheets.length;
}
