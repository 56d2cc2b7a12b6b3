import { type At, type Box, boxesOverlap, boxRing } from '../../plane';
import type { Ruler } from '../../units';
import type { CardPiece, CutStep } from '../sheet/cut-order';
import { lengthText } from '../strokes/length-text';
import { CAP_HEIGHT, textWidthMm } from '../strokes/letters';
import { areaMark, centredText, lineMark, type TextMark, textBox } from '../strokes/marks';
import type { Mark } from '../strokes/types';

export interface CutNumbersStyle {
  /** A piece's place on paper, mm. */
  readonly box: (piece: CardPiece) => Box;
  readonly ruler: Ruler;
  readonly sizeMm: number;
}

/** The cuts of a sheet; each carries its number in a ring and its fence setting where they cover no words and no other cut's. */
export function drawCutNumbers(
  steps: readonly CutStep[],
  labels: readonly TextMark[],
  style: CutNumbersStyle,
): Mark[] {
  const taken = labels.map(textBox);
  const lines = steps.map((step) => lineMark('cut', cutLine(step, style.box), `cut ${step.number}`));
  const numbers = steps.flatMap((step) => {
    const plate = plateOf(step, style);
    const tries = SHARES.map((share) => plate.at(share));
    const place =
      tries.find((tried) => taken.every((other) => !boxesOverlap(tried, other, -0.4))) ?? tries[0]!;
    taken.push(place);
    return [areaMark('paper', boxRing(place)), ...plate.draw(place)];
  });
  return [...lines, ...numbers];
}

/** How far along its cut a plate may stand: near the start first, so that numbers line up along an edge. */
const SHARES = [0, 0.06, 0.12, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1];
const CLEAR = 1.4; // between a plate and the end of its cut, mm on paper
const BETWEEN = 0.8; // between the ring and the fence setting

/** Ring and fence setting together: beside each other on a level cut, above each other on an upright one. */
function plateOf(step: CutStep, { box, ruler, sizeMm }: CutNumbersStyle) {
  const radius = (step.number > 9 ? 0.85 : 0.72) * sizeMm;
  const fence = lengthText(step.fence, ruler).number;
  const fenceWidth = textWidthMm(fence, sizeMm);
  const level = step.way === 'level';
  const width = level ? 2 * radius + BETWEEN + fenceWidth + 0.6 : Math.max(2 * radius, fenceWidth) + 0.6;
  const height = level ? 2 * radius : 2 * radius + BETWEEN + CAP_HEIGHT * sizeMm + 0.6;
  const [[fromX, fromY], [toX, toY]] = cutLine(step, box);
  const key = `cut ${step.number}`;
  return {
    at: (share: number): Box => {
      const room = Math.max(0, (level ? toX - fromX - width : toY - fromY - height) - 2 * CLEAR);
      const start = CLEAR + share * room;
      const left = level ? fromX + start : fromX - width / 2;
      const bottom = level ? fromY - height / 2 : fromY + start;
      return { left, bottom, right: left + width, top: bottom + height };
    },
    draw: ({ left, bottom, right, top }: Box): Mark[] => {
      const middle: At = [(left + right) / 2, (bottom + top) / 2];
      const ring: At = level ? [left + radius, middle[1]] : [middle[0], bottom + radius];
      const text: At = level
        ? [right - 0.3 - fenceWidth / 2, middle[1]]
        : [middle[0], top - 0.3 - (CAP_HEIGHT * sizeMm) / 2];
      return [
        { kind: 'arc', ink: 'guide', centre: ring, radius, fromDeg: 0, sweepDeg: 360, key },
        centredText(`${step.number}`, ring, sizeMm, { bold: true, key }),
        centredText(fence, text, sizeMm, { key }),
      ];
    },
  };
}

function cutLine({ way, piece, first }: CutStep, box: (piece: CardPiece) => Box): [At, At] {
  const [all, near] = [box(piece), box(first)];
  return way === 'upright'
    ? [
        [near.right, all.bottom],
        [near.right, all.top],
      ]
    : [
        [all.left, near.top],
        [all.right, near.top],
      ];
}
