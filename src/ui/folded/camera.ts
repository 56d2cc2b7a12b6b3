import { cross, dot, type Vector } from '../../core/fold';

/** An eye far away: how a point in space (mm, z up) comes to lie on the page. */
export interface Camera {
  /** From the box towards the eye, unit length. */
  readonly towards: Vector;
  /** Across the page and up the page, unit length. */
  readonly across: Vector;
  readonly up: Vector;
}

const radians = (deg: number) => (deg * Math.PI) / 180;

/** An eye that has walked `turnDeg` to the right round the front of the box and looks down at it by `downDeg`. No perspective: edges keep their proportions. */
export function lookFrom(turnDeg: number, downDeg: number): Camera {
  const [turn, down] = [radians(turnDeg), radians(downDeg)];
  const towards: Vector = [Math.sin(turn) * Math.cos(down), -Math.cos(turn) * Math.cos(down), Math.sin(down)];
  const across: Vector = [Math.cos(turn), Math.sin(turn), 0];
  return { towards, across, up: cross(towards, across) };
}

/** On the page: x to the right, y down, millimetres. */
export const onPage = ({ across, up }: Camera, point: Vector): readonly [x: number, y: number] => [
  dot(across, point),
  -dot(up, point),
];
