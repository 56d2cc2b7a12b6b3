import type { Asking } from '../../rows';
import { type Reason, reason } from '../../units/reason';
import { perPiece, proportionUp } from '../buying/money';

/** A price to ask: what is used up, their hours at their rate, and their margin on both. */
export interface AskingPrice {
  readonly materialsMinor: number;
  readonly workMinor: number;
  readonly marginMinor: number;
  readonly totalMinor: number;
  readonly perFavorMinor: number;
  readonly why: readonly Reason[];
}

/** The arithmetic of a price; whole seconds of work, every share rounded up to whole minor units. */
export function askPrice(
  materialsMinor: number,
  workSeconds: number,
  favors: number,
  { hourlyMinor, marginPercent }: Asking,
): AskingPrice {
  const seconds = Math.ceil(workSeconds);
  const workMinor = proportionUp(hourlyMinor, seconds, 3600);
  const marginMinor = proportionUp(materialsMinor + workMinor, marginPercent, 100);
  const totalMinor = materialsMinor + workMinor + marginMinor;
  const perFavorMinor = favors > 0 ? perPiece(totalMinor, favors) : 0;
  const money = (minor: number) => ({ minor });
  return {
    materialsMinor,
    workMinor,
    marginMinor,
    totalMinor,
    perFavorMinor,
    why: [
      reason('Materials: {materials}', { materials: money(materialsMinor) }),
      reason('Time: {minutes} minutes at {hourly} per hour = {work}', {
        minutes: Math.ceil(seconds / 60),
        hourly: money(hourlyMinor),
        work: money(workMinor),
      }),
      reason('Markup of {percent}% on both: {margin}', {
        percent: marginPercent,
        margin: money(marginMinor),
      }),
      reason('{total} ÷ {favors} = {each}', { total: money(totalMinor), favors, each: money(perFavorMinor) }),
    ],
  };
}
