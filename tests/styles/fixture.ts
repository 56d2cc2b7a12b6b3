import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { millimetres, TICKS_PER_INCH, TICKS_PER_MM, type Ticks, ticks } from '../../src/core/units/ticks';

type Line = readonly [x1: number, y1: number, x2: number, y2: number];

interface HandWorkedPiece {
  readonly blank: readonly [number, number];
  readonly scores: readonly Line[];
  readonly curves?: readonly (readonly [...Line, radius: number])[];
  readonly slits: readonly Line[];
  readonly room: number;
}

export interface HandWorked {
  readonly title: string;
  readonly unit: 'in' | 'mm';
  readonly caliperUm: number;
  readonly mark?: number;
  readonly options?: Readonly<Record<string, string>>;
  readonly sizes: Readonly<Record<string, number>>;
  readonly pieces: Readonly<Record<string, HandWorkedPiece>>;
}

/** Hand-worked sizes of one style, the arithmetic beside them; `convex` says whether its room is its own convex hull. */
export interface StyleFixture {
  readonly comment: readonly string[];
  readonly convex: boolean;
  readonly cases: readonly HandWorked[];
}

export const readFixture = (style: string): StyleFixture =>
  JSON.parse(
    readFileSync(join(import.meta.dirname, '../fixtures/styles', `${style}.json`), 'utf8'),
  ) as StyleFixture;

/** A hand-worked number as ticks, to the nearest. */
export const lengthOf = ({ unit }: HandWorked, value: number): Ticks =>
  unit === 'mm' ? millimetres(value) : ticks(Math.round(value * TICKS_PER_INCH));

/** A case as `layNet` takes it. */
export const sizingOf = (worked: HandWorked) => ({
  sizes: Object.fromEntries(
    Object.entries(worked.sizes).map(([name, value]) => [name, lengthOf(worked, value)]),
  ),
  caliperUm: worked.caliperUm,
  ...(worked.mark === undefined ? {} : { mark: lengthOf(worked, worked.mark) }),
  ...(worked.options === undefined ? {} : { options: worked.options }),
});

/** Cubic units of a case in mm³. */
export const roomMm3 = ({ unit }: HandWorked, room: number): number =>
  room * (unit === 'mm' ? 1 : (TICKS_PER_INCH / TICKS_PER_MM) ** 3);
