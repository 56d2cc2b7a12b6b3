import { expect } from 'vitest';
import {
  type BenchOp,
  type BenchTool,
  canonicalCard,
  canonicalNet,
  runProgram,
} from '../../../src/core/bench';
import type { PieceNet } from '../../../src/core/net';

/** Fails unless these acts make exactly this piece. Compares whole texts first: thousands of boxes are tried. */
export function expectMakes(ops: readonly BenchOp[], piece: PieceNet, tool: BenchTool): void {
  const run = runProgram(ops, tool);
  if (!run.ok) expect(run.fault).toBeUndefined();
  else if (canonicalCard(run.card).join('\n') !== canonicalNet(piece).join('\n'))
    expect(canonicalCard(run.card)).toEqual(canonicalNet(piece));
  expect(run.ok).toBe(true);
}
