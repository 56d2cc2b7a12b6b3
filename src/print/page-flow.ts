import { moveMarks, textMark } from '../core/draw/strokes/marks';
import type { Mark } from '../core/draw/strokes/types';
import { type Block, stackBlocks } from './block';
import { MARGIN_MM, PAPER_MM, type Page, type PaperName, type PlacedPhoto, TYPE_MM } from './print-document';

/** What every page of a document carries in its foot. */
export interface PageFoot {
  readonly title: string;
  readonly code: string;
}

const FOOT_MM = 8; // kept for the foot, above the margin

/** The column that blocks stand in: the paper less its margins, and less the foot. */
export function columnOf(paper: PaperName): { readonly widthMm: number; readonly heightMm: number } {
  const { widthMm, heightMm } = PAPER_MM[paper];
  return { widthMm: widthMm - 2 * MARGIN_MM, heightMm: heightMm - 2 * MARGIN_MM - FOOT_MM };
}

/**
 * Blocks laid into columns in order, one a page. What keeps the next block with it moves along to the next page; `fill` makes one more block
 * of what is left on the last. Marks hang from each column's top left corner.
 */
export function flowColumns(
  blocks: readonly Block[],
  paper: PaperName,
  fill: (heightMm: number) => Block | null = () => null,
): PageColumn[] {
  const { heightMm } = columnOf(paper);
  const columns: Block[][] = [[]];
  let left = heightMm;
  for (const group of groupsOf(blocks)) {
    if (heightOf(group) > left && left < heightMm) {
      columns.push([]);
      left = heightMm;
    }
    // A page does not begin with empty room.
    const shown = left === heightMm ? group.slice(group.findIndex(({ marks }) => marks.length > 0)) : group;
    columns.at(-1)!.push(...shown);
    left -= heightOf(shown);
  }
  const last = fill(left);
  if (last) columns.at(-1)!.push(last);
  return columns.map((stack) => stackBlocks(stack));
}

/**
 * Of several ways to set the same blocks, the one on the fewest pages whose emptiest page, the last apart, is fullest: each is broken so that
 * its emptiest page is as full as that many pages allow.
 */
export function evenColumns(ways: readonly (readonly Block[])[], paper: PaperName): PageColumn[] {
  const { heightMm } = columnOf(paper);
  const [best] = ways
    .map((blocks) => evenBreaks(groupsOf(blocks), heightMm))
    .sort((a, b) => a.columns.length - b.columns.length || b.leastMm - a.leastMm);
  return best?.columns.map((groups) => stackBlocks(groups.flat())) ?? [];
}

/** How groups are shared out: their pages in order, and how far down the emptiest but the last is filled. */
interface Breaks {
  readonly columns: readonly (readonly Block[])[][];
  readonly leastMm: number;
}

function evenBreaks(groups: readonly (readonly Block[])[], heightMm: number): Breaks {
  /** The best ways for what follows a group, one for each number of pages. */
  const after = new Map<number, readonly Breaks[]>([[groups.length, [{ columns: [], leastMm: heightMm }]]]);
  for (let from = groups.length - 1; from >= 0; from--) {
    const byPages = new Map<number, Breaks>();
    const [first = [], ...others] = groups.slice(from);
    // A page does not begin with empty room.
    const page: (readonly Block[])[] = [
      first.slice(
        Math.max(
          0,
          first.findIndex(({ marks }) => marks.length > 0),
        ),
      ),
    ];
    let filled = heightOf(page.flat());
    for (let to = from + 1; to <= groups.length; to++) {
      for (const rest of after.get(to) ?? []) {
        const isLast = rest.columns.length === 0;
        const leastMm = isLast ? heightMm : Math.min(filled, rest.leastMm);
        const pages = rest.columns.length + 1;
        if (leastMm > (byPages.get(pages)?.leastMm ?? -1))
          byPages.set(pages, { columns: [[...page], ...rest.columns], leastMm });
      }
      const next = others[to - from - 1];
      if (!next || filled + heightOf(next) > heightMm) break;
      page.push(next);
      filled += heightOf(next);
    }
    after.set(from, [...byPages.values()]);
  }
  const [best] = [...(after.get(0) ?? [])].sort((a, b) => a.columns.length - b.columns.length);
  return best ?? { columns: [], leastMm: 0 };
}

const heightOf = (blocks: readonly Block[]) => blocks.reduce((sum, { heightMm }) => sum + heightMm, 0);

/** Blocks that stay together. */
function groupsOf(blocks: readonly Block[]): Block[][] {
  const groups: Block[][] = [];
  let joined = false;
  for (const block of blocks) {
    if (joined) groups.at(-1)!.push(block);
    else groups.push([block]);
    joined = block.keepsNext ?? false;
  }
  return groups;
}

/** What stands on one page: marks that hang from the top left corner inside its margins. */
export interface PageColumn {
  readonly marks: readonly Mark[];
  readonly photos?: readonly PlacedPhoto[];
  /** The paper lies on its long side. */
  readonly sideways?: boolean;
}

/** Columns as pages of the paper, each with its foot. */
export const pagesOf = (
  columns: readonly PageColumn[],
  paper: PaperName,
  { title, code }: PageFoot,
): Page[] =>
  columns.map(({ marks, photos = [], sideways = false }, i) => {
    const sheet = PAPER_MM[paper];
    const [widthMm, heightMm] = sideways ? [sheet.heightMm, sheet.widthMm] : [sheet.widthMm, sheet.heightMm];
    const number = `page ${i + 1} of ${columns.length}`;
    return {
      widthMm,
      heightMm,
      title,
      description: `${title}, ${number}.`,
      marks: [
        ...moveMarks(marks, MARGIN_MM, heightMm - MARGIN_MM),
        textMark(title, [MARGIN_MM, MARGIN_MM], TYPE_MM.small),
        textMark(number, [widthMm / 2, MARGIN_MM], TYPE_MM.small, { anchor: 'middle' }),
        textMark(code, [widthMm - MARGIN_MM, MARGIN_MM], TYPE_MM.small, { anchor: 'end' }),
      ],
      ...(photos.length > 0 && {
        photos: photos.map(({ at: [x, y], ...photo }) => ({
          ...photo,
          at: [x + MARGIN_MM, y + heightMm - MARGIN_MM] as const,
        })),
      }),
    };
  });
