import { alongOf, carrierKey, carrierOf } from './carrier';
import type { LaidFace, LaidRing } from './laid-panel';
import type { Point } from './types';

/** A stretch of line with one face at most on either side. a→b runs so that `left` is a face. */
export interface Stretch {
  readonly a: Point;
  readonly b: Point;
  readonly left: number;
  readonly right: number | null;
  readonly curve: number | null;
}

interface Run {
  readonly from: number;
  readonly to: number;
  readonly start: Point;
  readonly end: Point;
  readonly way: 1 | -1;
  readonly face: number;
  readonly curve: number | null;
}

/** Lays the edges of all faces over one another: collinear edges are cut where either ends, and paired up. Exact. */
export function overlayEdges(
  faces: readonly (LaidRing & Partial<Pick<LaidFace, 'holes' | 'slits'>>)[],
): Stretch[] {
  const lines = new Map<string, Run[]>();
  faces.forEach((one, face) => {
    layRing(lines, one, face);
    for (const within of [...(one.holes ?? []), ...(one.slits ?? [])]) layRing(lines, within, face);
  });
  const stretches: Stretch[] = [];
  for (const runs of lines.values()) pairUp(runs, stretches);
  return stretches;
}

/** Puts the edges of a face's ring on their lines. */
function layRing(lines: Map<string, Run[]>, { ring, curves }: LaidRing, face: number): void {
  ring.forEach((a, at) => {
    const b = ring[at + 1] ?? ring[0] ?? a;
    const { carrier, way } = carrierOf(a, b);
    const [start, end] = way === 1 ? [a, b] : [b, a];
    const [from, to] = [alongOf(carrier, start), alongOf(carrier, end)];
    const run: Run = { from, to, start, end, way, face, curve: curves[at] ?? null };
    const key = carrierKey(carrier);
    const runs = lines.get(key);
    if (runs === undefined) lines.set(key, [run]);
    else runs.push(run);
  });
}

/** The stretches of one carrier. Where card lies doubled, the first face counts; the overlap check reports it. */
function pairUp(runs: readonly Run[], stretches: Stretch[]): void {
  const ends = new Map<number, Point>();
  for (const run of runs) ends.set(run.from, run.start).set(run.to, run.end);
  const places = [...ends.keys()].sort((p, q) => p - q);
  for (let at = 0; at + 1 < places.length; at++) {
    const [from = 0, to = 0] = [places[at], places[at + 1]];
    const left = runs.find((run) => run.way === 1 && run.from <= from && run.to >= to);
    const right = runs.find((run) => run.way === -1 && run.from <= from && run.to >= to);
    const first = left ?? right;
    const [start, end] = [ends.get(from), ends.get(to)];
    if (first === undefined || start === undefined || end === undefined) continue;
    const curve = left?.curve ?? right?.curve ?? null;
    if (left !== undefined)
      stretches.push({ a: start, b: end, left: left.face, right: right?.face ?? null, curve });
    else stretches.push({ a: end, b: start, left: first.face, right: null, curve });
  }
}
