import { layNet, type PieceNet, type Point } from '../net';
import { cornersOfNet } from '../net/lay-net';
import type { PieceCorners } from '../net/lay-piece';
import { linesOf } from '../net/lines';
import type { BoxStyle, Chosen } from '../styles/language/types';
import { TICKS_PER_INCH, type Ticks, ticks } from '../units';

/** A coordinate of the net as a sum over the searched symbols: constant + Σ times[i] · symbol[i], in ticks. */
export interface CoordinateForm {
  readonly constant: number;
  readonly times: readonly number[];
}

/** A form's value, to the tick. `values` in the order of the searched symbols. */
export function valueAt({ constant, times }: CoordinateForm, values: readonly number[]): number {
  let sum = constant;
  for (let i = 0; i < times.length; i++) sum += (times[i] ?? 0) * (values[i] ?? 0);
  return Math.round(sum);
}

/** One number the maker sets or reads: a place measured across `span`, from whichever end reads easier; a length alone has no span. */
export interface MarkForm {
  readonly piece: string;
  readonly what: 'score' | 'slit' | 'side';
  readonly way: 'across' | 'up';
  readonly at: CoordinateForm;
  readonly span: CoordinateForm | null;
}

/** A piece's blank as forms, across and up. */
interface BlankForm {
  readonly piece: string;
  readonly across: CoordinateForm;
  readonly up: CoordinateForm;
}

export interface StyleForms {
  readonly marks: readonly MarkForm[];
  /** Upright and level lines whose place bends with a size: they are cut by template, like slanted and curved ones. */
  readonly byTemplate: number;
  readonly blanks: readonly BlankForm[];
}

const NUDGE = ticks(TICKS_PER_INCH / 16); // even and small: halves stay whole, and no panel vanishes

/**
 * Every straight mark of a style as a linear form in `symbols`, read off nets laid at `base` and at one nudge of each symbol: the net's
 * corners move linearly wherever the declaration is linear. Slanted and curved lines are cut by template and are no marks.
 * A symbol not `varied` counts as it stands.
 */
export function markFormsOf(
  style: BoxStyle,
  base: {
    readonly sizes: Readonly<Record<string, Ticks>>;
    readonly caliperUm: number;
    readonly options?: Chosen;
  },
  symbols: readonly string[],
  varied: readonly boolean[] = symbols.map(() => true),
): StyleForms {
  const still = layNet(style, base).pieces;
  const nudged = symbols.map((symbol, i) => {
    if (varied[i] === false) return still;
    const sizes = { ...base.sizes, [symbol]: ticks((base.sizes[symbol] ?? 0) + NUDGE) };
    return cornersOfNet(style, { ...base, sizes }).pieces;
  });
  const from = symbols.map((symbol) => base.sizes[symbol] ?? 0);
  const form = (read: (pieces: Corners) => number): CoordinateForm => {
    const value = read(still);
    const times = nudged.map((pieces) => (read(pieces) - value) / NUDGE);
    return { constant: value - times.reduce((sum, t, i) => sum + t * (from[i] ?? 0), 0), times };
  };
  const marks: MarkForm[] = [];
  const blanks: BlankForm[] = [];
  still.forEach((piece, p) => {
    const blank = (side: 'across' | 'up') => form((pieces) => pieces[p]?.blank[side] ?? 0);
    const spans = { across: blank('across'), up: blank('up') };
    blanks.push({ piece: piece.id, ...spans });
    const side = (way: 'across' | 'up'): MarkForm => ({
      piece: piece.id,
      what: 'side',
      way,
      at: spans[way],
      span: null,
    });
    marks.push(side('across'), side('up'));
    for (const { what, way, where } of placesOf(piece))
      marks.push({
        piece: piece.id,
        what,
        way,
        at: form((pieces) => cornerOf(pieces, p, where)[way === 'across' ? 'x' : 'y']),
        span: spans[way],
      });
  });
  const straight = marks.filter(({ at, span }) => isStraight(at) && (span === null || isStraight(span)));
  return { marks: straight, byTemplate: marks.length - straight.length, blanks };
}

/** Whether a place moves evenly with every symbol, by eighths: declared sums do, roots and slants do not. */
const isStraight = ({ times }: CoordinateForm): boolean =>
  times.every((n) => Math.abs(n * 8 - Math.round(n * 8)) < 1e-6);

interface Place {
  readonly what: 'score' | 'slit';
  readonly way: 'across' | 'up';
  /** The corner it is read from, as face and corner number, which stay the same when sizes change. */
  readonly where: Corner;
}
type Corners = readonly PieceCorners[];
type Corner = readonly [face: number, corner: number];

/** Every upright and level score once, and where each slit ends; a slit stands on a place already named unless no score shares it. */
function placesOf(piece: PieceNet): Place[] {
  const places = new Map<string, Place>();
  const add = (what: Place['what'], way: Place['way'], point: Point) => {
    const key = `${way} ${way === 'across' ? point.x : point.y}`;
    const where = cornerAt(piece, point);
    const onSide =
      way === 'across' ? [0, piece.blank.across].includes(point.x) : [0, piece.blank.up].includes(point.y);
    if (where && !onSide && !places.has(key)) places.set(key, { what, way, where });
  };
  for (const { kind, from, to, curve } of linesOf(piece)) {
    if (curve !== null || (kind !== 'score' && kind !== 'slit')) continue;
    if (from.x === to.x) add(kind, 'across', from);
    if (from.y === to.y) add(kind, 'up', from);
    if (kind === 'slit' && from.x === to.x) for (const end of [from, to]) add('slit', 'up', end);
    if (kind === 'slit' && from.y === to.y) for (const end of [from, to]) add('slit', 'across', end);
  }
  return [...places.values()];
}

function cornerAt(piece: PieceNet, point: Point): Corner | null {
  for (const [f, face] of piece.faces.entries()) {
    const corner = face.ring.findIndex(({ x, y }) => x === point.x && y === point.y);
    if (corner >= 0) return [f, corner];
  }
  return null;
}

function cornerOf(
  pieces: Corners,
  piece: number,
  [face, corner]: Corner,
): { readonly x: number; readonly y: number } {
  return pieces[piece]?.faces[face]?.ring[corner] ?? { x: Number.NaN, y: Number.NaN };
}
