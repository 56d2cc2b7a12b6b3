import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonicalCard, canonicalNet, deriveProgram, runProgram } from '../../../src/core/bench';
import { STYLES } from '../../../src/core/styles';
import { SEED } from '../../seed';
import { board, metricTrimmer, trimmer } from './bench-tools';
import { randomBox } from './random-boxes';

describe('the program of every style makes the designed net, with no tolerance', () => {
  const benches = [
    { name: 'in inches on a trimmer', tool: trimmer, faceUp: 'inside' },
    {
      name: 'in millimetres, outside up, fence on the right',
      tool: { ...metricTrimmer, fence: 'right' },
      faceUp: 'outside',
    },
    { name: 'on a grooved board, outside up', tool: board, faceUp: 'outside' },
  ] as const;
  for (const style of STYLES)
    test.each(benches)(
      `${style.name} $name`,
      ({ tool, faceUp }) => {
        fc.assert(
          fc.property(randomBox(style, tool.finestMark), (box) => {
            for (const piece of box.pieces) {
              const run = runProgram(deriveProgram(piece, tool, { faceUp }).ops, tool);
              expect(run).toMatchObject({ ok: true });
              if (run.ok) expect(canonicalCard(run.card)).toEqual(canonicalNet(piece));
            }
          }),
          { seed: SEED, numRuns: 200 },
        );
      },
      60_000,
    );
});
