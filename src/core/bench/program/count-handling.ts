import type { BenchOp, BenchTool } from '../types';

/**
 * How often the fence is set for scoring (0 on a grooved board, where nothing is set) and how often the card is turned, once it lies on the
 * bench: a blank is laid down any way round.
 */
export function countHandling(
  ops: readonly BenchOp[],
  tool: BenchTool,
): { readonly fenceSettings: number; readonly turns: number } {
  const settings = ops.flatMap((op) => (op.op === 'score' ? [op.at] : []));
  return {
    fenceSettings: tool.kind === 'fence' ? settings.filter((at, i) => at !== settings[i - 1]).length : 0,
    turns: ops.slice(ops.findIndex(isWork)).filter((op) => op.op === 'turn').length,
  };
}

const isWork = ({ op }: BenchOp): boolean => op !== 'blank' && op !== 'flip' && op !== 'turn';
