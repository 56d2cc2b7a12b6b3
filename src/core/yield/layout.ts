import { type Ticks, ticks } from '../units/ticks';
import type { PatternTree } from './pattern/pattern';
import type { LaidPart, SheetProblem } from './problem/sheet-problem';
import type { CutTree, Offcut, PlacedPart } from './types';

/** A piece of card on the bench; ticks with one kerf added each way. */
interface Piece {
  readonly x: number;
  readonly y: number;
  readonly across: number;
  readonly up: number;
}

/** What a tree needs: the sizes it fills, worked out once from the leaves. */
interface Sized {
  readonly node: PatternTree;
  readonly across: number;
  readonly up: number;
  readonly first: Sized | null;
  readonly second: Sized | null;
}

/** The next part to lie on item `item`, in the order they are cut. */
export type NamePart = (item: number) => LaidPart;

export interface LaidSheet {
  readonly parts: PlacedPart[];
  readonly offcuts: Offcut[];
  readonly tree: CutTree;
}

function sizeTree(node: PatternTree, { problem, unit }: SheetProblem): Sized {
  if (node.kind === 'item') {
    const item = problem.items[node.item];
    if (item === undefined) throw new Error(`no item ${node.item}`);
    const [across, up] = node.turned ? [item.height, item.width] : [item.width, item.height];
    return { node, across: across * unit, up: up * unit, first: null, second: null };
  }
  const first = sizeTree(node.first, { problem, unit } as SheetProblem);
  const second = sizeTree(node.second, { problem, unit } as SheetProblem);
  return node.upright
    ? { node, across: first.across + second.across, up: Math.max(first.up, second.up), first, second }
    : { node, across: Math.max(first.across, second.across), up: first.up + second.up, first, second };
}

/** Lays a pattern on its sheet: positions, the cuts between them, and what is left over. Frame: the sheet's own, x across, y up. */
export function layTree(tree: PatternTree | null, sheet: SheetProblem, namePart: NamePart): LaidSheet {
  const { kerf, reach } = sheet;
  const staged = sheet.problem.stages !== 'free';
  const parts: PlacedPart[] = [];
  const offcuts: Offcut[] = [];

  const leave = ({ x, y, across, up }: Piece): CutTree => {
    if (across > kerf && up > kerf)
      offcuts.push({ x: ticks(x), y: ticks(y), across: ticks(across - kerf), up: ticks(up - kerf) });
    return { kind: 'offcut' };
  };
  const cut = (
    piece: Piece,
    upright: boolean,
    size: number,
    first: (p: Piece) => CutTree,
    second: (p: Piece) => CutTree,
  ): CutTree => {
    const near = upright ? { ...piece, across: size } : { ...piece, up: size };
    const far = upright
      ? { ...piece, x: piece.x + size, across: piece.across - size }
      : { ...piece, y: piece.y + size, up: piece.up - size };
    const at = ticks((upright ? piece.x : piece.y) + size - kerf);
    return { kind: 'cut', way: upright ? 'upright' : 'level', at, first: first(near), second: second(far) };
  };

  /** Which way to trim a piece now, or null. Slack along a cut goes to the second piece; slack across it is taken off first. */
  const chooseTrim = (piece: Piece, { node, across, up }: Sized): 'upright' | 'level' | null => {
    const upright = across < piece.across && piece.up <= reach;
    const level = up < piece.up && piece.across <= reach;
    if (node.kind === 'cut' && node.upright) return level && (!staged || piece.up > reach) ? 'level' : null;
    if (node.kind === 'cut') return upright && (!staged || piece.across > reach) ? 'upright' : null;
    if (!upright || !level) return upright ? 'upright' : level ? 'level' : null;
    if (across > reach || up > reach) return across > reach ? 'upright' : 'level';
    return (piece.across - across) * piece.up >= (piece.up - up) * piece.across ? 'upright' : 'level';
  };

  const lay = (piece: Piece, sized: Sized): CutTree => {
    const trim = chooseTrim(piece, sized);
    if (trim === 'upright') return cut(piece, true, sized.across, (p) => lay(p, sized), leave);
    if (trim === 'level') return cut(piece, false, sized.up, (p) => lay(p, sized), leave);
    const { node, first, second } = sized;
    if (node.kind === 'cut' && first !== null && second !== null) {
      const size = node.upright ? first.across : first.up;
      return cut(piece, node.upright, size, (p) => lay(p, first), (p) => lay(p, second)); // biome-ignore format: one line
    }
    return node.kind === 'item' ? place(piece, node.item) : { kind: 'offcut' };
  };

  const place = ({ x, y, across, up }: Piece, item: number): CutTree => {
    const { part, turned: held } = namePart(item);
    const size = { across: ticks(across - kerf), up: ticks(up - kerf) };
    const turned = held ?? size.across !== part.across;
    parts.push({ part: part.id, x: ticks(x), y: ticks(y), ...size, turned });
    return { kind: 'part', part: part.id, turned };
  };

  const whole: Piece = { x: sheet.x, y: sheet.y, across: sheet.across, up: sheet.up };
  const cutTree = tree === null ? leave(whole) : lay(whole, sizeTree(tree, sheet));
  return { parts, offcuts: offcuts.sort(largerFirst), tree: cutTree };
}

const areaOf = (offcut: { across: Ticks; up: Ticks }): number => offcut.across * offcut.up;
const largerFirst = (a: Offcut, b: Offcut): number => areaOf(b) - areaOf(a) || a.y - b.y || a.x - b.x;
