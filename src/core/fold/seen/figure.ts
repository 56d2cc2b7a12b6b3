import { asItStands } from '../../net/lay-net';
import type { BoxNet, NetEdge, PieceNet } from '../../net/types';
import { type At, type Box, boxOf, type Ring } from '../../plane';
import { toMm } from '../../units/ticks';
import { anglesDuring, closingStates } from '../closing/closing-states';
import { foldPiece } from '../fold-piece';
import { layerSense } from '../layers';
import { insideOf, placeOf } from '../pose';
import { dot } from '../vector';
import { paintOrder, type SeenFace } from './paint-order';
import { placeOfSeen, type Seen, see, standingView, type View } from './view';
import { type Cover, visiblePieces } from './visible-lines';

/** A folded piece as it is seen, in millimeters of card, with the order its faces cover one another in, farthest first. */
export interface Figure {
  readonly piece: PieceNet;
  readonly angles: readonly number[];
  readonly view: View;
  readonly faces: readonly SeenFace[];
  readonly order: readonly number[];
  readonly around: Box;
}

/** A figure in a picture of several, moved by so much. */
export interface PlacedFigure {
  readonly figure: Figure;
  readonly dx: number;
  readonly dy: number;
}

/** A piece after `acts` acts of closing and a `part` (0 to 1) of the next. */
export function seeFigure(piece: PieceNet, acts: number, part: number, view: View): Figure {
  const states = closingStates(piece);
  const angles = part === 0 ? (states[acts] ?? []) : anglesDuring(states, acts, part, piece.closing);
  const faces = foldPiece(piece, angles).map(
    ({ pose, ring }): SeenFace => ({ pose, ring: ring.map((point): Seen => see(view, point)) }),
  );
  const order = paintOrder(faces, view, layerSense(piece, acts));
  const around = boxOf(faces.flatMap(({ ring }) => ring.map(placeOfSeen)));
  return { piece, angles, view, faces, order, around };
}

const LIFT = 0.35; // how far a lid hovers over what it closes, over its own height in the picture
const AJAR = 0.62; // how far a lid that is tucked last is closed where it is left ajar

/** A whole box as it stands, its lid (if it has one) lifted off above it. `ajar`: a lid that is tucked last is left open so far that it tells how the box opens. */
export function seeBox(box: BoxNet, ajar = false): readonly PlacedFigure[] {
  let top = 0;
  return [...asItStands(box)]
    .sort((a, b) => Number(a.lid ?? false) - Number(b.lid ?? false))
    .map((piece, i) => {
      const acts = piece.closing.length;
      const open = ajar && piece.closing.at(-1)?.do === 'tuck';
      const figure = seeFigure(piece, open ? acts - 1 : acts, open ? AJAR : 0, standingView(piece));
      const { left, right, bottom, top: high } = figure.around;
      const gap = i === 0 ? 0 : LIFT * (high - bottom);
      const at = { figure, dx: -(left + right) / 2, dy: top + gap - bottom };
      top += gap + high - bottom;
      return at;
    });
}

/** A whole box closed as it is given: its lid on, its sleeve over its drawer, its loose floor out of sight. */
export function seeBoxShut(box: BoxNet): readonly PlacedFigure[] {
  const [first, ...others] = seeBox(box);
  if (!first) return [];
  const { around } = first.figure;
  const shown = others.filter(({ figure: { piece } }) => piece.lid || piece.shell.length > 0);
  return [
    first,
    ...shown.map(({ figure, dx }) => ({
      figure,
      dx,
      dy:
        first.dy + (figure.piece.lid ? around.top - figure.around.top : around.bottom - figure.around.bottom),
    })),
  ];
}

/** The bottom of a box, held up and seen from below. */
export function seeBottom(box: BoxNet): readonly PlacedFigure[] {
  return asItStands(box)
    .filter(({ lid }) => lid !== true)
    .slice(0, 1)
    .map((piece) => ({
      figure: seeFigure(piece, piece.closing.length, 0, standingView(piece, 'below')),
      dx: 0,
      dy: 0,
    }));
}

/** The least box round several figures. */
export const aroundFigures = (placed: readonly PlacedFigure[]): Box =>
  boxOf(
    placed.flatMap(({ figure: { around }, dx, dy }): At[] => [
      [around.left + dx, around.bottom + dy],
      [around.right + dx, around.top + dy],
    ]),
  );

/** Does the eye see the inside of a face? */
export const showsInside = ({ faces, view }: Figure, face: number): boolean =>
  dot(insideOf(faces[face]!.pose), view.toEye) > 0;

/** How squarely daylight falls on the side of a face that is seen, 0 to 1. It comes from above, left of the eye. */
export function lightOn(figure: Figure, face: number): number {
  const { right, up, toEye } = figure.view;
  const inside = insideOf(figure.faces[face]!.pose);
  const towards =
    dot(inside, up) * LIGHT.up + dot(inside, toEye) * LIGHT.toEye - dot(inside, right) * LIGHT.left;
  return 0.5 + (towards / 2) * (showsInside(figure, face) ? 1 : -1);
}

/** Daylight from a window behind the maker's left shoulder; together of unit length. */
const LIGHT = { up: 0.8, toEye: 0.33, left: 0.5 } as const;

/** A line of a figure, part of it or all, as it shows. `on`: the faces that carry it. */
interface SeenLine {
  readonly edge: NetEdge;
  readonly on: readonly number[];
  readonly ends: readonly [At, At];
}

/** A figure on paper: what each face covers, the part of any line on a face that shows, and all lines of the net that show. */
export interface FigureOnPaper {
  readonly covers: readonly Cover[];
  readonly showing: (from: At, to: At, on: readonly number[]) => readonly (readonly [At, At])[];
  readonly lines: () => readonly SeenLine[];
}

/** Puts a figure on paper, hidden lines taken out. `onPaper`: from the picture's millimeters of card. */
export function putOnPaper(figure: Figure, onPaper: (point: At) => At): FigureOnPaper {
  const { piece, view, faces, order } = figure;
  const place = (face: number, { x, y }: NetEdge['a']) =>
    onPaper(placeOfSeen(see(view, placeOf(faces[face]!.pose, toMm(x), toMm(y)))));
  const covers = faces.map(
    ({ ring }, at): Cover => ({
      ring: ring.map((point) => onPaper(placeOfSeen(point))),
      holes: piece.faces[at]!.holes.map((hole): Ring => hole.map((corner) => place(at, corner))),
    }),
  );
  const rank = new Map(order.map((face, i) => [face, i]));
  const side = (face: number) => ({
    figure: covers[face]!,
    covers: order.slice(rank.get(face)! + 1).map((nearer) => covers[nearer]!),
  });
  const showing = (from: At, to: At, on: readonly number[]) => visiblePieces(from, to, on.map(side));
  const lines = () =>
    piece.edges.flatMap((edge) =>
      sheetsAt(figure, edge).flatMap((on) =>
        showing(place(on[0]!, edge.a), place(on[0]!, edge.b), on).map(
          (ends): SeenLine => ({ edge, on, ends }),
        ),
      ),
    );
  return { covers, showing, lines };
}

/**
 * The faces that carry an edge together: both sides of a score as one line, those of a slit each for itself. A bend shows only where the card
 * turns away from the eye: the outline of a cone.
 */
function sheetsAt(figure: Figure, { kind, left, right }: NetEdge): number[][] {
  if (kind === 'join')
    return right !== null && showsInside(figure, left) !== showsInside(figure, right) ? [[left, right]] : [];
  if (right === null) return [[left]];
  return kind === 'score' ? [[left, right]] : [[left], [right]];
}
