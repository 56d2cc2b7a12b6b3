import {
  Box3,
  BoxGeometry,
  type BufferGeometry,
  type ColorRepresentation,
  CylinderGeometry,
  EdgesGeometry,
  Group,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshLambertMaterial,
  SphereGeometry,
  Vector3,
} from 'three';
import type { LaidThing } from '../../../core/draw/sheet/arrangement-drawing';
import type { Extent } from '../../../core/fold/solid-figure';

export interface Things {
  readonly group: Group;
  /** Of the cuboid they fill, in their own frame. */
  readonly corners: readonly Vector3[];
  dispose(): void;
}

/** What goes inside as plain solids, standing on the floor of the room and in the middle of it. */
export function makeThings(
  things: readonly LaidThing[],
  size: readonly [number, number, number],
  room: Extent,
  colours: { readonly thing: ColorRepresentation; readonly ink: ColorRepresentation },
): Things {
  const group = new Group();
  const body = new MeshLambertMaterial({ color: colours.thing });
  const ink = new LineBasicMaterial({ color: colours.ink });
  const geometries: BufferGeometry[] = [];
  for (const thing of things) {
    const solid = solidOf(thing);
    const mesh = new Mesh(solid, body);
    if (thing.shape === 'cuboid') {
      mesh.position.set(
        thing.at[0] + thing.size[0] / 2,
        thing.at[1] + thing.size[1] / 2,
        thing.at[2] + thing.size[2] / 2,
      );
      mesh.rotation.z = (thing.turnDeg * Math.PI) / 180;
      const edges = new EdgesGeometry(solid);
      mesh.add(new LineSegments(edges, ink));
      geometries.push(edges);
    } else {
      mesh.position.set(...thing.at);
      // A cylinder of the library stands along y.
      if (thing.shape === 'cylinder' && thing.lies === 'z') mesh.rotation.x = Math.PI / 2;
      if (thing.shape === 'cylinder' && thing.lies === 'x') mesh.rotation.z = Math.PI / 2;
    }
    geometries.push(solid);
    group.add(mesh);
  }
  group.position.set(
    (room.low[0] + room.high[0] - size[0]) / 2,
    (room.low[1] + room.high[1] - size[1]) / 2,
    room.low[2],
  );
  return {
    group,
    corners: things.length === 0 ? [] : cornersOf(group),
    dispose() {
      for (const geometry of geometries) geometry.dispose();
      body.dispose();
      ink.dispose();
    },
  };
}

function cornersOf(group: Group): readonly Vector3[] {
  const { min, max } = new Box3().setFromObject(group);
  return [min.x, max.x].flatMap((x) =>
    [min.y, max.y].flatMap((y) => [min.z, max.z].map((z) => group.worldToLocal(new Vector3(x, y, z)))),
  );
}

function solidOf(thing: LaidThing): BufferGeometry {
  if (thing.shape === 'cuboid') return new BoxGeometry(...thing.size);
  if (thing.shape === 'sphere') return new SphereGeometry(thing.diameter / 2, 24, 16);
  return new CylinderGeometry(thing.diameter / 2, thing.diameter / 2, thing.height, 32);
}
