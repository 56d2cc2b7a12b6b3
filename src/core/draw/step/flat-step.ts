import {
  type BenchCard,
  type BenchProgram,
  type BenchTool,
  type CardPlace,
  type CardStep,
  partsOnCard,
  placeAtBench,
  sizeAsItLies,
} from '../../bench';
import type { Point } from '../../net/types';
import { type At, type Box, boxRing } from '../../plane';
import { toMm } from '../../units/ticks';
import { textWidthMm } from '../strokes/letters';
import { areaMark, boxOfMarks, centredText, lineMark, pointOfArc, textMark } from '../strokes/marks';
import type { Ink, Mark } from '../strokes/types';
import { drawStepNumbers } from './step-numbers';
import type { StepState } from './step-state';

/** Of the arrows for turning and flipping, mm on paper. */
const RADIUS = 6;
const BARB = 2.4;

export interface StepPicture {
  readonly program: BenchProgram;
  readonly tool: BenchTool;
  readonly step: CardStep;
  /** Paper millimeters for one millimeter of card. */
  readonly scale: number;
  /** Type size of the numbers, mm on paper. */
  readonly textMm: number;
  readonly plain?: boolean;
}

/** The card flat on the bench, as it lies in this step: fence, marks, what is scored, slit or cut away, and how it was turned. */
export function drawFlatStep(state: StepState, picture: StepPicture): Mark[] {
  const { before, after } = state;
  const { step, scale, tool } = picture;
  const size = sizeAsItLies(before.blank, step.lie);
  const card: At = [toMm(size.across) * scale, toMm(size.up) * scale];
  const place = placer(before, picture);
  const corner = ({ x, y }: Point): At => place([x, y]);
  const [ring = [], ...holes] = [before.ring, ...before.holes].map((points) => points.map(corner));
  const parts = (ink: Ink, lines: BenchCard['slits'], on: BenchCard): Mark[] =>
    joinRuns(lines.flatMap((line) => partsOnCard(on, line))).map((run) => lineMark(ink, run.map(place)));
  const numbers = picture.plain ? [] : drawStepNumbers(state.acts, size, card, picture);
  return [
    areaMark('paper', ring, undefined, holes),
    ...state.cutOff.map((points) => areaMark('waste', points.map(corner))),
    ...parts('guide', before.scores, before),
    ...parts('slit', before.slits, before),
    ...[ring, ...holes].map((points) => lineMark('edge', [...points, ...points.slice(0, 1)])),
    ...parts(scoreInk(picture), state.newScores, after),
    ...parts('slit', state.newSlits, after),
    ...joinRuns(state.newCuts.map(({ a, b }) => [placeOf(a), placeOf(b)])).map((run) =>
      lineMark('cut', run.map(place)),
    ),
    ...(isFenced(state) ? drawFence(card, tool, (picture.plain ? 1 : 0.65) * picture.textMm) : []),
    ...numbers,
    ...(picture.plain ? [] : drawMoves(state, card, picture, numbers)),
  ];
}

const placeOf = ({ x, y }: Point): CardPlace => [x, y];

/** Pieces that meet end to end as one run, so that the chords of a curve are drawn in one stroke. */
function joinRuns(pieces: readonly (readonly [CardPlace, CardPlace])[]): readonly (readonly CardPlace[])[] {
  const runs: CardPlace[][] = [];
  const meet = (p: CardPlace | undefined, q: CardPlace): boolean => p?.[0] === q[0] && p[1] === q[1];
  for (const [a, b] of pieces) {
    const run = runs.at(-1);
    if (run && meet(run.at(-1), a)) run.push(b);
    else if (run && meet(run.at(-1), b)) run.push(a);
    else if (run?.length === 2 && meet(run[0], a)) run.reverse().push(b);
    else if (run?.length === 2 && meet(run[0], b)) run.reverse().push(a);
    else runs.push([a, b]);
  }
  return runs;
}

const isFenced = ({ acts }: StepState): boolean => acts.some(({ op }) => op === 'score' || op === 'slit');

/** From the net's own frame to paper, as the card lies and as hands see it. */
function placer({ blank }: BenchCard, { step, tool, scale }: StepPicture): (place: CardPlace) => At {
  const { across } = sizeAsItLies(blank, step.lie);
  return (place) => {
    const [x, y] = placeAtBench(blank, step.lie, place);
    return [toMm(tool.fence === 'right' ? across - x : x) * scale, toMm(y) * scale];
  };
}

/** Scores are drawn the way they will fold, seen from the face they are pressed on: away from it over the bead, else towards it. */
const scoreInk = ({ program }: StepPicture): Ink =>
  program.faceUp === 'outside' ? 'score-mountain' : 'score-valley';

const FENCE_MM = 5; // width of the fence bar, mm on paper
const WORD = 'fence';
const BEYOND = 3; // how far the bar stands out beyond the card

function drawFence([across, up]: At, { fence = 'left' }: BenchTool, textMm: number): Mark[] {
  const left = fence === 'left' ? -FENCE_MM : across;
  // On a narrow card the bar is as long as its word.
  const half = Math.max(up / 2 + BEYOND, textWidthMm(WORD, textMm) / 2 + 1);
  const bar = { left, right: left + FENCE_MM, bottom: up / 2 - half, top: up / 2 + half };
  const [first = [0, 0]] = boxRing(bar);
  return [
    lineMark('guide', [...boxRing(bar), first]),
    centredText(WORD, [left + FENCE_MM / 2, up / 2], textMm, { turnDeg: 90 }),
  ];
}

// From the card to the middle of a turn arrow, without and with numbers beside it; below it; from one arrow to the next. mm on paper
const [ARROW_AWAY, ARROW_CLEAR, ARROW_BELOW, ARROW_STEP] = [10, 27, 12, 18];

/** Arrows for turns and flips: beside the card's far top corner where they are clear of its numbers, else below the card. */
function drawMoves(
  { moves }: StepState,
  [across, up]: At,
  { tool, textMm }: StepPicture,
  numbers: readonly Mark[],
): Mark[] {
  const seen = ([x, y]: At): At => [tool.fence === 'right' ? across - x : x, y];
  const beside = (away: number) =>
    arrowsAt(moves, tool, 0.65 * textMm, (i) => seen([across + away, up - 4 - i * ARROW_STEP]));
  const taken = numbers.map((mark) => boxOfMarks([mark]));
  const isClear = (arrows: readonly Mark[]) =>
    arrows.every((arrow) => taken.every((box) => !overlap(boxOfMarks([arrow]), box)));
  return (
    [ARROW_AWAY, ARROW_CLEAR].map(beside).find(isClear) ??
    arrowsAt(moves, tool, 0.65 * textMm, (i) => seen([ARROW_STEP / 2 + i * ARROW_STEP, -ARROW_BELOW]))
  );
}

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;

const arrowsAt = (
  moves: StepState['moves'],
  { fence }: BenchTool,
  sizeMm: number,
  centre: (nth: number) => At,
): Mark[] =>
  moves.flatMap((op, i) => {
    if (op.op !== 'turn') return drawFlipArrow(centre(i), 'flip', sizeMm);
    const quarters = op.quarters === 3 ? -1 : op.quarters;
    const words = op.quarters === 2 ? '½ turn' : '¼ turn';
    return drawTurnArrow(centre(i), quarters * (fence === 'right' ? -90 : 90), words, sizeMm);
  });

/** An arrow round a point that says how the card was turned: `sweepDeg` counter-clockwise positive, words below it. */
function drawTurnArrow(centre: At, sweepDeg: number, words: string, sizeMm: number): Mark[] {
  const fromDeg = 90 - sweepDeg / 2;
  const tip = pointOfArc(centre, RADIUS, fromDeg + sweepDeg);
  return [
    { kind: 'arc', ink: 'move', centre, radius: RADIUS, fromDeg, sweepDeg },
    arrowHead(tip, fromDeg + sweepDeg + Math.sign(sweepDeg) * 90),
    below(centre, words, sizeMm),
  ];
}

/** An arrow over a point that says the card was flipped left to right. */
function drawFlipArrow([x, y]: At, words: string, sizeMm: number): Mark[] {
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
