import type { At } from '../../plane';
import { textWidthMm } from './letters';
import { lineMark, textMark } from './marks';
import { LESSER } from './running-marks';
import type { Mark } from './types';

export type GrainWay = 'across' | 'up';

const AWAY = 5; // from the card, mm on paper
const BARB = 1.8;

/** One arrow up the sheet, right of it, with the word: the print stands this way. */
export const drawPrintWay = (size: At, textMm: number): Mark[] => drawArrow('up', size, textMm, 'print', [1]);

/** A double arrow with the word, below the card for grain across and right of it for grain up. `size`: the card on paper, mm. */
export const drawGrain = (way: GrainWay, size: At, textMm: number): Mark[] =>
  drawArrow(way, size, textMm, 'grain', [1, -1]);

function drawArrow(
  way: GrainWay,
  [across, up]: At,
  textMm: number,
  text: 'grain' | 'print',
  heads: readonly (1 | -1)[],
): Mark[] {
  const sizeMm = LESSER * textMm;
  const lengthMm = way === 'across' ? across : up;
  const word = textWidthMm(text, sizeMm) + 2;
  const reach = Math.max(word + 12, Math.min(0.4 * lengthMm, 60));
  const middle = lengthMm / 2;
  const at = (along: number, off: number): At =>
    way === 'across' ? [along, -AWAY + off] : [across + AWAY - off, along];
  const half = (sign: 1 | -1): Mark[] => {
    const tip = middle + (sign * reach) / 2;
    return [
      lineMark('grain', [at(middle + (sign * word) / 2, 0), at(tip, 0)]),
      ...(heads.includes(sign)
        ? [
            lineMark('grain', [
              at(tip - sign * BARB, 0.45 * BARB),
              at(tip, 0),
              at(tip - sign * BARB, -0.45 * BARB),
            ]),
          ]
        : []),
    ];
  };
  return [
    ...half(1),
    ...half(-1),
    textMark(text, at(middle, -0.35 * sizeMm), sizeMm, {
      anchor: 'middle',
      turnDeg: way === 'across' ? 0 : 90,
    }),
  ];
}
