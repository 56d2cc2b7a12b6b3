import { bench, describe } from 'vitest';
import { canonicalCard, canonicalNet, deriveProgram, runProgram } from '../../src/core/bench';
import { layNet } from '../../src/core/net';
import { STYLES } from '../../src/core/styles';
import { board, trimmer } from '../core/bench/bench-tools';

/** Goal: derive and run within a millisecond at the median, each piece. */
for (const style of STYLES)
  for (const piece of layNet(style, { sizes: {}, caliperUm: 300 }).pieces)
    describe(`${style.name}: ${piece.label}`, () => {
      const program = deriveProgram(piece, trimmer);
      const run = runProgram(program.ops, trimmer);
      bench('derive, trimmer', () => void deriveProgram(piece, trimmer));
      bench('derive, grooved board', () => void deriveProgram(piece, board));
      bench('run', () => void runProgram(program.ops, trimmer));
      bench('form of the card', () => {
        if (run.ok) canonicalCard(run.card);
      });
      bench('form of the net', () => void canonicalNet(piece));
    });
