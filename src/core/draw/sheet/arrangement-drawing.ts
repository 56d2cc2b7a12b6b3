import { type At, boxRing } from '../../plane';
import { type Ruler, type Ticks, toMm } from '../../units';
import { lengthWords } from '../strokes/length-text';
import { textWidthMm } from '../strokes/letters';
import { areaMark, frameMarks, lineMark, pointOfArc, textMark } from '../strokes/marks';
import type { Drawing, Mark } from '../strokes/types';

type Vec = readonly [x: number, y: number, z: number];

/** A thing in its place, in millimeters: cuboids by their least corner, round things by their middle. */
export type LaidThing =
  | { readonly shape: 'cuboid'; readonly at: Vec; readonly size: Vec; readonly turnDeg: number }
  | {
      readonly shape: 'cylinder';
      readonly at: Vec;
      readonly diameter: number;
      readonly height: number;
      readonly lies: 'x' | 'y' | 'z';
    }
  | { readonly shape: 'sphere'; readonly at: Vec; readonly diameter: number };

export interface ArrangementDrawing extends Drawing {
  readonly scale: number;
  readonly origin: At;
}

interface View {
  readonly name: string;
  /** Which axes run right, up and towards the viewer; what is nearer is drawn later. */
  readonly right: 0;
  readonly up: 1 | 2;
  /** +1: the viewer stands at the greater end of the axis of sight. */
  readonly sight: { readonly axis: 1 | 2; readonly nearer: 1 | -1 };
}

const FROM_ABOVE: View = { name: 'from above', right: 0, up: 1, sight: { axis: 2, nearer: 1 } };
const FROM_FRONT: View = { name: 'from the front', right: 0, up: 2, sight: { axis: 1, nearer: -1 } };

const GAP_MM = 6; // between the two views, on the page
const LINE = 1.5; // room of a line of words, in letter heights

/**
 * How things lie: seen from above and from the front, inside the room asked for (the outer line; what lies between is air), as large as
 * `space` allows. The views stand side by side or one over the other, whichever is larger.
 */
export function drawArrangement(
  things: readonly LaidThing[],
  room: readonly [Ticks, Ticks, Ticks],
  pattern: string,
  space: { readonly widthMm: number; readonly heightMm: number },
  { ruler, textMm }: { readonly ruler: Ruler; readonly textMm: number },
): ArrangementDrawing {
  const [width, depth, height] = room.map(toMm) as [number, number, number];
  const words = LINE * textMm;
  // A narrow view still needs the room of its words.
  const named = textWidthMm(FROM_FRONT.name, textMm);
  const besideWidth = Math.min(
    (space.widthMm - GAP_MM - 2) / (2 * width),
    named <= space.widthMm / 2 - GAP_MM ? Number.POSITIVE_INFINITY : 0,
  );
  const beside = Math.min(besideWidth, (space.heightMm - words - 2) / Math.max(depth, height));
  const stacked = Math.min(
    (space.widthMm - 2) / width,
    (space.heightMm - GAP_MM - 2 * words - 2) / (depth + height),
  );
  const scale = Math.max(0.01, beside, stacked);
  const isBeside = beside >= stacked;
  const origin: At = isBeside
    ? [Math.max(width * scale, named) + GAP_MM, 0]
    : [0, depth * scale + words + GAP_MM];
  const marks = [
    ...viewMarks(things, room, FROM_ABOVE, scale, [0, 0], textMm),
    ...viewMarks(things, room, FROM_FRONT, scale, origin, textMm),
  ];
  const size = room.map((side) => lengthWords(side, ruler).replace(` ${ruler.unit}`, '')).join(' × ');
  return {
    ...frameMarks(
      marks,
      `${pattern}, from above and from the front`,
      `${things.length} ${things.length === 1 ? 'thing' : 'things'} in a room ${size} ${ruler.unit}: width, depth, height.`,
    ),
    scale,
  };
}

function viewMarks(
  things: readonly LaidThing[],
  room: readonly [Ticks, Ticks, Ticks],
  view: View,
  scale: number,
  [left, bottom]: At,
  textMm: number,
): Mark[] {
  const [across, up] = [toMm(room[view.right]) * scale, toMm(room[view.up]) * scale];
  // The air is all round: half of what the room has beyond the things on each side; things stand on the floor.
  const filled = extentOf(things);
  const air = (axis: 0 | 1 | 2) => (axis === 2 ? 0 : (toMm(room[axis]) - filled[axis]) / 2);
  const place = ([x, y]: At): At => [
    left + (x + air(view.right)) * scale,
    bottom + (y + air(view.up)) * scale,
  ];
  const seen = new Set<string>();
  const nearFirst = [...things].sort(
    (a, b) => (middleOf(b)[view.sight.axis] - middleOf(a)[view.sight.axis]) * view.sight.nearer,
  );
  const fresh = nearFirst.filter((thing) => {
    const key = outlineOf(thing, view)
      .flat()
      .map((n) => n.toFixed(3))
      .join(' ');
    return !seen.has(key) && seen.add(key);
  });
  return [
    areaMark('paper', boxRing({ left, bottom, right: left + across, top: bottom + up })),
    ...fresh.reverse().flatMap((thing) => {
      const ring = outlineOf(thing, view).map(place);
      return [areaMark('paper', ring), lineMark('edge', [...ring, ring[0] ?? [0, 0]])];
    }),
    lineMark('cut', [...boxRing({ left, bottom, right: left + across, top: bottom + up }), [left, bottom]]),
    textMark(view.name, [left, bottom - LINE * textMm + 0.3 * textMm], textMm),
  ];
}

const ROUND_STEPS = 48;

/** What one looks at: the thing's outline in the plane of the view, in millimeters. */
function outlineOf(thing: LaidThing, view: View): At[] {
  if (thing.shape === 'cuboid') {
    if (view === FROM_ABOVE) return planOf(thing);
    const xs = planOf(thing).map(([x]) => x);
    return ring([Math.min(...xs), thing.at[2]], [Math.max(...xs), thing.at[2] + thing.size[2]]);
  }
  const r = thing.diameter / 2;
  const centre: At = [thing.at[view.right], thing.at[view.up]];
  const sightAxis = view.sight.axis === 1 ? 'y' : 'z';
  if (thing.shape === 'sphere' || thing.lies === sightAxis)
    return Array.from({ length: ROUND_STEPS }, (_, i) => pointOfArc(centre, r, (360 * i) / ROUND_STEPS));
  const half = thing.height / 2;
  const [dx, dy] = thing.lies === 'x' ? [half, r] : [r, half];
  return ring([centre[0] - dx, centre[1] - dy], [centre[0] + dx, centre[1] + dy]);
}

const ring = (low: At, high: At): At[] => [
  ...boxRing({ left: low[0], bottom: low[1], right: high[0], top: high[1] }),
];

function planOf({ at, size, turnDeg }: Extract<LaidThing, { shape: 'cuboid' }>): At[] {
  const [x, y] = [at[0] + size[0] / 2, at[1] + size[1] / 2];
  const turn = (turnDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return ring([-size[0] / 2, -size[1] / 2], [size[0] / 2, size[1] / 2]).map(
    ([u, v]): At => [x + u * cos - v * sin, y + u * sin + v * cos],
  );
}

const middleOf = (thing: LaidThing): Vec =>
  thing.shape === 'cuboid'
    ? [thing.at[0] + thing.size[0] / 2, thing.at[1] + thing.size[1] / 2, thing.at[2] + thing.size[2] / 2]
    : thing.at;

/** Width and depth that the things fill from the left front corner. */
function extentOf(things: readonly LaidThing[]): Vec {
  const plan = things.flatMap((thing) => outlineOf(thing, FROM_ABOVE));
  return [Math.max(0, ...plan.map(([x]) => x)), Math.max(0, ...plan.map(([, y]) => y)), 0];
}
