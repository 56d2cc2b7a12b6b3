import * as clip from 'polyclip-ts';
import { Matrix4, Quaternion, Vector3 } from 'three';
import type { PieceNet } from '../../src/core/net';
import { toMm } from '../../src/core/units/ticks';
import { levelTurn } from '../solid/places';

/** Every face's corners when closed, by another library's turns (npm `three`, quaternions about each hinge). mm. */
export function foldedByThree(piece: PieceNet): Vector3[][] {
  const places = piece.faces.map(() => levelTurn(piece));
  for (const { parent, child, a, b, restDeg } of piece.hinges) {
    const foot = new Vector3(toMm(a.x), toMm(a.y), 0);
    const axis = new Vector3(toMm(b.x), toMm(b.y), 0).sub(foot).normalize();
    const turn = new Matrix4().makeRotationFromQuaternion(
      new Quaternion().setFromAxisAngle(axis, (-restDeg * Math.PI) / 180),
    );
    const there = new Matrix4().makeTranslation(foot.x, foot.y, foot.z);
    const back = new Matrix4().makeTranslation(-foot.x, -foot.y, -foot.z);
    places[child] = (places[parent] ?? new Matrix4()).clone().multiply(there).multiply(turn).multiply(back);
  }
  return piece.faces.map(({ ring }, face) =>
    ring.map(({ x, y }) => new Vector3(toMm(x), toMm(y), 0).applyMatrix4(places[face] ?? new Matrix4())),
  );
}

/** Area of the union of all flat faces, by another library (npm `polyclip-ts`); mm². Equal to their sum only if none overlap. */
export function unionArea(piece: PieceNet): number {
  const polygons = piece.faces.map(({ ring, holes }) =>
    [ring, ...holes].map((points) => points.map(({ x, y }): [number, number] => [toMm(x), toMm(y)])),
  );
  const [first, ...others] = polygons;
  if (first === undefined) return 0;
  return clip
    .union(first, ...others)
    .reduce((sum, rings) => sum + rings.reduce((area, ring) => area + ringArea(ring), 0), 0);
}

/** Signed area by the shoelace rule; holes come out negative. */
const ringArea = (ring: readonly (readonly [number, number])[]): number =>
  ring.reduce((sum, [x, y], at) => {
    const [u, v] = ring[(at + 1) % ring.length] ?? [x, y];
    return sum + (x * v - u * y) / 2;
  }, 0);

/** Area of all faces less their holes, mm². */
export const facesArea = ({ faces }: PieceNet): number =>
  faces.reduce(
    (sum, { ring, holes }) =>
      sum +
      [ring, ...holes].reduce(
        (area, points) => area + ringArea(points.map(({ x, y }) => [toMm(x), toMm(y)])),
        0,
      ),
    0,
  );
