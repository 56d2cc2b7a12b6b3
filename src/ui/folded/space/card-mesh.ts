import {
  BufferGeometry,
  type ColorRepresentation,
  DoubleSide,
  Float32BufferAttribute,
  FrontSide,
  Group,
  LineBasicMaterial,
  LineSegments,
  Matrix4,
  Mesh,
  MeshLambertMaterial,
  Path,
  Shape,
  ShapeGeometry,
  Vector2,
} from 'three';
import type { Pose } from '../../../core/fold';
import type { SolidFace, SolidFigure } from '../../../core/fold/solid-figure';
import type { At } from '../../../core/plane';

/** Colors of the card's two sides, of its cut edge, and of drawn lines. */
export interface CardColours {
  readonly outside: ColorRepresentation;
  readonly inside: ColorRepresentation;
  readonly edge: ColorRepresentation;
  readonly ink: ColorRepresentation;
}

/** One group a panel, built flat; folding only moves the groups. */
export interface CardMesh {
  readonly group: Group;
  readonly panels: readonly Group[];
  place(poses: readonly Pose[]): void;
  dispose(): void;
}

/** Above the card, so that a line is not lost in it; mm. */
const OVER = 0.04;

export function makeCard(figure: SolidFigure, colours: CardColours): CardMesh {
  const materials = {
    inside: new MeshLambertMaterial({ color: colours.inside, side: FrontSide }),
    outside: new MeshLambertMaterial({ color: colours.outside, side: FrontSide }),
    edge: new MeshLambertMaterial({ color: colours.edge, side: DoubleSide }),
    ink: new LineBasicMaterial({ color: colours.ink }),
  };
  const geometries: BufferGeometry[] = [];
  const keep = <G extends BufferGeometry>(geometry: G): G => {
    geometries.push(geometry);
    return geometry;
  };
  const group = new Group();
  const panels = figure.faces.map((face) => {
    const flat = keep(new ShapeGeometry(shapeOf(face)));
    const inside = new Mesh(flat, materials.inside);
    const outside = new Mesh(keep(turnedOver(flat)), materials.outside);
    outside.position.z = -figure.caliperMm;
    const rings = [face.ring, ...face.holes];
    const edge = new Mesh(keep(wallOf(rings, figure.caliperMm)), materials.edge);
    const lines = new LineSegments(keep(outlinesOf(rings, figure.caliperMm)), materials.ink);
    const panel = new Group();
    panel.matrixAutoUpdate = false;
    panel.add(inside, outside, edge, lines);
    group.add(panel);
    return panel;
  });
  return {
    group,
    panels,
    place(poses) {
      panels.forEach((panel, at) => {
        const m = poses[at];
        if (!m) return;
        const lift = -(figure.faces[at]?.liftMm ?? 0);
        panel.matrix.set(
          m[0], m[1], m[2], m[3] + lift * m[2],
          m[4], m[5], m[6], m[7] + lift * m[6],
          m[8], m[9], m[10], m[11] + lift * m[10],
          0, 0, 0, 1,
        ); // biome-ignore format: four rows of a matrix
        panel.matrixWorldNeedsUpdate = true;
      });
    },
    dispose() {
      for (const geometry of geometries) geometry.dispose();
      for (const material of Object.values(materials)) material.dispose();
    },
  };
}

const points = (ring: readonly At[]): Vector2[] => ring.map(([x, y]) => new Vector2(x, y));

function shapeOf({ ring, holes }: SolidFace): Shape {
  const shape = new Shape(points(ring));
  shape.holes = holes.map((hole) => new Path(points(hole)));
  return shape;
}

/** The same surface looking the other way. */
function turnedOver(flat: ShapeGeometry): BufferGeometry {
  const turned = flat.clone();
  const index = [...(turned.getIndex()?.array ?? [])];
  turned.setIndex(index.reverse());
  turned.computeVertexNormals();
  return turned;
}

/** The cut edge of the card all round. */
function wallOf(rings: readonly (readonly At[])[], caliperMm: number): BufferGeometry {
  const corners = rings.flatMap((ring) =>
    ring.flatMap(([x, y], at) => {
      const [u = x, v = y] = ring[(at + 1) % ring.length] ?? [];
      const [a, b, c, d] = [
        [x, y, 0],
        [x, y, -caliperMm],
        [u, v, -caliperMm],
        [u, v, 0],
      ] as const;
      return [a, b, c, a, c, d].flat();
    }),
  );
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute(corners, 3));
  geometry.computeVertexNormals();
  return geometry;
}

function outlinesOf(rings: readonly (readonly At[])[], caliperMm: number): BufferGeometry {
  const ends = rings.flatMap((ring) =>
    ring.flatMap(([x, y], at) => {
      const [u = x, v = y] = ring[(at + 1) % ring.length] ?? [];
      return [OVER, -caliperMm - OVER].flatMap((z) => [x, y, z, u, v, z]);
    }),
  );
  return new BufferGeometry().setAttribute('position', new Float32BufferAttribute(ends, 3));
}

/** Rows of the standing frame as the rotation that turns the net's frame into it. */
export function rotationOf({ standing: [right, back, up] }: SolidFigure): Matrix4 {
  return new Matrix4().set(
    right[0], right[1], right[2], 0,
    back[0], back[1], back[2], 0,
    up[0], up[1], up[2], 0,
    0, 0, 0, 1,
  ); // biome-ignore format: four rows of a matrix
}
