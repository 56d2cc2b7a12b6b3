import type { Tool } from '../../shared/workbook';
import type { BenchTool } from '../core/bench';
import { benchToolOf } from '../core/plan';
import { type LengthUnit, USUAL_FINEST } from '../core/units';

/** The tool a card is written for: the saved one if it has these units, else a ruler with that unit's usual marks. */
export function benchFor(tool: Tool | undefined, unit: LengthUnit): BenchTool {
  const bench = benchToolOf(tool);
  return bench.unit === unit ? bench : { ...bench, unit, finestMark: USUAL_FINEST[unit] };
}
