import type { Tool } from '../../../shared/workbook';
import type { LengthUnit } from '../../core/units';
import { ownOf } from '../shelf';
import { useWorkbook } from '../use-workbook';

/** The tool that a maker who thinks in this unit works with: the first one marked in it. */
export const toolInHand = (tools: ReadonlyMap<string, Tool>, unit: LengthUnit): Tool | undefined =>
  ownOf(tools).find((tool) => tool.unit === unit);

export const useToolInHand = (): Tool | undefined =>
  useWorkbook(({ rows, settings }) => toolInHand(rows.tools, settings.unit));
