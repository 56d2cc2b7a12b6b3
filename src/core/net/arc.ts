import { TICKS_PER_MM } from '../units/ticks';

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
