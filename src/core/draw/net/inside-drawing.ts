import type { InsidePiece } from '../../dress';
import type { BoxNet, Point } from '../../net/types';
import type { At } from '../../plane';
import { toMm } from '../../units';
import { drawLine } from '../strokes/line-marks';
import { areaMark, frameMarks, lineMark } from '../strokes/marks';
import type { Drawing, Mark } from '../strokes/types';
import { UPRIGHT } from './lying-piece';
import { linesOfNet } from './net-lines';

/** A piece flat with its inside up, and on it what goes on the inside of one of its panels. `name`: what that is. */
export function drawInsidePiece(
  net: BoxNet,
  { part, ring, panel }: InsidePiece,
  name: string,
  space: { readonly widthMm: number; readonly heightMm: number },
): Drawing | null {
  const piece = net.pieces.find(({ id }) => id === part);
  if (!piece) return null;
  const corners = [...piece.faces.flatMap((face) => face.ring.map(atMm)), ...ring];
  const extent = (way: 0 | 1): number => {
    const all = corners.map((at) => at[way]);
    return Math.max(...all) - Math.min(...all);
  };
  const scale = Math.min((space.widthMm - 2) / extent(0), (space.heightMm - 2) / extent(1));
  const place = ([x, y]: At): At => [x * scale, y * scale];
  const own = ring.map(place);
  const marks = [
    ...piece.faces.map((face) =>
      areaMark(
        'paper',
        face.ring.map((at) => place(atMm(at))),
        undefined,
        face.holes.map((hole) => hole.map((at) => place(atMm(at)))),
      ),
    ),
    ...linesOfNet(piece, UPRIGHT).flatMap((line) =>
      drawLine(line, scale).map(
        (mark) => ({ ...mark, ink: line.ink.startsWith('score') ? 'guide' : 'edge' }) as Mark,
      ),
    ),
    areaMark('covered', own),
    lineMark('cut', [...own, ...own.slice(0, 1)]),
  ];
  const { origin: _, ...drawing } = frameMarks(
    marks,
    name,
    `${piece.label}, flat with the inside up. ${name} lies on the inside of the ${panel}.`,
  );
  return drawing;
}

const atMm = ({ x, y }: Point): At => [toMm(x), toMm(y)];
