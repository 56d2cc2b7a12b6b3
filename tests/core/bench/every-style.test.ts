import fc from 'fast-check';
import { describe, test } from 'vitest';
import { deriveProgram } from '../../../src/core/bench';
import { STYLES } from '../../../src/core/styles';
import { SEED } from '../../seed';
import { recordStyle } from '../../setup/style-record';
import { board, metricTrimmer, trimmer } from './bench-tools';
import { expectMakes } from './expect-makes';
import { randomBox } from './random-boxes';

describe('the program of every style makes the designed net, with no tolerance', () => {
  const benches = [
    { name: 'in inches on a trimmer', check: 'program = net', tool: trimmer, faceUp: 'inside', numRuns: 200 },
    {
      name: 'in millimetres, outside up, fence on the right',
      check: 'left-handed',
      tool: { ...metricTrimmer, fence: 'right' },
      faceUp: 'outside',
      numRuns: 50,
    },
    {
      name: 'on a grooved board, outside up',
      check: 'on a board',
      tool: board,
      faceUp: 'outside',
      numRuns: 50,
    },
  ] as const;
  for (const style of STYLES)
    test.for(benches)(
      `${style.name} $name`,
      { timeout: 60_000 },
      ({ tool, faceUp, numRuns, check }, test) => {
        fc.assert(
          fc.property(randomBox(style, tool.finestMark), (box) => {
            for (const piece of box.pieces)
              expectMakes(deriveProgram(piece, tool, { faceUp }).ops, piece, tool);
          }),
          { seed: SEED, numRuns },
        );
        recordStyle(test, { style: style.id, check, tried: numRuns, worst: 'equal' });
      },
    );
});
