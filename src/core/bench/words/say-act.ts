import { type BlankSide, tabEndOf } from '../../net/tab-end';
import type { PieceNet } from '../../net/types';
import { printLength, type Ruler, roundToTick, spellLength, type Ticks, ticks } from '../../units';
import type { BenchOp, BenchPoint, BenchTool, CardFace, CloseWay } from '../types';
import { panelLabels, spokenLabels } from './panel-labels';
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
  labels: spokenLabels(panelLabels(piece)),
});

/** `11 × 4 1/2 in`, across first. */
const saySize = (across: Ticks, up: Ticks, ruler: Ruler): string =>
  sayLengths([across, up], ruler).replace(' and ', ' × ');

/** With the fence on the right everything is measured in a mirror, so left is right and a turn runs the other way. */
const side = (measured: 'left' | 'right', { fence }: Speech): 'left' | 'right' =>
  fence === 'left' ? measured : measured === 'left' ? 'right' : 'left';

export const sayBlank = ({ across, up }: Op<'blank'>, { ruler }: Speech): string =>
  `Cut ${saySize(across, up, ruler)}.`;

/** `back`: it undoes the turn before. */
export const sayTurn = (turn: Op<'turn'>, back: boolean, { fence }: Speech): string =>
  back ? 'Turn back.' : `${capital(turnWords(turn, fence))}.`;

/** Measured from a fence on the right, a turn runs the other way. */
export function turnWords({ quarters }: Op<'turn'>, fence: Speech['fence']): string {
  if (quarters === 2) return 'half turn';
  return `quarter turn ${(quarters === 1) === (fence === 'left') ? 'counterclockwise' : 'clockwise'}`;
}

/** Which way it is turned over matters only while something is still measured. */
export const sayFlip = (outsideUp: boolean, measured: boolean): string =>
  `Turn ${measured ? 'over left to right, ' : ''}${outsideUp ? 'good side up' : 'inside up'}.`;

/** Scores at these marks, each between the same stops. */
export const sayScores = (at: readonly Ticks[], spans: readonly Span[], { ruler }: Speech): string =>
  spans.length > 0
    ? `Score at ${sayLengths(at, ruler)}, ${saySpans(spans, ruler)}.`
    : `Score at ${sayLengths(at, ruler)}.`;

/** Slits of the same length, in one breath. `up`: the card's length as it lies. */
export function saySlits(slits: readonly Op<'slit'>[], up: Ticks, { ruler }: Speech): string {
  const at = sayLengths(
    slits.map((slit) => slit.at),
    ruler,
  );
  const [first] = slits;
  if (!first) return '';
  if (first.from === 0) return `Slit the lower ${sayLength(first.to, ruler)} at ${at}.`;
  if (first.to === up) return `Slit at ${at}, from ${sayLength(first.from, ruler)} up.`;
  return `Slit at ${at}, ${saySpans([first], ruler)}.`;
}

export type Span = Pick<Op<'slit'>, 'from' | 'to'>;

/** `from 2 1/2 to 5 and 7 1/2 to 10 in up`, off the near edge; the unit is said once if every end is on its mark. */
function saySpans(spans: readonly Span[], ruler: Ruler): string {
  const ends = spans.flatMap(({ from, to }) => [from, to]);
  const bare = ends.every((end) => printLength(end, ruler).exact);
  const say = (end: Ticks) =>
    bare ? sayLength(end, ruler).slice(0, -ruler.unit.length - 1) : sayLength(end, ruler);
  return `from ${sayList(spans.map(({ from, to }) => `${say(from)} to ${say(to)}`))}${bare ? ` ${ruler.unit}` : ''} up`;
}

/** Corners of the same size, in one breath. */
export function sayCorners(corners: readonly Op<'corner'>[], speech: Speech): string {
  const names = corners.map(({ corner }) => {
    const [end, measured] = corner.split('-') as ['near' | 'far', 'left' | 'right'];
    return `${end} ${side(measured, speech)}`;
  });
  const [first] = corners;
  if (!first) return '';
  const size = saySize(first.across, first.up, speech.ruler);
  if (corners.length === 4) return `Cut away all four corners: ${size}.`;
  return `Cut away the ${sayList(names)} corner${corners.length > 1 ? 's' : ''}: ${size}.`;
}

/** `from 10 × 3 to 11 × 2 5/8`, and on from there as far as the lines run. */
export const sayWay = (points: readonly BenchPoint[], { ruler }: Speech): string =>
  `from ${points.map((point) => sayPlace(point, ruler)).join(' to ')}`;

export const sayKept = ({ keeps }: Pick<Op<'snip' | 'cutPath'>, 'keeps'>): string =>
  keeps ? '; keep the smaller part' : '';

export const sayPath = (path: Op<'cutPath'>, again: string, { ruler }: Speech): string =>
  `${path.points.map((point) => sayPlace(point, ruler)).join(', ')}${sayKept(path)}${again}.`;

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

/** `Hole 1: round, 1/4 in, middle at 2 × 3.` The middle is what a punch is set on. */
export function sayHole(name: string, { hole, ring }: Op<'window'>, { ruler }: Speech): string {
  const [across, up] = [ring.map(({ x }) => x), ring.map(({ y }) => y)].map((all) => ({
    least: Math.min(...all),
    most: Math.max(...all),
  })) as [Extent, Extent];
  const [wide, high] = [across, up].map(({ least, most }) => ticks(most - least)) as [Ticks, Ticks];
  const middle = ({ least, most }: Extent) => roundToTick((least + most) / 2);
  const size = hole === 'round' && wide === high ? sayLength(wide, ruler) : saySize(wide, high, ruler);
  return `${capital(name)}: ${hole}, ${size}, middle at ${sayPlace({ x: middle(across), y: middle(up) }, ruler)}.`;
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
  return `Fold every score right over${way}; rub down, open.`;
}

/** Adhesive on panels that take the same: `the outside of the tab, 3 in`, `the inside of both flaps, 2 strips of 3 in each`. */
export function sayStick(sticks: readonly Op<'stick'>[], { ruler, labels }: Speech): string {
  const [first] = sticks;
  if (!first) return '';
  const { face, tape } = first;
  const panels = sayPanels([...new Set(sticks.map(({ panel }) => panel))], labels);
  if (tape === 'glue') return `Dab liquid glue on the ${face} of ${panels}.`;
  const strips = tape.strips === 1 ? '' : `${tape.strips} strips of `;
  const each = sticks.length > 1 ? ' each' : '';
  return `Tape the ${face} of ${panels}, ${strips}${sayLength(tape.length, ruler)}${each}.`;
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
 * A fold and the press it ends in, in one sentence: `Fold the front wall over onto the tab`, which has the adhesive, or `Fold the back flap
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

/** Walls that each fold onto the tabs named after them: `Fold the left and right walls up onto their tabs.` */
export function sayFoldOntoTheirs(
  fold: Op<'close'>,
  glued: readonly Op<'glue'>[],
  stuck: ReadonlyMap<string, CardFace>,
  { labels }: Speech,
): string | null {
  const way = ONTO[fold.way];
  if (fold.panels.length < 2 || fold.by !== 'fold' || way === undefined) return null;
  const label = (panel: string): readonly string[] => labels.get(panel)?.split(' ') ?? [];
  const theirs = fold.panels.flatMap((wall) =>
    [...stuck.keys()]
      .filter((tab) =>
        label(wall)
          .slice(0, -1)
          .every((word) => label(tab).includes(word)),
      )
      .map((tab) => `${tab} ${wall}`),
  );
  const isTabs = [...stuck.keys()].every((tab) => label(tab).at(-1) === 'tab');
  const isSame = glued.map(({ panel, onto }) => `${panel} ${onto}`).join() === theirs.join();
  if (
    !isTabs ||
    !isSame ||
    glued.length <= fold.panels.length / 2 ||
    !glued.every((op) => meetsOther(op, stuck))
  )
    return null;
  return `Fold ${sayPanels(fold.panels, labels)} ${way} onto their tabs.`;
}

/** `Thread 5 in of ribbon through the front wall.` */
export const sayThread = ({ panel, length }: Op<'thread'>, { ruler, labels }: Speech): string =>
  `Thread ${sayLength(length, ruler)} of ribbon through ${sayPanels([panel], labels)}.`;

const ONTO: Partial<Readonly<Record<CloseWay, string>>> = { flat: 'over', up: 'up', in: 'in' };

/** `rim wall 2` without its number. */
const nounPhrase = (label: string): string => label.replace(/ \d+$/, '');

/** `Fold the top dust flaps in.` */
export function sayClose({ panels, by, way }: Op<'close'>, { labels }: Speech): string {
  if (way === 'open') return by === 'tuck' ? 'Open and tuck it in.' : 'Open and square it.';
  if (by === 'tuck') return sayTuck(panels, labels);
  const those = sayPanels(panels, labels);
  switch (way) {
    case 'flat':
      return `Fold ${those} over.`;
    case 'back':
      return `Fold ${those} back.`;
    case 'up':
      return `Fold ${those} up.`;
    case 'in':
      return `Fold ${those} in.`;
    case 'out':
      return `Fold ${those} out.`;
    case 'together':
      return `Bring ${those} together.`;
    case 'round':
      return `Roll up ${those}.`;
  }
}

/** A lid takes its tuck along. */
function sayTuck(panels: readonly string[], labels: Labels): string {
  const [lid, tuck] = panels.map((panel) => labels.get(panel) ?? panel);
  return panels.length === 2 && lid?.endsWith('lid') && tuck === lid.replace(/lid$/, 'tuck')
    ? `Tuck the ${lid} in.`
    : `Tuck ${sayPanels(panels, labels)} in.`;
}
