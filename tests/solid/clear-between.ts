import { Vector3 } from 'three';
import type { PieceNet } from '../../src/core/net';
import { pointOn, type Stand } from './places';

type Way = readonly [x: number, y: number, z: number];

/** Which panels a fit is about: what may not reach what, and along which way. What counts on both its sides has a line for each. */
interface Between {
  readonly one: RegExp;
  readonly other: RegExp;
  /** From the one to the other as they stand; or the two panels whose insides look at each other along it. */
  readonly way: Way | readonly [from: string, to: string];
  /** Of the other panels only those that look against the way. */
  readonly facing?: true;
}

const X: Way = [1, 0, 0];
const LEFT: Way = [-1, 0, 0];

/** Of every fit within one piece, by its words. Tubes lie on their front, inside up: x along the width, z from front to back. */
export const BETWEEN: Readonly<Record<string, readonly Between[]>> = {
  'bottom flaps between the walls, front to back': [
    { one: /^frontFlap$/, other: /^back$/, way: ['front', 'back'] },
  ],
  'bottom flaps between the walls, side to side': [
    { one: /^leftFlap$/, other: /^right(Near|Foot|Far)?$/, way: ['left|leftFoot', 'right|rightFoot'] },
  ],
  'gussets beside each other under the ridge': [
    { one: /^rightFrontFold$|^rightBackFold$/, other: /^left(Front|Back)Fold$/, way: X },
  ],
  'glue tab beside the gusset under the front roof': [{ one: /^roofTab$/, other: /^leftFrontFold$/, way: X }],
  'ridge flap between the gable tabs': [
    { one: /^ridgeFlap$/, other: /^leftRoofTab$/, way: X },
    { one: /^ridgeFlap$/, other: /^rightRoofTab$/, way: LEFT },
  ],
  'lid tabs beside each other at the tip': [
    { one: /^lidEndTab$/, other: /^lidStartTab$/, way: ['left', 'right'] },
  ],
  'end tabs beside each other in the corner': [
    { one: /^nearStartTab$/, other: /^nearEndTab$/, way: ['left', 'right'] },
  ],
  'side flaps between the spines': [{ one: /^leftFlap$/, other: /^rightSpine$/, way: X }],
  'end flaps between the spines': [{ one: /^downFlap$/, other: /^upSpine$/, way: [0, 1, 0] }],
  'lid between the sides': [
    { one: /^topLid$/, other: /^right$/, way: ['left', 'right'] },
    { one: /^topLid$/, other: /^left$/, way: ['right', 'left'] },
  ],
  'tuck behind the far wall': [
    { one: /^topTuck$/, other: /^front$|^tab$/, way: ['back', 'front'], facing: true },
  ],
};

/** How far one panel could still go before it meets the other, mm, as both stand in card of that thickness: the nearest corners of their cards, along the way, all its lines together. */
export function clearBetween(
  piece: PieceNet,
  stands: readonly Stand[],
  shifts: readonly Vector3[],
  caliperMm: number,
  lines: readonly Between[],
): number {
  const facesOf = (of: RegExp) => piece.faces.flatMap(({ panel }, face) => (of.test(panel) ? [face] : []));
  const looks = (of: string) => stands[facesOf(new RegExp(`^(${of})$`))[0] ?? 0]?.inside ?? new Vector3();
  const reach = (of: RegExp, way: Vector3, facing = false): number =>
    Math.max(
      ...facesOf(of).flatMap((face) => {
        const stand = stands[face];
        if (stand === undefined || (facing && stand.inside.dot(way) < 0.9)) return [];
        const half = (caliperMm / 2) * Math.abs(stand.inside.dot(way));
        return (piece.faces[face]?.ring ?? []).map(
          (at) =>
            pointOn(stand, at)
              .add(shifts[face] ?? new Vector3())
              .dot(way) + half,
        );
      }),
    );
  return lines.reduce((sum, { one, other, way, facing }) => {
    const along =
      typeof way[0] === 'string'
        ? looks(way[0])
            .clone()
            .sub(looks(way[1] as string))
            .normalize()
        : new Vector3(...(way as Way));
    return sum - reach(other, along.clone().negate(), facing) - reach(one, along);
  }, 0);
}
