import { type BlankSide, tabEndOf } from '../../net/tab-end';
import type { PieceNet } from '../../net/types';
import { type Ruler, roundToTick, spellLength, type Ticks, ticks } from '../../units';
import type { BenchOp, BenchPoint, BenchTool, CardFace, CloseWay, HoleKind } from '../types';
import { panelLabels } from './panel-labels';
import { isRing } from './panel-ring';
import { sayLength, sayLengths, sayList, sayPlace } from './say-length';
import { type Labels, sayPanels } from './say-panels';

export type Op<Name extends BenchOp['op']> = Extract<BenchOp, { op: Name }>;

/** How a card speaks: the maker's ruler, the side their fence is on, where the tab ends, and what the panels are called. */
export interface Speech {
  readonly ruler: Ruler;
  readonly fence: 'left' | 'right';
  readonly tabEnd: BlankSide | null;
  readonly labels: Labels;
  /** Scores are pressed on both faces of the piece, so that they do not all fold one way. */
  readonly scoredOnBoth?: boolean;
}

export const speechFor = (tool: BenchTool, piece: PieceNet): Speech => ({
  ruler: { unit: tool.unit, finest: tool.finestMark },
  fence: tool.fence ?? 'left',
  tabEnd: tabEndOf(piece),
  labels: panelLabels(piece),
});

/** With the fence on the right everything is measured in a mirror, so left is right and a turn runs the other way. */
const side = (measured: 'left' | 'right', { fence }: Speech): 'left' | 'right' =>
  fence === 'left' ? measured : measured === 'left' ? 'right' : 'left';

export const sayBlank = ({ across, up }: Op<'blank'>, { ruler }: Speech): string =>
  `Cut a piece ${sayLengths([across, up], ruler).replace(' and ', ' × ')}.`;

/** `back`: the card lies as it lay at first. */
export function sayTurn(turn: Op<'turn'>, back: boolean, { fence }: Speech): string {
  const words = turnWords(turn, fence);
  return back ? `Back again: ${words}.` : `${capital(words)}.`;
}

/** Measured from a fence on the right, a turn runs the other way. */
export function turnWords({ quarters }: Op<'turn'>, fence: Speech['fence']): string {
  if (quarters === 2) return 'half turn';
  return `quarter turn ${(quarters === 1) === (fence === 'left') ? 'counterclockwise' : 'clockwise'}`;
}

/** Which way it is turned over matters only while something is still measured. */
export const sayFlip = (outsideUp: boolean, measured: boolean): string =>
  `Turn over${measured ? ', left to right' : ''}: ${outsideUp ? 'good side up' : 'inside up'}.`;

/** Scores with the same stops, in one breath. */
export function sayScores(scores: readonly Op<'score'>[], { ruler }: Speech): string {
  const at = sayLengths(
    scores.map((score) => score.at),
    ruler,
  );
  const span = scores[0]?.span ?? null;
  return span ? `Score at ${at}, ${saySpan(span, ruler)}.` : `Score at ${at}.`;
}

/** Slits of the same length, in one breath. `up`: the card's length as it lies. */
export function saySlits(slits: readonly Op<'slit'>[], up: Ticks, { ruler }: Speech): string {
  const at = sayLengths(
    slits.map((slit) => slit.at),
    ruler,
  );
  const [first] = slits;
  if (!first) return '';
  if (first.from === 0) return `Slit the lower ${sayLength(first.to, ruler)} at ${at}.`;
  if (first.to === up) return `Slit at ${at}, from ${sayLength(first.from, ruler)} up to the far edge.`;
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
  const size = sayLengths([first.across, first.up], speech.ruler).replace(' and ', ' × ');
  if (corners.length === 4) return `Cut away all four corners: ${size}.`;
  return `Cut away the ${sayList(names)} corner${corners.length > 1 ? 's' : ''}: ${size}.`;
}

const sayWay = (points: readonly BenchPoint[], { ruler }: Speech): string => {
  const [first = '', ...rest] = points.map((point) => sayPlace(point, ruler));
  return `from ${first} to ${rest.join(', ')}`;
};

export const sayRuler = ({ op, a, b }: Op<'scoreLine' | 'slitLine'>, again: string, speech: Speech): string =>
  `${op === 'scoreLine' ? 'Score' : 'Slit'} ${sayWay([a, b], speech)}${again}.`;

const sayKept = ({ keeps }: Op<'snip' | 'cutPath'>): string => (keeps ? '; keep the smaller part' : '');

export const saySnip = (snip: Op<'snip'>, again: string, speech: Speech): string =>
  `Snip off ${sayWay([snip.a, snip.b], speech)}${sayKept(snip)}${again}.`;

export const sayPath = (path: Op<'cutPath'>, again: string, speech: Speech): string =>
  `${capital(sayWay(path.points, speech))}${sayKept(path)}${again}.`;

/** A window with level and upright sides is known by two corners. */
export function sayWindow({ ring }: Op<'window'>, speech: Speech): string {
  const [first, , third] = ring;
  if (ring.length === 4 && first && third && isUpright(ring))
    return `Cut out the window ${sayWay([first, third], speech)}.`;
  return `Cut out the window with corners ${ring.map((point) => sayPlace(point, speech.ruler)).join(', ')}.`;
}

export const isUpright = (ring: readonly BenchPoint[]): boolean =>
  ring.every((p, i) => {
    const q = ring[(i + 1) % ring.length] ?? p;
    return p.x === q.x || p.y === q.y;
  });

/** What is laid out by template: known by a number, its ends and, for a curve, its rise. */
export const sayCurve = (name: string, { points, rise }: Op<'scoreCurve'>, { ruler }: Speech): string =>
  `${capital(name)}, ${sayEnds(points, ruler)}, ${sayLength(rise, ruler)} deep.`;

export const sayCurvedCut = (name: string, path: Op<'cutPath'>, speech: Speech): string =>
  `${capital(name)}, ${sayEnds(path.points, speech.ruler)}${sayKept(path)}.`;

export const HOLE_WORDS: Readonly<Record<HoleKind, string>> = {
  window: 'a window',
  'rounded window': 'a window with rounded corners',
  arch: 'an arch',
  round: 'a round hole',
  oval: 'an oval',
  heart: 'a heart',
  slot: 'a slot',
};

/** `Hole 1, a round hole 1/4 in × 1/4 in, its middle 2 in across, 3 in up.` The middle is what a punch is set on. */
export function sayHole(name: string, { hole, ring }: Op<'window'>, { ruler }: Speech): string {
  const [across, up] = [ring.map(({ x }) => x), ring.map(({ y }) => y)].map((all) => ({
    least: Math.min(...all),
    most: Math.max(...all),
  })) as [Extent, Extent];
  const long = ({ least, most }: Extent) => sayLength(ticks(most - least), ruler);
  const middle = ({ least, most }: Extent) => roundToTick((least + most) / 2);
  return `${capital(name)}, ${HOLE_WORDS[hole]} ${long(across)} × ${long(up)}, its middle at ${sayPlace({ x: middle(across), y: middle(up) }, ruler)}.`;
}

interface Extent {
  readonly least: number;
  readonly most: number;
}

const sayEnds = (points: readonly BenchPoint[], ruler: Ruler): string => {
  const [first, last] = [points[0], points.at(-1)];
  return first && last ? `from ${sayPlace(first, ruler)} to ${sayPlace(last, ruler)}` : '';
};

/** Every point of a template line, across and up, for a maker without the printed template. */
export const sayTemplate = (name: string, points: readonly BenchPoint[]): string =>
  `${capital(name)} runs through ${points.map(({ x, y }) => `${millimetre(x)} × ${millimetre(y)}`).join('; ')} mm.`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const millimetre = (length: Ticks): string => spellLength(length, 'mm').replace(' mm', '');

/** A score folds over its bead, which is towards the maker once the piece is turned over; where some were pressed on the other face, it is said. */
export function sayCrease({ over }: Op<'crease'>, { scoredOnBoth = false }: Speech): string {
  const way =
    over === 'groove' ? ', towards its scored side' : scoredOnBoth ? ', away from its scored side' : '';
  return `Fold every score right over${way}; rub down, open flat.`;
}

/** Adhesive on panels that take the same. */
export function sayStick(sticks: readonly Op<'stick'>[], { ruler, labels }: Speech): string {
  const [first] = sticks;
  if (!first) return '';
  const { face, tape } = first;
  const panels = sayPanels([...new Set(sticks.map(({ panel }) => panel))], labels);
  if (tape === 'glue') return `Dab liquid glue on the ${face} of ${panels}.`;
  const strips = tape.strips === 1 ? '1 strip' : `${tape.strips} strips`;
  const each = sticks.length > 1 ? ' each' : '';
  return `Tape the ${face} of ${panels}: ${strips}${each}, ${sayLength(tape.length, ruler)}.`;
}

/** Whether adhesive on one face meets the other face of what it is pressed to, as it does wherever the words do not say otherwise. */
const meetsOther = ({ panel, lap }: Op<'glue'>, stuck: ReadonlyMap<string, CardFace>): boolean =>
  stuck.has(panel) && stuck.get(panel) !== lap;

/** Panels pressed onto one, or one onto several. `stuck`: which face of each has its adhesive in this step. */
export function sayGlue(
  glued: readonly Op<'glue'>[],
  stuck: ReadonlyMap<string, CardFace>,
  { labels }: Speech,
): string {
  const said = (of: readonly string[]): string => sayPanels([...new Set(of)], labels);
  const panels = said(glued.map(({ panel }) => panel));
  const lap = glued.every((op) => meetsOther(op, stuck)) ? '' : `the ${glued[0]?.lap} of `;
  if (isRing(glued)) {
    const next = nounPhrase(labels.get(glued[0]?.onto ?? '') ?? '');
    return `Press ${panels}, each to ${lap}the next ${next}.`;
  }
  return `Press ${panels} to ${lap}${said(glued.map(({ onto }) => onto))}.`;
}

/**
 * A fold and the press it ends in, in one sentence: `Fold the front wall over flat onto the tab`, which has the adhesive, or `Fold the back flap
 * in onto the front flap`, which has none. Null where it takes two.
 */
export function sayFoldOnto(
  fold: Op<'close'>,
  glued: readonly Op<'glue'>[],
  stuck: ReadonlyMap<string, CardFace>,
  speech: Speech,
): string | null {
  const [folded, ...others] = fold.panels;
  const way = ONTO[fold.way];
  if (folded === undefined || others.length > 0 || fold.by !== 'fold' || way === undefined) return null;
  if (glued.length === 0 || !glued.every((op) => meetsOther(op, stuck))) return null;
  const met = stuck.has(folded)
    ? glued.every(({ panel }) => panel === folded) && glued.map(({ onto }) => onto)
    : glued.every(({ onto }) => onto === folded) && glued.map(({ panel }) => panel);
  if (!met) return null;
  const onto = sayPanels([...new Set(met)], speech.labels);
  return `Fold ${sayPanels([folded], speech.labels)} ${way} onto ${onto}.`;
}

const ONTO: Partial<Readonly<Record<CloseWay, string>>> = { flat: 'over flat', up: 'up', in: 'in' };

/** `rim wall 2` without its number. */
const nounPhrase = (label: string): string => label.replace(/ \d+$/, '');

/** `Fold the top dust flaps in.` */
export function sayClose({ panels, by, way }: Op<'close'>, { labels }: Speech): string {
  if (way === 'open') return by === 'tuck' ? 'Open it up and tuck it in.' : 'Open it up and square it.';
  if (by === 'tuck') return sayTuck(panels, labels);
  const those = sayPanels(panels, labels);
  switch (way) {
    case 'flat':
      return `Fold ${those} over flat.`;
    case 'back':
      return `Fold ${those} back flat, outward.`;
    case 'up':
      return `Fold ${those} up.`;
    case 'in':
      return `Fold ${those} in.`;
    case 'out':
      return `Fold ${those} out.`;
    case 'together':
      return `Bring ${those} together.`;
  }
}

/** A lid takes its tuck along. */
function sayTuck(panels: readonly string[], labels: Labels): string {
  const [lid, tuck] = panels.map((panel) => labels.get(panel) ?? panel);
  return panels.length === 2 && lid?.endsWith('lid') && tuck === lid.replace(/lid$/, 'tuck')
    ? `Close the ${lid} and tuck it in.`
    : `Tuck ${sayPanels(panels, labels)} in.`;
}
