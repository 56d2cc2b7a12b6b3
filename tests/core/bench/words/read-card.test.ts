import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BenchTool,
  canonicalCard,
  canonicalNet,
  cardSteps,
  deriveProgram,
  panelLabels,
  readCard,
  runProgram,
} from '../../../../src/core/bench';
import { STYLES } from '../../../../src/core/styles';
import type { Ticks } from '../../../../src/core/units';
import { SEED } from '../../../seed';
import { board, metricTrimmer, trimmer } from '../bench-tools';
import { randomBox } from '../random-boxes';

interface Case {
  readonly name: string;
  readonly tool: BenchTool;
  readonly faceUp: 'inside' | 'outside';
  /** The marks the box was sized on, where they are not the tool's. */
  readonly mark?: Ticks;
}

describe('the printed words alone make the box', () => {
  const cards: readonly Case[] = [
    { name: 'in inches', tool: trimmer, faceUp: 'inside' },
    { name: 'in millimetres', tool: metricTrimmer, faceUp: 'inside' },
    {
      name: 'in millimetres, outside up, fence on the right',
      tool: { ...metricTrimmer, fence: 'right' },
      faceUp: 'outside',
    },
    { name: 'in inches on a grooved board, outside up', tool: board, faceUp: 'outside' },
    {
      name: 'an inch box on a metric trimmer',
      tool: metricTrimmer,
      faceUp: 'inside',
      mark: trimmer.finestMark,
    },
    { name: 'in inches, fence on the right', tool: { ...trimmer, fence: 'right' }, faceUp: 'inside' },
  ];
  for (const style of STYLES)
    test.each(cards)(
      `${style.name}, $name`,
      ({ tool, faceUp, mark = tool.finestMark }) => {
        fc.assert(
          fc.property(randomBox(style, mark), (box) => {
            for (const piece of box.pieces) {
              const steps = cardSteps(deriveProgram(piece, tool, { faceUp }), piece, box, tool);
              const read = readCard(steps, {
                unit: tool.unit,
                fence: tool.fence ?? 'left',
                labels: panelLabels(piece),
              });
              expect(read).toMatchObject({ ok: true });
              if (!read.ok) return;
              const run = runProgram(read.ops, tool);
              expect(run).toMatchObject({ ok: true });
              if (run.ok) expect(canonicalCard(run.card)).toEqual(canonicalNet(piece));
            }
          }),
          { seed: SEED, numRuns: 40 },
        );
      },
      60_000,
    );
});
