import type { Face, PieceNet } from '../net/types';
import type { At } from '../plane';
import { toMm } from '../units/ticks';
import { closingStates } from './closing/closing-states';
import { posesOf } from './fold-piece';
import { insideOf, type Pose, placeOf } from './pose';
import { cross, dot, minus, size, times, type Vector } from './vector';

/** How a face stands once the box is closed on its bottom. `level`: it lies flat, on top or below. */
type Stands = 'upright' | 'top' | 'bottom';

export interface PanelWay {
  readonly stands: Stands;
  /** The way that is up on its outside in the flat net, inside face up: a unit vector. On a level face, the way away from the front. */
  readonly up: At;
}

/** Steeper than this a face is called upright. source: our own choice, half-way between a wall and a roof */
const LEVEL = Math.cos((35 * Math.PI) / 180);

/** Every face of a piece: which way is up on it once folded. */
export function panelWays(piece: PieceNet): readonly PanelWay[] {
  const poses = posesOf(piece, closingStates(piece).at(-1) ?? []);
  const { up, front } = standOf(piece, poses);
  return poses.map((pose) => {
    const out = times(insideOf(pose), -1);
    const steep = dot(out, up);
    const stands = Math.abs(steep) < LEVEL ? 'upright' : steep > 0 ? 'top' : 'bottom';
    return { stands, up: inFlat(pose, stands === 'upright' ? up : times(front, -1)) };
  });
}

/** The face that a closed piece stands on: its base, or a bottom flap, or the lid that closes its bottom, or else the first. */
export function bottomOf(faces: readonly Face[]): number {
  const isBottomLid = ({ role, panel }: Face) => role === 'lid' && panel.startsWith('bottom');
  const ways = [({ role }: Face) => role === 'base', ({ role }: Face) => role === 'bottomFlap', isBottomLid];
  return Math.max(0, ways.map((way) => faces.findIndex(way)).find((found) => found >= 0) ?? 0);
}

/** Up and front of the closed piece: its bottom lies below (a lid's above), and the first wall faces front. */
export function standOf(
  { faces, lid }: PieceNet,
  poses: readonly Pose[],
): { readonly up: Vector; readonly front: Vector } {
  const up = times(insideOf(poses[bottomOf(faces)]!), lid ? -1 : 1);
  const isUpright = (at: number) => Math.abs(dot(insideOf(poses[at]!), up)) < LEVEL;
  const named = faces.findIndex(({ panel }, at) => panel === 'front' && isUpright(at));
  const wall = named >= 0 ? named : faces.findIndex(({ role }, at) => role === 'wall' && isUpright(at));
  const out: Vector = wall >= 0 ? times(insideOf(poses[wall]!), -1) : [0, -1, 0];
  const level = minus(out, times(up, dot(out, up)));
  return { up, front: size(level) > 1e-6 ? times(level, 1 / size(level)) : cross(up, [1, 0, 0]) };
}

/** A direction of the folded box as it runs in the flat net on one face. */
function inFlat(pose: Pose, way: Vector): At {
  const across: Vector = [pose[0], pose[4], pose[8]];
  const upward: Vector = [pose[1], pose[5], pose[9]];
  const [x, y] = [dot(way, across), dot(way, upward)];
  const long = Math.hypot(x, y);
  return long < 1e-6 ? [0, 1] : [x / long, y / long];
}

/** Where a face's ring lies on another face's plane, both closed, in that face's flat millimeters; null where the two are not parallel. */
export function ringOnto(
  piece: PieceNet,
  poses: readonly Pose[],
  from: number,
  onto: number,
): readonly At[] | null {
  const [source, target] = [poses[from]!, poses[onto]!];
  if (Math.abs(dot(insideOf(source), insideOf(target))) < PARALLEL) return null;
  const zero: Vector = [target[3], target[7], target[11]];
  const across: Vector = [target[0], target[4], target[8]];
  const upward: Vector = [target[1], target[5], target[9]];
  return piece.faces[from]!.ring.map(({ x, y }): At => {
    const seen = minus(placeOf(source, toMm(x), toMm(y)), zero);
    return [dot(seen, across), dot(seen, upward)];
  });
}

const PARALLEL = Math.cos((3 * Math.PI) / 180);
