import type { At } from '../../plane';
import { lineMark, pointOfArc, textMark } from './marks';
import type { Mark } from './types';

const RADIUS = 6; // mm on paper
const BARB = 2.4;

/** An arrow round a point that says how the card was turned: `sweepDeg` counter-clockwise positive, words below it. */
export function drawTurnArrow(centre: At, sweepDeg: number, words: string, sizeMm: number): Mark[] {
  const fromDeg = 90 - sweepDeg / 2;
  const tip = pointOfArc(centre, RADIUS, fromDeg + sweepDeg);
  return [
    { kind: 'arc', ink: 'move', centre, radius: RADIUS, fromDeg, sweepDeg },
    arrowHead(tip, fromDeg + sweepDeg + Math.sign(sweepDeg) * 90),
    below(centre, words, sizeMm),
  ];
}

/** An arrow over a point that says the card was flipped left to right. */
export function drawFlipArrow([x, y]: At, words: string, sizeMm: number): Mark[] {
  const tip: At = [x + RADIUS, y];
  return [
    { kind: 'arc', ink: 'move', centre: [x, y], radius: RADIUS, fromDeg: 180, sweepDeg: -180 },
    arrowHead(tip, -90),
    lineMark('move', [
      [x, y - 1],
      [x, y + RADIUS + 2],
    ]),
    below([x, y], words, sizeMm),
  ];
}

const arrowHead = (tip: At, towardsDeg: number): Mark => {
  const barb = (turn: number): At => pointOfArc(tip, BARB, towardsDeg + 180 + turn);
  return lineMark('move', [barb(25), tip, barb(-25)]);
};

const below = ([x, y]: At, words: string, sizeMm: number): Mark =>
  textMark(words, [x, y - 1.4 * sizeMm], sizeMm, { anchor: 'middle' });
