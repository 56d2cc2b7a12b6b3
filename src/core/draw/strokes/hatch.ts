import type { At } from '../../plane';
import type { Hatch } from './inks';

export type Segment = readonly [from: At, to: At];

/**
 * The lines of a hatch inside a ring and outside its holes, in mm. Lines are anchored to the page, not to the area, so that hatches
 * of neighboring areas run on into one another. Even-odd rule.
 */
export const hatchLines = (
  ring: readonly At[],
  holes: readonly (readonly At[])[],
  hatch: Pick<Hatch, 'anglesDeg' | 'gapMm'>,
): Segment[] => hatch.anglesDeg.flatMap((angle) => linesAt([ring, ...holes], angle, hatch.gapMm));

function linesAt(rings: readonly (readonly At[])[], angleDeg: number, gapMm: number): Segment[] {
  const turn = (angleDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  // In the turned frame the hatch runs level: u along the lines, v across them.
  const turned = rings.map((ring) => ring.map(([x, y]): At => [x * cos + y * sin, y * cos - x * sin]));
  const back = (u: number, v: number): At => [u * cos - v * sin, u * sin + v * cos];
  const heights = turned.flat().map(([, v]) => v);
  const segments: Segment[] = [];
  for (let n = Math.ceil(Math.min(...heights) / gapMm); n * gapMm <= Math.max(...heights); n++) {
    const v = n * gapMm;
    const crossings = turned.flatMap((ring) => crossingsOf(ring, v)).sort((a, b) => a - b);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const [from, to] = [crossings[i]!, crossings[i + 1]!];
      if (to - from > 1e-6) segments.push([back(from, v), back(to, v)]);
    }
  }
  return segments;
}

/** Where the level line at `v` crosses a ring; half-open at corners, so that each crossing counts once. */
function crossingsOf(ring: readonly At[], v: number): number[] {
  const found: number[] = [];
  ring.forEach(([u1, v1], i) => {
    const [u2, v2] = ring[(i + 1) % ring.length]!;
    if (v1 <= v !== v2 <= v) found.push(u1 + ((v - v1) / (v2 - v1)) * (u2 - u1));
  });
  return found;
}
