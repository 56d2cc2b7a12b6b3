import type { Arrangement, Placed } from '../../core/fit';
import { dot, foldPiece, plus, times, type Vector } from '../../core/fold';
import { placeOfSeen, see, type View } from '../../core/fold/seen/view';
import { roomExtent, solidFigure } from '../../core/fold/solid-figure';
import type { PieceNet } from '../../core/net';
import type { At, Ring } from '../../core/plane';

/** A face of a thing in the picture, to be painted in this order; `light` 0 to 1. */
export interface ThingFace {
  readonly ring: Ring;
  readonly light: number;
}

/** Chords of a round thing. source: our choice, smooth at the size of a tile */
const CHORDS = 28;
/** Layers and rounding lift parts of one floor by less than this, mm. source: our choice */
const FLOOR = 1;

/** Things as they lie in the closed piece, in the middle of its room and on its floor, as the eye sees them: nearest last. */
export function thingsInView(
  { placed, size }: Arrangement,
  piece: PieceNet,
  caliperUm: number,
  view: View,
): readonly ThingFace[] {
  const figure = solidFigure(piece, caliperUm);
  const { low, high } = roomExtent(piece, figure);
  const [right, back, up] = figure.standing;
  const floor = foldPiece(piece).some(({ ring }) =>
    ring.every((point) => Math.abs(dot(point, up) - low[2]) < FLOOR),
  );
  const start: Vector = [
    (low[0] + high[0] - size[0]) / 2,
    (low[1] + high[1] - size[1]) / 2,
    // What stands on a point, as a cone does, has no floor: things lie towards its mouth.
    floor ? low[2] : Math.max(low[2], high[2] - size[2]),
  ];
  const page = ([x, y, z]: Vector): At => {
    const [a, b, c] = plus([x, y, z], start);
    return placeOfSeen(see(view, plus(plus(times(right, a), times(back, b)), times(up, c))));
  };
  const eye: Vector = [dot(view.toEye, right), dot(view.toEye, back), dot(view.toEye, up)];
  return [...placed]
    .sort((a, b) => dot(a.at, eye) - dot(b.at, eye))
    .flatMap((thing): ThingFace[] => {
      if (thing.shape === 'cuboid') return cuboid(thing, page, eye);
      if (thing.shape === 'sphere') return [{ ring: disc(page(thing.at), thing.diameter / 2), light: 0.8 }];
      return cylinder(thing, page, eye);
    });
}

const disc = ([x, y]: At, radius: number): Ring =>
  chords().map((turn): At => [x + radius * Math.cos(turn), y + radius * Math.sin(turn)]);

const chords = (): number[] => Array.from({ length: CHORDS }, (_, at) => (2 * Math.PI * at) / CHORDS);

/** The three sides that face the eye. */
function cuboid(
  { at, size, turnDeg }: Extract<Placed, { shape: 'cuboid' }>,
  page: (point: Vector) => At,
  eye: Vector,
): ThingFace[] {
  const [x, y, z] = at;
  const [w, d, h] = size;
  const [cos, sin] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
  const corner = (i: number, j: number, k: number): At => {
    const [dx, dy] = [(i - 0.5) * w, (j - 0.5) * d];
    return page([x + w / 2 + dx * cos - dy * sin, y + d / 2 + dx * sin + dy * cos, z + k * h]);
  };
  const i = eye[0] > 0 ? 1 : 0;
  const j = eye[1] > 0 ? 1 : 0;
  return [
    { ring: [corner(0, j, 0), corner(1, j, 0), corner(1, j, 1), corner(0, j, 1)], light: 0.75 },
    { ring: [corner(i, 0, 0), corner(i, 1, 0), corner(i, 1, 1), corner(i, 0, 1)], light: 0.55 },
    { ring: [corner(0, 0, 1), corner(1, 0, 1), corner(1, 1, 1), corner(0, 1, 1)], light: 1 },
  ];
}

/** The outline of both ends, then the end that is seen. */
function cylinder(
  { at, diameter, height, lies }: Extract<Placed, { shape: 'cylinder' }>,
  page: (point: Vector) => At,
  eye: Vector,
): ThingFace[] {
  const axis = lies === 'x' ? 0 : lies === 'y' ? 1 : 2;
  const [p = 0, q = 1] = ([0, 1, 2] as const).filter((one) => one !== axis);
  const end = (way: 1 | -1): readonly At[] =>
    chords().map((turn) => {
      const point: [number, number, number] = [...at];
      point[axis] += (way * height) / 2;
      point[p] += (diameter / 2) * Math.cos(turn);
      point[q] += (diameter / 2) * Math.sin(turn);
      return page(point);
    });
  const near = eye[axis] > 0 ? 1 : -1;
  const [seen, hidden] = [end(near), end(near === 1 ? -1 : 1)];
  return [
    { ring: hidden, light: 0.65 },
    // The strip between the two ends, chord by chord, so that no outline has to be found.
    ...seen.map((point, i): ThingFace => {
      const next = (i + 1) % CHORDS;
      return {
        ring: [point, seen[next] ?? point, hidden[next] ?? point, hidden[i] ?? point],
        light: 0.65,
      };
    }),
    { ring: seen, light: 1 },
  ];
}
