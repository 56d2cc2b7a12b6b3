import { bothEnds } from '../styles/language/define';
import type { EdgeName, Len, PanelSpec } from '../styles/language/types';
import { AROUND, frameOn, rootFrame } from './hinge-frame';
import type { Side } from './laid-panel';
import { pointAt } from './point';
import type { Point } from './types';

/** A panel that lies flat in the net as one face. */
export type FlatSpec = Exclude<
  PanelSpec,
  { readonly lens: string } | { readonly leaf: string } | { readonly sector: string }
>;
type Measure = (text: Len) => number;

/** A flat panel's corners counter-clockwise, the name of the edge that leaves each, and its hinge as the parent's edge runs. */
export interface Corners {
  readonly corners: readonly Point[];
  readonly names: readonly EdgeName[];
  readonly hinge: readonly [Point, Point] | null;
}

/** Where a flat panel's corners come to lie beside the parent edge `on`, or as the root. */
export function cornersOf(spec: FlatSpec, on: Side | null, of: Measure): Corners {
  if ('size' in spec) return rectangleOf(spec, on, of);
  const laid = 'outline' in spec ? outlineOf(spec, on, of) : regularOf(spec, on, of);
  return { ...laid, names: laid.corners.map((_, corner): EdgeName => `e${corner}`) };
}

function rectangleOf(
  spec: Extract<FlatSpec, { readonly size: unknown }>,
  on: Side | null,
  of: Measure,
): Corners {
  const [across, up] = [of(spec.size[0]), of(spec.size[1])];
  const at = spec.at === undefined ? 0 : of(spec.at);
  const frame = on === null ? rootFrame(across) : frameOn(on.a, on.b);
  const level = frame.outward === 'down' || frame.outward === 'up';
  const [length, out] = level ? [across, up] : [up, across];
  const [start = 0, end = 0] = bothEnds(spec.taper).map(of);
  const side = AROUND[frame.outward];
  const hinge = [frame.place(at, 0), frame.place(at + length, 0)] as const;
  return {
    corners: [hinge[1], hinge[0], frame.place(at + start, out), frame.place(at + length - end, out)],
    names: [side.hinge, side.start, frame.outward, side.end],
    hinge,
  };
}

function outlineOf(
  spec: Extract<FlatSpec, { readonly outline: unknown }>,
  on: Side | null,
  of: Measure,
): Omit<Corners, 'names'> {
  const points = spec.outline.map(([along, out]) => [of(along), of(out)] as const);
  if (on === null) return { corners: points.map(([x, y]) => pointAt(x, y)), hinge: null };
  const frame = frameOn(on.a, on.b);
  const at = spec.at === undefined ? 0 : of(spec.at);
  const start = spec.at === undefined ? on.a : frame.place(at, 0);
  const end = spec.hinge === undefined ? on.b : frame.place(at + of(spec.hinge), 0);
  const place = ([along, out]: readonly [number, number]): Point =>
    spec.asLies ? pointAt(start.x + along, start.y + out) : frame.place(at + along, out);
  return {
    corners: [end, start, ...points.map(place)],
    hinge: [start, end],
  };
}

function regularOf(
  spec: Extract<FlatSpec, { readonly regular: number }>,
  on: Side | null,
  of: Measure,
): Omit<Corners, 'names'> {
  const side = of(spec.side);
  const frame = on === null ? rootFrame(side) : frameOn(on.a, on.b);
  const [start, end] = on === null ? [frame.place(0, 0), frame.place(side, 0)] : [on.a, on.b];
  const turn = (2 * Math.PI) / spec.regular;
  let [along, out, heading] = [0, 0, Math.PI - turn];
  const others: Point[] = [];
  for (let corner = 2; corner < spec.regular; corner++) {
    along += side * Math.cos(heading);
    out += side * Math.sin(heading);
    heading -= turn;
    others.push(frame.place(along, out));
  }
  return { corners: [end, start, ...others], hinge: on === null ? null : [start, end] };
}
