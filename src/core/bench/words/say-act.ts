import { type Ruler, roundToTick, spellLength, type Ticks, ticks } from '../../units';
import type { BenchOp, BenchPoint, BenchTool } from '../types';
import { sayFold } from './say-fold';
import { sayLength, sayLengths, sayList, sayPoint } from './say-length';

export type Op<Name extends BenchOp['op']> = Extract<BenchOp, { op: Name }>;

/** How a card speaks: the maker's ruler, the side her fence is on, and what the panels are called. */
export interface Speech {
  readonly ruler: Ruler;
  readonly fence: 'left' | 'right';
  readonly labels: ReadonlyMap<string, string>;
}

export const speechFor = (tool: BenchTool, labels: Speech['labels']): Speech => ({
  ruler: { unit: tool.unit, finest: tool.finestMark },
  fence: tool.fence ?? 'left',
  labels,
});

/** With the fence on the right everything is measured in a mirror, so left is right and a turn runs the other way. */
const side = (measured: 'left' | 'right', { fence }: Speech): 'left' | 'right' =>
  fence === 'left' ? measured : measured === 'left' ? 'right' : 'left';

export const sayBlank = ({ across, up }: Op<'blank'>, { ruler }: Speech): string =>
  `Cut the blank ${sayLengths([across, up], ruler).replace(' and ', ' × ')}.`;

/** `back`: the card lies as it lay at first. */
export function sayTurn({ quarters }: Op<'turn'>, back: boolean, { fence }: Speech): string {
  const way = (quarters === 1) === (fence === 'left') ? 'counter-clockwise' : 'clockwise';
  const turn = quarters === 2 ? 'half round' : `a quarter turn ${way}`;
  return back ? `Turn the card back, ${turn}.` : `Turn the card ${turn}.`;
}

export const sayFlip = (outsideUp: boolean): string =>
  `Flip the card over, left to right: the ${outsideUp ? 'outside' : 'inside'} faces up.`;

/** Scores with the same stops, in one breath. */
export function sayScores(scores: readonly Op<'score'>[], { ruler }: Speech): string {
  const at = sayLengths(
    scores.map((score) => score.at),
    ruler,
  );
  const span = scores[0]?.span ?? null;
  return span ? `Score at ${at}, ${saySpan(span, ruler)}.` : `Score edge to edge at ${at}.`;
}

/** Slits of the same length, in one breath. */
export function saySlits(slits: readonly Op<'slit'>[], { ruler }: Speech): string {
  const at = sayLengths(
    slits.map((slit) => slit.at),
    ruler,
  );
  const [first] = slits;
  if (!first) return '';
  if (first.from === 0) return `Slit the lower ${sayLength(first.to, ruler)} at ${at}.`;
  return `Slit at ${at}, ${saySpan(first, ruler)}.`;
}

const saySpan = ({ from, to }: Pick<Op<'slit'>, 'from' | 'to'>, ruler: Ruler): string =>
  from === 0
    ? `from the near edge up to ${sayLength(to, ruler)}`
    : `from ${sayLength(from, ruler)} up to ${sayLength(to, ruler)}`;

/** Corners of the same size, in one breath. */
export function sayCorners(corners: readonly Op<'corner'>[], speech: Speech): string {
  const names = corners.map(({ corner }) => {
    const [end, measured] = corner.split('-') as ['near' | 'far', 'left' | 'right'];
    return `${end} ${side(measured, speech)}`;
  });
  const [first] = corners;
  if (!first) return '';
  const size = `${sayLength(first.across, speech.ruler)} across, ${sayLength(first.up, speech.ruler)} up`;
  return `Cut away the ${sayList(names)} corner${corners.length > 1 ? 's' : ''}: ${size}.`;
}

export const sayRuler = ({ op, a, b }: Op<'scoreLine' | 'slitLine'>, { ruler }: Speech): string =>
  `${op === 'scoreLine' ? 'Score' : 'Slit'} from ${sayPoint(a, ruler)} to ${sayPoint(b, ruler)}.`;

const keeping = (speech: Speech): string => `the card on the ${side('left', speech)} stays`;

export const saySnip = ({ a, b }: Op<'snip'>, speech: Speech): string =>
  `Snip from ${sayPoint(a, speech.ruler)} to ${sayPoint(b, speech.ruler)}; ${keeping(speech)}.`;

export const sayPath = ({ points }: Op<'cutPath'>, speech: Speech): string =>
  `Cut from ${points.map((point) => sayPoint(point, speech.ruler)).join(' to ')}; ${keeping(speech)}.`;

export const sayWindow = ({ ring }: Op<'window'>, { ruler }: Speech): string =>
  `Cut out the window with corners at ${ring.map((point) => sayPoint(point, ruler)).join(' and ')}.`;

/** What is laid out by template: known by a number, its ends and, for a curve, its rise. */
export const sayCurve = (name: string, { points, rise }: Op<'scoreCurve'>, { ruler }: Speech): string =>
  `${capital(name)}, ${sayEnds(points, ruler)}, rising ${sayLength(rise, ruler)}.`;

export const sayCurvedCut = (name: string, { points }: Op<'cutPath'>, speech: Speech): string =>
  `${capital(name)}, ${sayEnds(points, speech.ruler)}; ${keeping(speech)}.`;

/** `Hole 1, a round hole 1/4 in × 1/4 in, its middle 2 in across, 3 in up.` The middle is what a punch is set on. */
export function sayHole(name: string, { hole, ring }: Op<'window'>, { ruler }: Speech): string {
  const [across, up] = [ring.map(({ x }) => x), ring.map(({ y }) => y)].map((all) => ({
    least: Math.min(...all),
    most: Math.max(...all),
  })) as [Extent, Extent];
  const long = ({ least, most }: Extent) => sayLength(ticks(most - least), ruler);
  const middle = ({ least, most }: Extent) => roundToTick((least + most) / 2);
  const kind = hole === 'round' ? 'round hole' : hole;
  return `${capital(name)}, a ${kind} ${long(across)} × ${long(up)}, its middle ${sayPoint({ x: middle(across), y: middle(up) }, ruler)}.`;
}

interface Extent {
  readonly least: number;
  readonly most: number;
}

const sayEnds = (points: readonly BenchPoint[], ruler: Ruler): string => {
  const [first, last] = [points[0], points.at(-1)];
  return first && last ? `from ${sayPoint(first, ruler)} to ${sayPoint(last, ruler)}` : '';
};

/** Every point of a template line, across and up, for a maker without the printed template. */
export const sayTemplate = (name: string, points: readonly BenchPoint[]): string =>
  `${capital(name)} runs through ${points.map(({ x, y }) => `${millimetre(x)} × ${millimetre(y)}`).join('; ')} mm.`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const millimetre = (length: Ticks): string => spellLength(length, 'mm').replace(' mm', '');

const label = (panel: string, { labels }: Speech): string => labels.get(panel) ?? panel;

export const sayGlue = ({ panel, onto, lap }: Op<'glue'>, speech: Speech): string =>
  `Glue the ${label(panel, speech)} to the ${lap} of the ${label(onto, speech)}.`;

/** `Fold the right wall and left wall square up, the tab flat over.` */
export function sayClose({ panels, toDeg, by, bends }: Op<'close'>, speech: Speech): string {
  const groups: { names: string[]; fold: string }[] = [];
  panels.forEach((panel, i) => {
    const fold = sayFold(toDeg[i] ?? 0);
    const last = groups.at(-1);
    if (last?.fold === fold) last.names.push(label(panel, speech));
    else groups.push({ names: [label(panel, speech)], fold });
  });
  const verb = `${by === 'fold' ? 'Fold' : 'Tuck'}${bends ? ' and bend' : ''}`;
  return `${verb} ${groups.map(({ names, fold }) => `the ${sayList(names)} ${fold}`).join(', ')}.`;
}

/** One row of the folding list; `where` says which score. */
export const sayFoldRow = ({ panel, deg }: Op<'fold'>, where: string, speech: Speech): string =>
  `The ${label(panel, speech)} ${sayFold(deg)}, on ${where}.`;
