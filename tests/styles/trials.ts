import { swayFrom } from '../../src/core/yield/stock/sway';
import { SEED } from '../seed';

/** How many of 10,000 still close when each mark of a fit is off by up to .4 mm either way. */
export function closing(clearMm: number, marks: number, offByMm = 0.4): number {
  const sway = swayFrom(SEED);
  let closes = 0;
  for (let trial = 0; trial < 10_000; trial++) {
    let left = clearMm;
    for (let mark = 0; mark < marks; mark++) left += offByMm * (2 * sway() - 1);
    if (left >= 0) closes++;
  }
  return closes;
}
