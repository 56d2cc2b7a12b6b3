import { type At, type Box, boxRing, clipTo } from '../plane';
import { type ArcMark, type AreaMark, pointOfArc, type TextMark, textBox } from './strokes/marks';
import type { Mark } from './strokes/types';

/** What of some marks lies in a window: lines and arcs cut at its border, areas cut to it, words only whole. Keys stay. */
export const clipMarks = (marks: readonly Mark[], window: Box): Mark[] =>
  marks.flatMap((mark) => clipMark(mark, window));

function clipMark(mark: Mark, window: Box): Mark[] {
  switch (mark.kind) {
    case 'line':
      return clipRun(mark.points, window).map((points) => ({ ...mark, points }));
    case 'arc':
      return clipArc(mark, window);
    case 'area':
      return clipArea(mark, window);
    case 'text':
      return clipText(mark, window);
  }
}

/** The parts of a run of straight pieces inside the window; pieces that meet stay one run. */
function clipRun(points: readonly At[], window: Box): At[][] {
  const runs: At[][] = [];
  points.slice(1).forEach((to, i) => {
    const inside = clipSegment(points[i]!, to, window);
    if (!inside) return;
    const [from, end] = inside;
    const last = runs.at(-1)?.at(-1);
    if (last && last[0] === from[0] && last[1] === from[1]) runs.at(-1)!.push(end);
    else runs.push([from, end]);
  });
  return runs;
}

/** Liang and Barsky's parametric clipping (ACM Transactions on Graphics 3, 1984; from memory). */
function clipSegment(from: At, to: At, { left, right, bottom, top }: Box): [At, At] | null {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  let [enter, leave] = [0, 1];
  for (const [step, room] of [
    [-dx, from[0] - left],
    [dx, right - from[0]],
    [-dy, from[1] - bottom],
    [dy, top - from[1]],
  ] as const) {
    if (step === 0 && room < 0) return null;
    if (step < 0) enter = Math.max(enter, room / step);
    if (step > 0) leave = Math.min(leave, room / step);
  }
  if (enter >= leave) return null;
  const at = (share: number): At => [from[0] + share * dx, from[1] + share * dy];
  return [enter === 0 ? from : at(enter), leave === 1 ? to : at(leave)];
}

/** The arc cut where it crosses the window's sides; every piece stays a true arc. */
function clipArc(arc: ArcMark, window: Box): Mark[] {
  const { centre, radius, fromDeg, sweepDeg } = arc;
  const crossings = [
    ...[window.left, window.right].flatMap((x) => degreesWhere((x - centre[0]) / radius, 'x')),
    ...[window.bottom, window.top].flatMap((y) => degreesWhere((y - centre[1]) / radius, 'y')),
  ].map((deg) => turnsAlong(deg, fromDeg, sweepDeg));
  const stops = [0, ...crossings.filter((share) => share > 0 && share < 1).sort((a, b) => a - b), 1];
  return stops.slice(1).flatMap((end, i): Mark[] => {
    const start = stops[i]!;
    const [x, y] = pointOfArc(centre, radius, fromDeg + ((start + end) / 2) * sweepDeg);
    const inside = x > window.left && x < window.right && y > window.bottom && y < window.top;
    if (!inside || end - start < 1e-9) return [];
    return [{ ...arc, fromDeg: fromDeg + start * sweepDeg, sweepDeg: (end - start) * sweepDeg }];
  });
}

/** Both angles at which a unit circle has this x (or y); none beyond it. */
function degreesWhere(value: number, axis: 'x' | 'y'): number[] {
  if (Math.abs(value) > 1) return [];
  const first = ((axis === 'x' ? Math.acos(value) : Math.asin(value)) * 180) / Math.PI;
  return axis === 'x' ? [first, -first] : [first, 180 - first];
}

/** How far along an arc an angle lies, 0 at its start and 1 at its end; beyond 1 when the arc does not reach it. */
function turnsAlong(deg: number, fromDeg: number, sweepDeg: number): number {
  const sign = sweepDeg < 0 ? -1 : 1;
  const ahead = (((sign * (deg - fromDeg)) % 360) + 360) % 360;
  return ahead / Math.abs(sweepDeg);
}

function clipArea(area: AreaMark, window: Box): Mark[] {
  const ring = clipTo(area.ring, boxRing(window));
  if (ring.length < 3) return [];
  const holes = (area.holes ?? [])
    .map((hole) => clipTo(hole, boxRing(window)))
    .filter((hole) => hole.length >= 3);
  return [{ ...area, ring, holes }];
}

function clipText(text: TextMark, window: Box): Mark[] {
  const box = textBox(text);
  const whole =
    box.left >= window.left &&
    box.right <= window.right &&
    box.bottom >= window.bottom &&
    box.top <= window.top;
  return whole ? [text] : [];
}
