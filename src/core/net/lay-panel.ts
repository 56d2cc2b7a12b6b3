import { bothEnds } from '../styles/define';
import type { EdgeName, PanelSpec } from '../styles/types';
import type { Bench, LaidPanel, Side } from './laid-panel';
import { lengthOf, type NamedValues } from './name-values';
import { pointAt, samePoint } from './point';
import type { Point } from './types';

export type Direction = 'left' | 'right' | 'up' | 'down';

/** A hinge frame: `along` the parent's edge as its ring runs, `out` away from it. A full-length hinge keeps the parent's own corners. */
export interface Frame {
  readonly length: number;
  readonly outward: Direction;
  readonly place: (along: number, out: number) => Point;
}

export function frameOn(a: Point, b: Point): Frame {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = dx === 0 || dy === 0 ? Math.abs(dx + dy) : Math.hypot(dx, dy);
  const [ux, uy] = length === 0 ? [1, 0] : [dx / length, dy / length];
  const place = (along: number, out: number): Point =>
    pointAt(a.x + along * ux + out * uy, a.y + along * uy - out * ux);
  const outward = Math.abs(dx) >= Math.abs(dy) ? (dx >= 0 ? 'down' : 'up') : dy > 0 ? 'right' : 'left';
  return { length, outward, place };
}

/** The root's frame: as if it hung upwards from the bottom of the net. */
export const rootFrame = (length: number): Frame => frameOn(pointAt(length, 0), pointAt(0, 0));

/** For a panel hung outwards: its sides where the hinge starts and ends (as the parent runs), and the side at the hinge. */
export const AROUND: Readonly<
  Record<Direction, { readonly start: Direction; readonly end: Direction; readonly hinge: Direction }>
> = {
  down: { start: 'left', end: 'right', hinge: 'up' },
  right: { start: 'down', end: 'up', hinge: 'left' },
  up: { start: 'right', end: 'left', hinge: 'down' },
  left: { start: 'up', end: 'down', hinge: 'right' },
};

type FlatSpec = Exclude<PanelSpec, { readonly lens: string }>;

/** Lays a flat panel beside the parent edge `on` (or as the root) and hinges it there. `restDeg` is its fold when closed. */
export function layFlat(
  bench: Bench,
  name: string,
  spec: FlatSpec,
  on: Side | null,
  restDeg: number,
  values: NamedValues,
): LaidPanel {
  const of = (text: string | undefined) => (text === undefined ? 0 : lengthOf(text, values));
  const at = of(spec.at);
  let corners: Point[];
  let names: EdgeName[];
  let hinge: readonly [Point, Point] | null = null;
  if ('size' in spec) {
    const [across, up] = [of(spec.size[0]), of(spec.size[1])];
    const frame = on === null ? rootFrame(across) : frameOn(on.a, on.b);
    const level = frame.outward === 'down' || frame.outward === 'up';
    const [length, out] = level ? [across, up] : [up, across];
    const [start = 0, end = 0] = bothEnds(spec.taper).map(of);
    const side = AROUND[frame.outward];
    hinge = [frame.place(at, 0), frame.place(at + length, 0)];
    corners = [hinge[1], hinge[0], frame.place(at + start, out), frame.place(at + length - end, out)];
    names = [side.hinge, side.start, frame.outward, side.end];
  } else {
    const points = spec.outline.map(([along, out]) => [of(along), of(out)] as const);
    if (on === null) corners = points.map(([x, y]) => pointAt(x, y));
    else {
      const frame = frameOn(on.a, on.b);
      const whole = spec.at === undefined && spec.hinge === undefined;
      const length = spec.hinge === undefined ? frame.length - at : of(spec.hinge);
      hinge = whole
        ? [on.a, on.b]
        : [frame.place(at, 0), spec.hinge === undefined ? on.b : frame.place(at + length, 0)];
      corners = [hinge[1], hinge[0], ...points.map(([along, out]) => frame.place(at + along, out))];
    }
    names = corners.map((_, corner): EdgeName => `e${corner}`);
  }
  const face = bench.faces.length;
  const sides = new Map<EdgeName, readonly Side[]>();
  corners.forEach((a, corner) => {
    const b = corners[(corner + 1) % corners.length] ?? a;
    sides.set(names[corner] ?? 'e0', samePoint(a, b) ? [] : [{ face, a, b, leanDeg: 0 }]);
  });
  const ring = corners.filter(
    (point, corner) => !samePoint(point, corners[(corner + 1) % corners.length] ?? point),
  );
  bench.faces.push({ panel: name, role: spec.role, ring, curves: ring.map(() => null) });
  if (on !== null && hinge !== null)
    bench.hinges.push({
      parent: on.face,
      child: face,
      a: hinge[0],
      b: hinge[1],
      restDeg: restDeg - on.leanDeg,
      kind: 'score',
      panel: name,
    });
  const laid: LaidPanel = { name, role: spec.role, faces: [face], sides, bend: null };
  bench.panels.set(name, laid);
  return laid;
}
