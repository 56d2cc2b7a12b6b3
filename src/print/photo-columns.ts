import { moveMarks } from '../core/draw/strokes/marks';
import { textBlock } from './block';
import type { HandoutPhoto } from './handout-content';
import { columnOf, type PageColumn } from './page-flow';
import { type PaperName, TYPE_MM } from './print-document';

const BETWEEN_MM = 8;
const WORDS_MM = 8; // under each photo its name, one line; a longer one runs into the air below
const MOST_ON_PAGE = 2;

/** Photographs two to a page, each as large as half the column holds, with its name below; in the order they were added. */
export function photoColumns(photos: readonly HandoutPhoto[], paper: PaperName): PageColumn[] {
  const { widthMm, heightMm } = columnOf(paper);
  const room = (heightMm - BETWEEN_MM) / MOST_ON_PAGE - WORDS_MM;
  return Array.from({ length: Math.ceil(photos.length / MOST_ON_PAGE) }, (_, page) => {
    const shown = photos.slice(page * MOST_ON_PAGE, (page + 1) * MOST_ON_PAGE).map((photo, place) => {
      const scale = Math.min(widthMm / photo.widthPx, room / photo.heightPx);
      const size = { widthMm: photo.widthPx * scale, heightMm: photo.heightPx * scale };
      const top = -place * (room + WORDS_MM + BETWEEN_MM);
      const name = textBlock(photo.name, { widthMm, sizeMm: TYPE_MM.body });
      return {
        photo: { ...size, at: [0, top - size.heightMm] as const, jpeg: photo.jpeg },
        marks: moveMarks(name.marks, 0, top - size.heightMm - 2),
      };
    });
    return { marks: shown.flatMap(({ marks }) => marks), photos: shown.map(({ photo }) => photo) };
  });
}
