import { TICKS_PER_MM } from '../units/ticks';
import { pointAt } from './point';
import type { Point } from './types';

/** How far chords may stand off the arc they replace, mm. source: our choice, a third of a pencil line */
export const CHORD_TOLERANCE_MM = 0.2;

/** Radius of the arc that rises `rise` over a chord `span`. */
export const arcRadius = (span: number, rise: number): number => (span * span) / (8 * rise) + rise / 2;

/** Height of that arc above its chord, `along` from one end of it. */
export function arcHeight(span: number, rise: number, along: number): number {
  if (rise <= 0 || along <= 0 || along >= span) return 0;
  const radius = arcRadius(span, rise);
  const off = along - span / 2;
  return Math.sqrt(radius * radius - off * off) - (radius - rise);
}

/** Where an arc's chords end, as distances along its own chord: equal angles, symmetric, with one end at the top of the arc, whole ticks. All lengths in ticks. */
export function chordStations(span: number, rise: number): readonly number[] {
  if (rise <= 0) return [0, span];
  const radius = arcRadius(span, rise);
  const half = Math.asin(Math.min(1, span / 2 / radius));
  const pieces =
    2 * Math.max(1, Math.ceil(half / (2 * Math.acos(1 - (CHORD_TOLERANCE_MM * TICKS_PER_MM) / radius))));
  const stations = [0];
  for (let k = 1; k < pieces; k++) {
    const mirrored = stations[pieces - k];
    stations.push(
      mirrored === undefined
        ? Math.round(span / 2 + radius * Math.sin(half * ((2 * k) / pieces - 1)))
        : span - mirrored,
    );
  }
  return [...stations, span];
}

/** A centre or radius to a thousandth of a tick, so that it is the same number again after a trip through a file in millimeters. */
export const finely = (count: number): number => Math.round(count * 1024) / 1024 + 0;

/** Where the chords of an arc from a to b end, a and b left out. The arc bulges to its left by `rise`. */
export function chordEnds(a: Point, b: Point, rise: number): readonly Point[] {
  const span = Math.hypot(b.x - a.x, b.y - a.y);
  const radius = arcRadius(span, rise);
  const half = 2 * Math.atan2(2 * rise, span);
  const chord = 2 * Math.acos(Math.max(0, 1 - (CHORD_TOLERANCE_MM * TICKS_PER_MM) / radius));
  const pieces = 2 * Math.ceil(half / chord); // a corner at the top of the arc
  const [alongX, alongY] = [(b.x - a.x) / span, (b.y - a.y) / span];
  return Array.from({ length: pieces - 1 }, (_, at) => {
    const angle = half * ((2 * (at + 1)) / pieces - 1);
    const [along, out] = [radius * Math.sin(angle), radius * Math.cos(angle) - (radius - rise)];
    return pointAt(
      (a.x + b.x) / 2 + along * alongX - out * alongY,
      (a.y + b.y) / 2 + along * alongY + out * alongX,
    );
  });
}
