import './jitless';
import { z } from 'zod';
import { millimetres, TICKS_PER_MM, type Ticks, toMm } from '../units/ticks';

/** The one rule of every saved file: a length is a number of millimeters, and a whole number of ticks (1/320 mm). Field names end in `Mm`. */
const onTick = (mm: number) => Math.abs(mm * TICKS_PER_MM - Math.round(mm * TICKS_PER_MM)) < 1e-6;

/** A number that may be 0 without the sign of minus zero, which equals 0 and prints as 0 but compares as another value. */
export const unsigned = (value: number): number => value + 0;

const mm = (least: number, most: number) =>
  z.number().min(least).max(most).refine(onTick, { error: 'off-tick' }).overwrite(unsigned);

export const lengthMm = mm(0.1, 2000);
export const marginMm = mm(0, 2000);

/** A saved length as ticks; exact, since the schema let only whole ticks in. */
export const ticksOfMm = (saved: number): Ticks => millimetres(saved);
/** Ticks as a saved length. */
export const mmOfTicks = (length: Ticks): number => toMm(length);
