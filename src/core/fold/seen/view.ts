import type { PieceNet } from '../../net/types';
import type { At } from '../../plane';
import { closingStates } from '../closing/closing-states';
import { posesOf } from '../fold-piece';
import { bottomOf } from '../panel-way';
import { insideOf } from '../pose';
import { cross, dot, size, times, type Vector } from '../vector';

/** A parallel view: unit vectors of the picture, in the folded box's frame. */
export interface View {
  readonly right: Vector;
  readonly up: Vector;
  /** From the box to the eye. */
  readonly toEye: Vector;
}

/** A point seen: its place in the picture, and how near the eye it is; mm. */
export type Seen = readonly [x: number, y: number, nearness: number];

export const see = ({ right, up, toEye }: View, p: Vector): Seen => [
  dot(p, right),
  dot(p, up),
  dot(p, toEye),
];
export const placeOfSeen = ([x, y]: Seen): At => [x, y];

// Turned and tipped so that three sides of a box show, none of them foreshortened to a strip; our own choice.
const TURN_DEG = 32;
const TIP_DEG = 27;

const unit = (v: Vector): Vector => times(v, 1 / (size(v) || 1));

/** The card as it lies on the bench, seen from the maker's side. */
export const benchView = (): View => viewFrom([0, 0, 1], [0, -1, 0], 16, 42);

/** The closed piece on its bottom, a lid with its opening down, and the first wall in front; or the same held up and seen from `below`. */
export function standingView(piece: PieceNet, from: 'above' | 'below' = 'above'): View {
  const tip = from === 'above' ? TIP_DEG : -TIP_DEG;
  const poses = posesOf(piece, closingStates(piece).at(-1) ?? []);
  const up = times(insideOf(poses[bottomOf(piece.faces)]!), piece.lid ? -1 : 1);
  const rootOut = times(insideOf(poses[0]!), -1);
  const front = Math.abs(dot(rootOut, up)) > 0.9 ? ([0, -1, 0] as const) : rootOut;
  const turnedOver: Vector = piece.lid ? times(front, -1) : front;
  return viewFrom(up, Math.abs(dot(rootOut, up)) > 0.9 ? turnedOver : front, TURN_DEG, tip);
}

function viewFrom(up: Vector, front: Vector, turnDeg: number, tipDeg: number): View {
  const level = unit([
    front[0] - up[0] * dot(front, up),
    front[1] - up[1] * dot(front, up),
    front[2] - up[2] * dot(front, up),
  ]);
  const side = cross(up, level);
  const [turn, tip] = [(turnDeg * Math.PI) / 180, (tipDeg * Math.PI) / 180];
  const mix = (a: Vector, p: number, b: Vector, q: number): Vector => [
    a[0] * p + b[0] * q,
    a[1] * p + b[1] * q,
    a[2] * p + b[2] * q,
  ];
  const around = mix(level, Math.cos(turn), side, Math.sin(turn));
  const toEye = unit(mix(around, Math.cos(tip), up, Math.sin(tip)));
  const right = unit(cross(up, toEye));
  return { right, up: cross(toEye, right), toEye };
}
