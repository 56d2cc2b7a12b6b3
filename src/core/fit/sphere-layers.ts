import { packCircles } from './circle-patterns';
import type { Arrangement, Placed } from './types';

/** Height of each further layer of spheres over the one below, in diameters: over a hollow of four (1/√2) or of three (√(2/3)). Derived. */
export const OVER_FOUR = Math.SQRT1_2;
export const OVER_THREE = Math.sqrt(2 / 3);

/**
 * Spheres of one size: one layer in every pattern of `packCircles`, or `layers` square grids, each nested in the hollows of the one below.
 * Millimeters. Never called the best possible. `oneLayer`: nothing rests on tender things.
 */
export function stackSpheres(item: string, diameter: number, count: number, oneLayer = false): Arrangement[] {
  const flat = flatLayers(item, diameter, count);
  return oneLayer ? flat : [...flat, ...nestedSquares(item, diameter, count)];
}

function flatLayers(item: string, diameter: number, count: number): Arrangement[] {
  return packCircles(diameter, count).map(({ name, width, depth, centres }) => ({
    pattern: `one layer, ${name}`,
    exact: false,
    size: [width, depth, diameter],
    placed: centres.map(([x, y]): Placed => ({ item, shape: 'sphere', at: [x, y, diameter / 2], diameter })),
  }));
}

/** A square grid a × b below, (a − 1) × (b − 1) in its hollows, and so on by turns. */
function nestedSquares(item: string, diameter: number, count: number): Arrangement[] {
  const found: Arrangement[] = [];
  const widest = Math.min(count, 4 * Math.ceil(Math.sqrt(count)));
  for (let across = 2; across <= widest && across * 2 <= count + across; across++)
    for (let deep = 2; deep <= across; deep++) {
      const centres = nestedCentres(across, deep, count);
      const layers = new Set(centres.map(([, , z]) => z)).size;
      if (layers < 2) continue;
      found.push({
        pattern: `${layers} layers, each in the hollows of ${across} × ${deep}`,
        exact: false,
        size: [across * diameter, deep * diameter, diameter * (1 + (layers - 1) * OVER_FOUR)],
        placed: centres.map(
          ([x, y, z]): Placed => ({
            item,
            shape: 'sphere',
            at: [x * diameter, y * diameter, z * diameter],
            diameter,
          }),
        ),
      });
    }
  return found;
}

function nestedCentres(across: number, deep: number, count: number): [number, number, number][] {
  const centres: [number, number, number][] = [];
  for (let layer = 0; centres.length < count; layer++) {
    const shift = layer % 2;
    for (let j = 0; j < deep - shift; j++)
      for (let i = 0; i < across - shift && centres.length < count; i++)
        centres.push([i + 0.5 + shift / 2, j + 0.5 + shift / 2, 0.5 + layer * OVER_FOUR]);
  }
  return centres;
}
