import type { At, Ring } from '../../../src/core/plane';
import { inches, ticks } from '../../../src/core/units';
import type { SheetPaper } from '../../../src/core/yield';

const inch = inches(1);
const ring = (points: readonly (readonly [number, number])[]): Ring =>
  points.map(([x, y]): At => [Math.round(x * inch), Math.round(y * inch)]);

/** A tray with four walls and no corners: base w × d, walls h. Sizes in inches. */
export const crossTray = (w: number, d: number, h: number): Ring =>
  ring([[h, 0], [h + w, 0], [h + w, h], [h + w + h, h], [h + w + h, h + d], [h + w, h + d], [h + w, h + d + h], [h, h + d + h], [h, h + d], [0, h + d], [0, h], [h, h]]); // biome-ignore format: one row

/** A tuck box in rough outline: half-inch tab, four panels, a lid and a bottom with half-inch tucks, half-inch dust flaps. */
export function tuckBox(w: number, d: number, h: number): Ring {
  const [tab, lid, flap] = [0.5, d + 0.5, 0.5];
  const [a, b, c, e, f] = [tab, tab + w, tab + w + d, tab + 2 * w + d, tab + 2 * w + 2 * d];
  const [low, high] = [lid, lid + h];
  return ring([[a, low], [a, 0], [b, 0], [b, low - flap], [c, low - flap], [c, low], [e, low], [e, low - flap], [f, low - flap], [f, high + flap], [e, high + flap], [e, high], [c, high], [c, high + flap], [b, high + flap], [b, high + lid], [a, high + lid], [a, high], [0, high], [0, low]]); // biome-ignore format: one row
}

/** The cells of `size` inches that an outline of whole cells fills, row by row as bits, in each different quarter turn. */
export function cellsOf(outline: Ring, size: number): number[][] {
  const cell = size * inch;
  const turns = new Map<string, number[]>();
  for (let quarter = 0; quarter < 4; quarter++) {
    const turned = outline.map(([x, y]) => ([[x, y], [-y, x], [-x, -y], [y, -x]] as const)[quarter]!); // biome-ignore format: one row
    const [left, near] = [Math.min(...turned.map(([x]) => x)), Math.min(...turned.map(([, y]) => y))];
    const at = turned.map(([x, y]) => [(x - left) / cell, (y - near) / cell] as const);
    const [wide, high] = [Math.max(...at.map(([x]) => x)), Math.max(...at.map(([, y]) => y))];
    const rows = Array.from({ length: high }, (_, row) => {
      let bits = 0;
      for (let column = 0; column < wide; column++)
        if (isIn(at, column + 0.5, row + 0.5)) bits |= 1 << column;
      return bits;
    });
    turns.set(rows.join(), rows);
  }
  return [...turns.values()];
}

function isIn(corners: readonly (readonly [number, number])[], x: number, y: number): boolean {
  let inside = false;
  for (const [at, [ax, ay]] of corners.entries()) {
    const [bx, by] = corners[(at + 1) % corners.length]!;
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
  }
  return inside;
}

export const plainSheet = (across: number, up: number, grain: SheetPaper['grain'] = 'none'): SheetPaper => ({
  id: 'sheet',
  across: ticks(across * inch),
  up: ticks(up * inch),
  grain,
  squaring: { left: ticks(0), right: ticks(0), near: ticks(0), far: ticks(0) },
  onHand: 0,
});
