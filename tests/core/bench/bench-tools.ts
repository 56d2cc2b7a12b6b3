import type { BenchTool } from '../../../src/core/bench/types';
import { inches, millimetres } from '../../../src/core/units';

/** A 12 in trimmer with a fence, marked in sixteenths. source: common practice, no source. */
export const trimmer: BenchTool = {
  name: 'trimmer',
  unit: 'in',
  finestMark: inches(0, 1, 16),
  reach: inches(12),
  longestCut: inches(12),
  kind: 'fence',
};

export const metricTrimmer: BenchTool = {
  ...trimmer,
  unit: 'mm',
  finestMark: millimetres(1),
  reach: millimetres(305),
  longestCut: millimetres(305),
};

export const board: BenchTool = { ...trimmer, name: 'board', finestMark: inches(0, 1, 8), kind: 'grooves' };
