import { mmOfTicks } from '../../rows/lengths';
import type { LengthUnit } from '../../units/marks';
import { inches, millimetres } from '../../units/ticks';

/** How true a maker marks: every mark off by up to so much either way. */
export interface Accuracy {
  readonly mm: number;
  /** As it is written, whatever marks the ruler shows. */
  readonly name: string;
}

/** What is offered in either unit: half a fine mark of a ruler, and half a coarse one. source: our choice */
export const ACCURACIES: Readonly<Record<LengthUnit, readonly Accuracy[]>> = {
  in: [
    { mm: mmOfTicks(inches(0, 1, 64)), name: '1/64 in' },
    { mm: mmOfTicks(inches(0, 1, 32)), name: '1/32 in' },
  ],
  mm: [
    { mm: mmOfTicks(millimetres(0.4)), name: '0.4 mm' },
    { mm: mmOfTicks(millimetres(0.8)), name: '0.8 mm' },
  ],
};

/** An accuracy as it is written; one that is not offered in millimeters. */
export const nameAccuracy = (mm: number): string =>
  [...ACCURACIES.in, ...ACCURACIES.mm].find((offered) => offered.mm === mm)?.name ?? `${mm} mm`;
