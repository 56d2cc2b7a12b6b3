import { nameValues, newOptions, newSizes } from '../net';
import type { BoxStyle, Chosen } from '../styles/language/types';
import { inches, type Ticks } from '../units/ticks';
import { checkLimits } from './check-limits';

/** How a new box of these sizes is made: as new ones are, or the first way where a limit stops that at these sizes. */
export function newWay(style: BoxStyle, sizes: Readonly<Record<string, Ticks>>, caliperUm: number): Chosen {
  const options = newOptions(style);
  const { lengths } = nameValues(style, { sizes: newSizes(style, sizes), caliperUm, options });
  const stopped = checkLimits(style, lengths, inches(0, 1, 16), options).some(
    ({ severity }) => severity === 'stop',
  );
  return stopped ? {} : options;
}
