import { type BenchCard, type BenchOp, type BenchTool, type CardStep, partsOnCard, sizeAsItLies, toBench } from '../bench';
import type { PieceNet, Point } from '../net/types';
import { type Ticks, ticks, toMm } from '../units/ticks';
import { drawDimension } from './dimension';
import { lengthWords } from './length-text';
import { CAP_HEIGHT } from './letters';
import { areaMark, boxRing, centredText, lineMark } from './marks';
import { marksAbove, marksAboveFromRight } from './running-marks';
import type { StepState } from './step-state';
import { drawFlipArrow, drawTurnArrow } from './turn-arrow';
import type { At, Ink, Mark } from './types';

export interface StepPicture {
  readonly piece: PieceNet;
  readonly tool: BenchTool;
  readonly step: CardStep;
  readonly scale: number;
  readonly textMm: number;
}

const FENCE_MM = 5; // width of the fence bar on paper
const TURN_ROOM_MM = 14; // from the card's corner to the middle of a turn arrow

/** The card flat on the bench, as it lies in this step: fence, marks, what is scored, slit or cut away, and how it was turned. */
export function drawFlatStep(state: StepState, picture: StepPicture): Mark[] {
  const { step, tool, scale, textMm } = picture;
  const card = state.before ?? state.after;
  const size = sizeAsItLies(card.blank, step.lie);
  const place = placer(card, picture);
  const [across, up] = [toMm(size.across) * scale, toMm(size.up) * scale];
  const rings = [card.ring, ...card.holes].map((ring) => ring.map(place));
  const fence = step.kind === 'score' || step.kind === 'slit';
  return [
    ...(rings[0] ? [areaMark('paper', rings[0], undefined, rings.slice(1))] : []),
    ...state.cutOff.map((ring) => areaMark('waste', ring.map(place))),
    ...linesBefore(card, place),
    ...rings.map((ring) => lineMark('edge', [...ring, ring[0] ?? [0, 0]])),
    ...state.acts.flatMap((op, i) => newLines(state, op, i, picture, place)),
    ...(fence ? drawFence(across, up, tool.fence ?? 'left', textMm) : []),
    ...drawNumbers(state.acts, [across, up], picture),
    ...drawMoves(state.moves, tool, [across, up], textMm),
  ];
}

type PlacePoint = (point: Point) => At;

/** From the net's own frame to paper, as the card lies and as hands see it. */
function placer({ blank }: BenchCard, { step, tool, scale }: StepPicture): PlacePoint {
  const { across } = sizeAsItLies(blank, step.lie);
  return (point) => {
    const { x, y } = toBench(blank, step.lie, point);
    return [toMm(tool.fence === 'right' ? across - x : x) * scale, toMm(y) * scale];
  };
}
