import type { Placed } from '../../core/fit';
import type { Vector } from '../../core/fold';
import { type Camera, onPage } from './camera';
import type { FoldedView } from './folded-view';

type Flat = readonly [x: number, y: number];

/** A face of a thing on the page, to be painted in this order; `light` 0 to 1. */
export interface ThingFace {
  readonly ring: readonly Flat[];
  readonly light: number;
}

/** Chords of a round thing. source: our choice, smooth at the size of a tile */
const CHORDS = 28;

/** Things as they lie, in the middle of the room and on its floor, as the eye sees them: nearest last. */
export function thingsInView(
  placed: readonly Placed[],
  size: readonly [number, number, number],
  room: FoldedView['room'],
  camera: Camera,
): readonly ThingFace[] {
  const start: Vector = [
    (room.low[0] + room.high[0] - size[0]) / 2,
    (room.low[1] + room.high[1] - size[1]) / 2,
    room.hasFloor ? room.low[2] : Math.max(room.low[2], room.high[2] - size[2]),
  ];
  const nearness = ({ at }: Placed): number =>
    at[0] * camera.towards[0] + at[1] * camera.towards[1] + at[2] * camera.towards[2];
  const page = ([x, y, z]: Vector): Flat => onPage(camera, [x + start[0], y + start[1], z + start[2]]);
  return [...placed]
    .sort((a, b) => nearness(a) - nearness(b))
    .flatMap((thing): ThingFace[] => {
      if (thing.shape === 'cuboid') return cuboid(thing, page);
      if (thing.shape === 'sphere') return [{ ring: disc(page(thing.at), thing.diameter / 2), light: 0.8 }];
      return cylinder(thing, page, camera);
    });
}

function disc([x, y]: Flat, radius: number): Flat[] {
  return chords().map((turn) => [x + radius * Math.cos(turn), y + radius * Math.sin(turn)]);
}

const chords = (): number[] => Array.from({ length: CHORDS }, (_, at) => (2 * Math.PI * at) / CHORDS);

/** The three sides that face an eye in front, to the right and above. */
function cuboid(
  { at, size, turnDeg }: Extract<Placed, { shape: 'cuboid' }>,
  page: (point: Vector) => Flat,
): ThingFace[] {
  const [x, y, z] = at;
  const [w, d, h] = size;
  const [cos, sin] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
  const corner = (i: number, j: number, k: number): Flat => {
    const [dx, dy] = [(i - 0.5) * w, (j - 0.5) * d];
    return page([x + w / 2 + dx * cos - dy * sin, y + d / 2 + dx * sin + dy * cos, z + k * h]);
  };
  return [
    { ring: [corner(0, 0, 0), corner(1, 0, 0), corner(1, 0, 1), corner(0, 0, 1)], light: 0.75 },
    { ring: [corner(1, 0, 0), corner(1, 1, 0), corner(1, 1, 1), corner(1, 0, 1)], light: 0.55 },
    { ring: [corner(0, 0, 1), corner(1, 0, 1), corner(1, 1, 1), corner(0, 1, 1)], light: 1 },
  ];
}

/** The outline of both ends, then the end that is seen. */
function cylinder(
  { at, diameter, height, lies }: Extract<Placed, { shape: 'cylinder' }>,
  page: (point: Vector) => Flat,
  { towards }: Camera,
): ThingFace[] {
  const axis = lies === 'x' ? 0 : lies === 'y' ? 1 : 2;
  const others = ([0, 1, 2] as const).filter((one) => one !== axis);
  const end = (way: 1 | -1): Flat[] =>
    chords().map((turn) => {
      const point: [number, number, number] = [...at];
      point[axis] += (way * height) / 2;
      point[others[0] ?? 0] += (diameter / 2) * Math.cos(turn);
      point[others[1] ?? 1] += (diameter / 2) * Math.sin(turn);
      return page(point);
    });
  const near = towards[axis] > 0 ? 1 : -1;
  const [seen, hidden] = [end(near), end(near === 1 ? -1 : 1)];
  return [
    { ring: hidden, light: 0.65 },
    // The strip between the two ends, chord by chord, so that no outline has to be found.
    ...seen.map((point, i): ThingFace => {
      const next = (i + 1) % CHORDS;
      return { ring: [point, seen[next] ?? point, hidden[next] ?? point, hidden[i] ?? point], light: 0.65 };
    }),
    { ring: seen, light: 1 },
  ];
}
