import { type PanelWay, panelWays } from '../../fold/panel-way';
import type { PieceNet, Point } from '../../net/types';
import { type At, boxOf, type LabelShape, labelOutline } from '../../plane';
import { inches, type Ruler, type Ticks, toMm } from '../../units';
import { sizeWords } from '../strokes/length-text';
import { drawLine } from '../strokes/line-marks';
import { areaMark, centredText, frameMarks, lineMark } from '../strokes/marks';
import { fitsInside, patchBehind } from '../strokes/text-stack';
import type { Mark } from '../strokes/types';
import { type HiddenArea, hiddenAreas } from './keep-free';
import { layPiece, TURNED_OVER } from './lying-piece';
import type { NetDrawing } from './net-drawing';
import { linesOfNet } from './net-lines';
import { letterPanels } from './panel-labels';

/** Something stuck on a panel: where it lies on the net with its outside up. `behind`: on the inside, seen through an opening. */
export interface PlacedOutline {
  /** Id of the piece of the box it is stuck on. */
  readonly part: string;
  readonly left: Ticks;
  readonly bottom: Ticks;
  readonly across: Ticks;
  readonly up: Ticks;
  readonly behind: boolean;
  readonly shape?: LabelShape;
}

export interface DecorateMapOptions {
  readonly ruler: Ruler;
  /** Paper millimeters for one millimeter of card; 1 is true size. */
  readonly scale: number;
  readonly textMm: number;
  /** Dressing that is stuck on, drawn as outlines; none if left out. */
  readonly placed?: readonly PlacedOutline[];
}

/** How far a printed picture runs on beyond the cut. source: common practice, no source */
export const BLEED = inches(0, 1, 8);

/**
 * The net with its outside up, for decorating while flat: on every panel an arrow that points up once the box is folded, its name standing
 * that way; what glue or another panel hides; the seam; how far a printed picture must run on beyond the cut.
 */
export function drawDecorateMap(piece: PieceNet, options: DecorateMapOptions): NetDrawing {
  const { scale, textMm, ruler, placed = [] } = options;
  const { across } = piece.blank;
  const over = layPiece(piece, TURNED_OVER);
  const place = ({ x, y }: Point): At => [toMm(x) * scale, toMm(y) * scale];
  const mirror = ([x, y]: At): At => [(toMm(across) - x) * scale, y * scale];
  const hidden = hiddenAreas(piece);
  const ways = panelWays(piece);
  const mine = placed.filter(({ part }) => part === piece.id);
  const marks: Mark[] = [
    ...over.faces.map(({ ring, holes }) =>
      areaMark(
        'paper',
        ring.map(place),
        undefined,
        holes.map((hole) => hole.map(place)),
      ),
    ),
    ...over.waste.map((ring) => areaMark('waste', ring.map(place))),
    ...hidden.map(({ ring, glued }) => areaMark(glued ? 'bare' : 'covered', ring.map(mirror))),
    ...bleedLines(over, place, scale),
    ...linesOfNet(piece, TURNED_OVER).flatMap((line) => drawLine(line, scale)),
    ...mine.map((placed) => areaMark(placed.behind ? 'join' : 'guide', outlineOf(placed, scale))),
    ...labels(piece, over, ways, hidden, place, textMm),
    ...seamWords(piece, over, place, textMm),
  ];
  const title = `Map of ${piece.label}`;
  return { ...frameMarks(marks, title, mapInWords(piece, ways, hidden, ruler)), scale };
}

const outlineOf = ({ left, bottom, across, up, shape }: PlacedOutline, scale: number): readonly At[] =>
  labelOutline(
    {
      left: toMm(left) * scale,
      bottom: toMm(bottom) * scale,
      right: toMm(left + across) * scale,
      top: toMm(bottom + up) * scale,
    },
    shape ?? 'rectangle',
  );

/** A line beside every outer edge, as far out as the bleed goes. */
function bleedLines({ edges }: PieceNet, place: (point: Point) => At, scale: number): Mark[] {
  const off = toMm(BLEED) * scale;
  return edges
    .filter(({ right, kind }) => right === null && kind !== 'slit')
    .map(({ a, b }) => {
      const [[ax, ay], [bx, by]] = [place(a), place(b)];
      const long = Math.hypot(bx - ax, by - ay) || 1;
      // A mirrored net runs its edges the same way round: the outside is on the right.
      const [dx, dy] = [((by - ay) / long) * off, (-(bx - ax) / long) * off];
      return lineMark('bleed', [
        [ax + dx, ay + dy],
        [bx + dx, by + dy],
      ]);
    });
}

/** On each panel: an arrow and the name, both standing as the panel will stand; words on a hatch stand on a clear patch. */
function labels(
  piece: PieceNet,
  over: PieceNet,
  ways: readonly PanelWay[],
  hidden: readonly HiddenArea[],
  place: (point: Point) => At,
  textMm: number,
): Mark[] {
  return letterPanels(piece).flatMap(({ panel, words }): Mark[] => {
    const faces = over.faces.flatMap((face, at) => (face.panel === panel ? [at] : []));
    // A bent panel is several strips: the middle one says how it stands.
    const middleFace = faces[Math.floor(faces.length / 2)]!;
    const rings = faces.map((at) => over.faces[at]!.ring.map(place));
    const way = ways[middleFace]!;
    const up: At = [-way.up[0], way.up[1]];
    const lines = [words, ...standing(way, isGlued(hidden, middleFace))];
    const isHatched = hidden.some(({ face }) => faces.includes(face));
    // Smaller before shorter: what to leave bare is said last of all only by its hatch.
    for (const said of [lines, lines.slice(0, 1)])
      for (const share of SHARES) {
        const marks = labelStanding(said, middleOf(rings), up, textMm * share);
        const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
        if (texts.every((text) => fitsInside(text, rings, 0.4)))
          return [...(isHatched ? texts.map((text) => areaMark('paper', patchBehind(text))) : []), ...marks];
      }
    return upArrow(middleOf(rings), up, textMm * 0.7);
  });
}

/** Type sizes tried, over the usual one; the least is still 9 pt on paper. */
const SHARES = [1, 0.85, 0.7];

/** An arrow above lines of words, centred on a point, all turned so that `up` is up. */
function labelStanding(lines: readonly string[], [x, y]: At, up: At, sizeMm: number): Mark[] {
  const turnDeg = (Math.atan2(-up[0], up[1]) * 180) / Math.PI;
  const stepMm = sizeMm * 1.25;
  const high = ARROW * sizeMm + lines.length * stepMm;
  const at = (above: number): At => [x + up[0] * above, y + up[1] * above];
  return [
    ...upArrow(at(high / 2 - ARROW * sizeMm), up, sizeMm),
    ...lines.map((text, line) =>
      centredText(text, at(high / 2 - ARROW * sizeMm - (line + 0.5) * stepMm), sizeMm, {
        turnDeg,
        bold: line === 0,
      }),
    ),
  ];
}

const isGlued = (hidden: readonly HiddenArea[], face: number): boolean =>
  hidden.some((area) => area.face === face && area.glued);

const standing = ({ stands }: PanelWay, glued: boolean): string[] => {
  if (glued) return ['leave plain'];
  return stands === 'upright' ? [] : [stands === 'top' ? 'on top, front below' : 'underneath'];
};

/** The middle of the box round some rings, which for a bent panel is its middle too; for one ring the mean of its corners. */
function middleOf(rings: readonly (readonly At[])[]): At {
  if (rings.length > 1) {
    const { left, right, bottom, top } = boxOf(rings.flat());
    return [(left + right) / 2, (bottom + top) / 2];
  }
  const [ring = []] = rings;
  return [
    ring.reduce((sum, [x]) => sum + x, 0) / ring.length,
    ring.reduce((sum, [, y]) => sum + y, 0) / ring.length,
  ];
}

/** Length of the arrow over the type size. */
const ARROW = 1.7;

/** A shaft and two barbs; it stands on the point given. */
function upArrow([x, y]: At, [ux, uy]: At, sizeMm: number): Mark[] {
  const tip: At = [x + ux * sizeMm * 1.6, y + uy * sizeMm * 1.6];
  const barb = (side: number): At => [
    tip[0] - (ux - side * uy * 0.6) * sizeMm * 0.55,
    tip[1] - (uy + side * ux * 0.6) * sizeMm * 0.55,
  ];
  return [
    lineMark('move', [[x + ux * sizeMm * 0.2, y + uy * sizeMm * 0.2], tip]),
    lineMark('move', [barb(1), tip, barb(-1)]),
  ];
}

/** The line that shows as the seam on the closed box, where a glue tab hangs on its wall; said on the wall, clear of the tab. */
function seamWords(piece: PieceNet, over: PieceNet, place: (point: Point) => At, textMm: number): Mark[] {
  return seamsOf(piece).map(({ hinge }) => {
    const { a, b, child } = over.hinges[hinge]!;
    const [from, to] = [place(a), place(b)];
    const turn = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
    const turnDeg = turn > 90 ? turn - 180 : turn <= -90 ? turn + 180 : turn;
    const sizeMm = textMm * 0.7;
    const rad = (turnDeg * Math.PI) / 180;
    const middle: At = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    const tab = middleOf([over.faces[child]!.ring.map(place)]);
    const isTabAbove = -(tab[0] - middle[0]) * Math.sin(rad) + (tab[1] - middle[1]) * Math.cos(rad) > 0;
    const off = sizeMm * 0.8 * (isTabAbove ? -1 : 1);
    return centredText('seam', [middle[0] - off * Math.sin(rad), middle[1] + off * Math.cos(rad)], sizeMm, {
      turnDeg,
      bold: true,
    });
  });
}

/** Every glued tab of a wall: the hinge it hangs on, the wall it comes from and the wall it is glued to. */
const seamsOf = ({ joints, hinges, faces }: PieceNet) =>
  joints.flatMap(({ tab, target }, at) => {
    const isFirst = joints.findIndex((other) => faces[other.tab]!.panel === faces[tab]!.panel) === at;
    const hinge = isFirst ? hinges.findIndex(({ child, kind }) => child === tab && kind === 'score') : -1;
    const isSeam = hinge >= 0 && faces[tab]!.role === 'glueTab' && faces[target]!.role === 'wall';
    return isSeam ? [{ hinge, from: faces[hinges[hinge]!.parent]!.panel, onto: faces[target]!.panel }] : [];
  });

function mapInWords(
  piece: PieceNet,
  ways: readonly PanelWay[],
  hidden: readonly HiddenArea[],
  ruler: Ruler,
): string {
  const upright = ways.filter(({ stands }) => stands === 'upright').length;
  const bare = [...new Set(hidden.filter(({ glued }) => glued).map(({ face }) => piece.faces[face]!.panel))];
  const seams = seamsOf(piece).map(({ from, onto }) => `between ${from} and ${onto}`);
  return [
    `The outside of ${piece.label}, ${sizeWords(piece.blank.across, piece.blank.up, ruler)}, with an arrow on every panel that points up once it is folded: ${upright} upright.`,
    bare.length > 0 ? `Leave plain for glue: ${bare.join(', ')}.` : '',
    seams.length > 0 ? `The seam shows ${seams.join(', ')}.` : '',
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** The same, as large as a space allows, never beyond true size twice over. */
export function drawDecorateMapToFit(
  piece: PieceNet,
  space: { readonly widthMm: number; readonly heightMm: number },
  options: Omit<DecorateMapOptions, 'scale'>,
): NetDrawing {
  const bleedMm = 2 * toMm(BLEED) + 2;
  const scale = Math.min(
    space.widthMm / (toMm(piece.blank.across) + bleedMm),
    space.heightMm / (toMm(piece.blank.up) + bleedMm),
    2,
  );
  return drawDecorateMap(piece, { ...options, scale });
}
