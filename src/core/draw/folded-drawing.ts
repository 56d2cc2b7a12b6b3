import { anglesDuring, closingStates, dot, foldPiece, insideOf, placeOf, posesOf } from '../fold';
import { layerSense } from '../fold/seen/layer-sense';
import { paintOrder, type SeenFace } from '../fold/seen/paint-order';
import { benchView, placeOfSeen, type Seen, see, standingView, type View } from '../fold/seen/view';
import { type Cover, visiblePieces } from '../fold/seen/visible-lines';
import { asItStands } from '../net/lay-net';
import type { BoxNet, NetEdge, PieceNet } from '../net/types';
import { type At, type Box, boxOf } from '../plane';
import { toMm } from '../units/ticks';
import { hatchLines } from './strokes/hatch';
import { areaMark, frameMarks, lineMark } from './strokes/marks';
import type { Drawing, Ink, Mark } from './strokes/types';

export interface PictureSpace {
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface FoldedOptions {
  /** Acts of closing that are done; all of them if left out. */
  readonly acts?: number;
  /** How much of the next act is done, 0 to 1. */
  readonly part?: number;
  /** On its bottom as a guest sees it, or on the bench as it is being made. */
  readonly from: 'standing' | 'bench';
  readonly space: PictureSpace;
}

/** A piece at one state of closing as a line drawing: hidden lines taken out; standing, the inside of the card is hatched. */
export function drawFolded(piece: PieceNet, options: FoldedOptions): Drawing {
  const { acts = piece.closing.length, part = 0, from, space } = options;
  const view = from === 'bench' ? benchView() : standingOf(piece);
  const figure = seeFigure(piece, acts, part, view);
  const state = acts === piece.closing.length ? 'closed' : acts === 0 && part === 0 ? 'flat' : 'being closed';
  const title = `${piece.label}, ${state}`;
  const seenFrom = from === 'bench' ? 'the maker’s side' : 'the front and above';
  return drawFigures(
    [{ figure, dx: 0, dy: 0 }],
    space,
    from === 'standing',
    title,
    `${title}, drawn from ${seenFrom}.`,
  );
}

const LIFT = 0.35; // how far a lid hovers over what it closes, over its own height in the picture

/** A whole box closed, its lid (if it has one) lifted off above it: the picture for tiles and cards. */
export function drawFoldedBox(box: BoxNet, space: PictureSpace): Drawing {
  const pieces = asItStands(box);
  let top = 0;
  const placed = [...pieces]
    .sort((a, b) => Number(isLid(a)) - Number(isLid(b)))
    .map((piece, i) => {
      const figure = seeFigure(piece, piece.closing.length, 0, standingOf(piece));
      const { left, right, bottom, top: high } = figure.around;
      const gap = i === 0 ? 0 : LIFT * (high - bottom);
      const at = { figure, dx: -(left + right) / 2, dy: top + gap - bottom };
      top += gap + high - bottom;
      return at;
    });
  const title = `${pieces.map(({ label }) => label).join(' and ')}, closed`;
  return drawFigures(placed, space, true, title, `${title}, drawn from the front and above.`);
}

/** A lid stands with its opening down. */
const isLid = ({ id }: PieceNet) => /(^|[^a-z])lid/i.test(id);

const standingOf = (piece: PieceNet): View =>
  standingView(piece, posesOf(piece, closingStates(piece).at(-1) ?? []), isLid(piece));

/** A folded piece as it is seen, in millimetres of card, with the order its faces cover one another in. */
interface Figure {
  readonly piece: PieceNet;
  readonly angles: readonly number[];
  readonly view: View;
  readonly faces: readonly SeenFace[];
  readonly order: readonly number[];
  readonly around: Box;
}

function seeFigure(piece: PieceNet, acts: number, part: number, view: View): Figure {
  const states = closingStates(piece);
  const angles = part === 0 ? (states[acts] ?? []) : anglesDuring(states, acts, part, piece.closing);
  const faces = foldPiece(piece, angles).map(
    ({ pose, ring }): SeenFace => ({ pose, ring: ring.map((point): Seen => see(view, point)) }),
  );
  const order = paintOrder(faces, view, layerSense(piece, acts));
  return {
    piece,
    angles,
    view,
    faces,
    order,
    around: boxOf(faces.flatMap(({ ring }) => ring.map(placeOfSeen))),
  };
}

interface PlacedFigure {
  readonly figure: Figure;
  readonly dx: number;
  readonly dy: number;
}

const MARGIN_MM = 1;

function drawFigures(
  placed: readonly PlacedFigure[],
  space: PictureSpace,
  shade: boolean,
  title: string,
  description: string,
): Drawing {
  const all = boxOf(
    placed.flatMap(({ figure: { around }, dx, dy }): At[] => [
      [around.left + dx, around.bottom + dy],
      [around.right + dx, around.top + dy],
    ]),
  );
  const scale = Math.min(
    (space.widthMm - 2 * MARGIN_MM) / (all.right - all.left || 1),
    (space.heightMm - 2 * MARGIN_MM) / (all.top - all.bottom || 1),
  );
  const marks = placed.flatMap(({ figure, dx, dy }) =>
    drawFigure(figure, ([x, y]) => [(x + dx) * scale, (y + dy) * scale], shade),
  );
  return frameMarks(marks, title, description, MARGIN_MM);
}

/** Card first, from the back to the front, then every line that is not behind a nearer face. */
function drawFigure(
  { piece, angles, view, faces, order }: Figure,
  onPaper: (point: At) => At,
  shade: boolean,
): Mark[] {
  const covers = faces.map(
    ({ pose, ring }, at): Cover => ({
      ring: ring.map((point) => onPaper(placeOfSeen(point))),
      holes: piece.faces[at]!.holes.map((hole) =>
        hole.map(({ x, y }) => onPaper(placeOfSeen(see(view, placeOf(pose, toMm(x), toMm(y)))))),
      ),
    }),
  );
  const place = (face: number, { x, y }: NetEdge['a']) =>
    onPaper(placeOfSeen(see(view, placeOf(faces[face]!.pose, toMm(x), toMm(y)))));
  const rank = new Map(order.map((face, i) => [face, i]));
  const key = (face: number) => `panel ${piece.faces[face]!.panel}`;
  const side = (face: number) => ({
    figure: covers[face]!,
    covers: order.slice(rank.get(face)! + 1).map((nearer) => covers[nearer]!),
  });
  const seenLine = (ink: Ink, from: At, to: At, on: readonly number[]) =>
    visiblePieces(from, to, on.map(side)).map((points) => lineMark(ink, points, key(on[0]!)));
  const shaded = order.filter((face) => shade && dot(insideOf(faces[face]!.pose), view.toEye) > 0);
  return [
    ...order.map((face) => areaMark('paper', covers[face]!.ring, key(face), covers[face]!.holes)),
    ...shaded.flatMap((face) =>
      hatchLines(covers[face]!.ring, covers[face]!.holes, SHADE).flatMap(([from, to]) =>
        seenLine('shade', from, to, [face]),
      ),
    ),
    ...piece.edges.flatMap((edge) =>
      sheetsAt(edge).flatMap((on) =>
        seenLine(inkOfFolded(edge, angles), place(on[0]!, edge.a), place(on[0]!, edge.b), on),
      ),
    ),
  ];
}

const SHADE = { anglesDeg: [135], gapMm: 1.3 } as const;

/** The faces that carry an edge together: both sides of a score as one line, those of a slit each for itself. */
function sheetsAt({ kind, left, right }: NetEdge): number[][] {
  if (kind === 'join') return [];
  if (right === null) return [[left]];
  return kind === 'score' ? [[left, right]] : [[left], [right]];
}

const FLAT_DEG = 1; // a score turned less than this still lies flat

const inkOfFolded = ({ kind, hinge }: NetEdge, angles: readonly number[]): Ink =>
  kind === 'score' && hinge !== null && Math.abs(angles[hinge] ?? 0) < FLAT_DEG ? 'score-flat' : 'edge';
