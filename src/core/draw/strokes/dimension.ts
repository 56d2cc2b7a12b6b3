import type { At } from '../../plane';
import { CAP_HEIGHT } from './letters';
import { lineMark, textMark } from './marks';
import type { Mark } from './types';

const CLEAR = 1.2; // between the card and its extension lines, mm on paper
const AWAY = 4; // from the card to the dimension line
const TICK = 0.9;

/** A length between two points of an upright or level edge, drawn `out` from it (unit vector), its words in the middle. */
export function drawDimension(from: At, to: At, out: At, words: string, sizeMm: number): Mark[] {
  const off = ([x, y]: At, away: number): At => [x + away * out[0], y + away * out[1]];
  const [start, end] = [off(from, AWAY), off(to, AWAY)];
  const tick = ([x, y]: At): Mark =>
    lineMark('dimension', [
      [x - TICK, y - TICK],
      [x + TICK, y + TICK],
    ]);
  const [x, y] = off([(start[0] + end[0]) / 2, (start[1] + end[1]) / 2], 1.6);
  const drop = CAP_HEIGHT * sizeMm;
  const level = out[0] === 0;
  const foot: At = level ? [x, out[1] > 0 ? y : y - drop] : [x, y - drop / 2];
  return [
    ...[from, to].map((point) => lineMark('dimension', [off(point, CLEAR), off(point, AWAY + 1)])),
    lineMark('dimension', [start, end]),
    tick(start),
    tick(end),
    textMark(words, foot, sizeMm, { anchor: level ? 'middle' : out[0] > 0 ? 'start' : 'end', bold: true }),
  ];
}
