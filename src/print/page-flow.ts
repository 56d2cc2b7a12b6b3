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
