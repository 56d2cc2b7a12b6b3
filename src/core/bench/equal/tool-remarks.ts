import { isOnMark, type Ticks } from '../../units';
import type { BenchFaultCode, BenchOp, BenchTool } from '../types';

/** What the tool does not do by itself: places between its marks, cuts longer than its blade. The maker then works by eye or ruler. */
export function remarksOn(op: BenchOp, tool: BenchTool): readonly BenchFaultCode[] {
  const remarks: BenchFaultCode[] = [];
  if (!lengthsOf(op).every((length) => isOnMark(length, tool.finestMark))) remarks.push('between-marks');
  if (op.op === 'blank' && Math.max(op.across, op.up) > tool.longestCut) remarks.push('cut-longer-than-tool');
  return remarks;
}

/** The lengths of an act that are set on the tool or read off it. */
function lengthsOf(op: BenchOp): readonly Ticks[] {
  switch (op.op) {
    case 'blank':
    case 'corner':
      return [op.across, op.up];
    case 'score':
      return op.span ? [op.at, op.span.from, op.span.to] : [op.at];
    case 'slit':
      return [op.at, op.from, op.to];
    case 'scoreLine':
    case 'slitLine':
    case 'snip':
      return [op.a.x, op.a.y, op.b.x, op.b.y];
    default:
      return [];
  }
}
