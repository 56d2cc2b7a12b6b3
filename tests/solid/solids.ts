import type { CrossSection, Manifold, ManifoldToplevel, Vec3 } from 'manifold-3d';
import { type Matrix4, Vector3 } from 'three';
import type { PieceNet, Point } from '../../src/core/net';
import type { Stand } from './places';
import { cutLinesOf } from './stack';

/** Solids of a general geometry library (npm `manifold-3d`). What is made is freed when a box is done. */
export class Solids {
  private readonly made: { delete(): void }[] = [];
  private readonly kit: ManifoldToplevel;

  constructor(kit: ManifoldToplevel) {
    this.kit = kit;
  }

  free(): void {
    for (const thing of this.made.splice(0)) thing.delete();
  }

  keep<Thing extends { delete(): void }>(thing: Thing): Thing {
    this.made.push(thing);
    return thing;
  }

  /** A face as it is cut, flat, mm. */
  outlineOf(piece: PieceNet, face: number): CrossSection {
    const { ring = [], holes = [] } = piece.faces[face] ?? {};
    const flat = (points: readonly Point[]) => points.map(({ x, y }): [number, number] => [x / 320, y / 320]);
    let outline = this.keep(new this.kit.CrossSection([flat(ring), ...holes.map(flat)], 'EvenOdd'));
    const middle = ring
      .reduce((sum, { x, y }) => sum.add(new Vector3(x, y, 0)), new Vector3())
      .divideScalar(320 * ring.length);
    for (const { a, b } of cutLinesOf(piece, face)) {
      const [from, to] = [a, b].map(({ x, y }) => new Vector3(x / 320, y / 320, 0)) as [Vector3, Vector3];
      const along = to.clone().sub(from).normalize();
      const out = new Vector3(-along.y, along.x, 0);
      if (middle.clone().sub(from).dot(out) > 0) out.negate();
      const corners = [from.clone().addScaledVector(along, -1), to.clone().addScaledVector(along, 1)];
      const beyond = corners.map((corner) => corner.clone().addScaledVector(out, 5));
      const strip = [corners[0], corners[1], beyond[1], beyond[0]].map((p): [number, number] => [
        p?.x ?? 0,
        p?.y ?? 0,
      ]);
      const pared = this.keep(new this.kit.CrossSection([strip], 'NonZero'));
      outline = this.keep(outline.subtract(pared));
    }
    return outline;
  }

  /** The card of a face: its outline and `thickMm`, both less `skin` on every side. */
  plate(piece: PieceNet, face: number, place: Matrix4, thickMm: number, skin: number): Manifold {
    const outline = this.keep(this.outlineOf(piece, face).offset(-skin, 'Miter', 4));
    const flat = this.keep(outline.extrude(thickMm - 2 * skin, 0, 0, [1, 1], true));
    return this.keep(flat.transform(place.elements));
  }

  /** All that is within `radius` of the lines between these points. */
  rod(points: readonly Vector3[], radius: number): Manifold {
    const ball = RAYS.flatMap((ray) =>
      points.map((p): Vec3 => [p.x + radius * ray.x, p.y + radius * ray.y, p.z + radius * ray.z]),
    );
    return this.keep(this.kit.Manifold.hull(ball));
  }

  /** Does one solid reach into another, outside these zones? How far, mm; 0 if not. */
  reachInto(
    one: Manifold,
    other: Manifold,
    ways: readonly Vector3[],
    zones: () => readonly Manifold[],
  ): number {
    let common = this.keep(one.intersect(other));
    if (common.volume() < NOTHING) return 0;
    for (const zone of zones()) {
      common = this.keep(common.subtract(zone));
      if (common.volume() < NOTHING) return 0;
    }
    const { vertProperties, numProp } = common.getMesh();
    return ways.reduce((least, way) => {
      let [low, high] = [Infinity, -Infinity];
      for (let at = 0; at < vertProperties.length; at += numProp) {
        const along =
          way.x * (vertProperties[at] ?? 0) +
          way.y * (vertProperties[at + 1] ?? 0) +
          way.z * (vertProperties[at + 2] ?? 0);
        [low, high] = [Math.min(low, along), Math.max(high, along)];
      }
      return Math.min(least, high - low);
    }, Infinity);
  }

  /** Do two faces of one plane lie over one another by more than a hair? */
  overlapFlat(piece: PieceNet, stands: readonly Stand[], one: number, other: number): boolean {
    const [p, q] = [stands[one], stands[other]];
    if (!p || !q) return false;
    const there = p.place.clone().invert().multiply(q.place);
    const e = there.elements;
    const ring = this.outlineOf(piece, other)
      .toPolygons()
      .map((points) =>
        points.map(([x, y]): [number, number] => [e[0] * x + e[4] * y + e[12], e[1] * x + e[5] * y + e[13]]),
      );
    const upright = this.keep(new this.kit.CrossSection(ring, 'EvenOdd'));
    const common = this.keep(
      this.keep(this.outlineOf(piece, one).intersect(upright)).offset(-0.05, 'Miter', 4),
    );
    return !common.isEmpty();
  }
}

const NOTHING = 1e-6; // mm³

/** Directions all round, the corners of a sphere cut roughly. */
const RAYS: readonly Vector3[] = [-1, 0, 1].flatMap((x) =>
  [-1, 0, 1].flatMap((y) =>
    [-1, 0, 1].flatMap((z) => (x || y || z ? [new Vector3(x, y, z).normalize()] : [])),
  ),
);
