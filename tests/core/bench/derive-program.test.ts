import { describe, expect, test } from 'vitest';
import {
  type BenchOp,
  canonicalCard,
  canonicalNet,
  deriveProgram,
  runProgram,
} from '../../../src/core/bench';
import type { PieceNet } from '../../../src/core/net/types';
import { toInches } from '../../../src/core/units';
import { board, trimmer } from './bench-tools';
import { lid, notched, pierced, slanted, tradeBox } from './hand-laid-nets';

/** An act in a few letters and inches, as a maker jots it down. */
function jot(op: BenchOp): string | null {
  const inch = (length: number): string => `${toInches(length)}`;
  switch (op.op) {
    case 'blank':
      return `blank ${inch(op.across)} × ${inch(op.up)}`;
    case 'turn':
      return `turn ${op.quarters}`;
    case 'score':
      return `score ${inch(op.at)}${op.span ? ` from ${inch(op.span.from)} to ${inch(op.span.to)}` : ''}`;
    case 'slit':
      return `slit ${inch(op.at)} from ${inch(op.from)} to ${inch(op.to)}`;
    case 'corner':
      return `cut ${op.corner} ${inch(op.across)} × ${inch(op.up)}`;
    case 'snip':
      return `snip ${inch(op.a.x)},${inch(op.a.y)} to ${inch(op.b.x)},${inch(op.b.y)}`;
    default:
      return null;
  }
}

const flatWork = (piece: PieceNet, tool = trimmer) =>
  deriveProgram(piece, tool, { faceUp: 'inside' })
    .ops.map(jot)
    .filter((line) => line !== null);

describe('the trade’s own card (common practice, no source)', () => {
  test('3 1/2 × 1 1/2 × 3 with a 1 in tab and 1 1/2 in flaps', () => {
    // 3 1/2 + 1 1/2 + 3 1/2 + 1 1/2 + 1 = 11; 3 + 1 1/2 = 4 1/2. 3 from the top is a whole inch, 1 1/2 from the bottom is not.
    expect(flatWork(tradeBox)).toEqual([
      'blank 11 × 4.5',
      'score 3.5',
      'score 5',
      'score 8.5',
      'score 10',
      'turn 1',
      'score 3',
      'turn 3',
      'slit 3.5 from 0 to 1.5',
      'slit 5 from 0 to 1.5',
      'slit 8.5 from 0 to 1.5',
      'cut near-right 1 × 1.5',
    ]);
  });

  test('a lid 6 1/16 × 5 1/16 with 1 in walls is scored with the fence set once', () => {
    const program = deriveProgram(lid, trimmer);
    expect(flatWork(lid).slice(0, 8)).toEqual([
      'blank 8.0625 × 7.0625',
      'score 1',
      'turn 1',
      'score 1',
      'turn 1',
      'score 1',
      'turn 1',
      'score 1',
    ]);
    // Three turns for the scores, one more to slit the other side.
    expect(program).toMatchObject({ fenceSettings: 1, turns: 4 });
  });

  test('a grooved board needs no fence, so nothing is set', () => {
    expect(deriveProgram(tradeBox, board)).toMatchObject({ fenceSettings: 0, turns: 2 });
  });
});

describe('running the program makes the net again, exactly', () => {
  test.each([
    ['trade box', tradeBox],
    ['lid', lid],
    ['slanted panels', slanted],
    ['windows, a slot and a slit that no edge opens', pierced],
    ['notches, tapers and a slit on the slant', notched],
  ])('%s', (_, piece) => {
    for (const tool of [trimmer, board, { ...trimmer, fence: 'right' as const }])
      for (const faceUp of ['inside', 'outside'] as const) {
        const run = runProgram(deriveProgram(piece, tool, { faceUp }).ops, tool);
        expect(run).toMatchObject({ ok: true });
        if (run.ok) expect(canonicalCard(run.card)).toEqual(canonicalNet(piece));
      }
  });
});
