import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boxCards } from '../../src/core/bench';
import { setPanelTaper } from '../../src/core/draft/change-panel';
import { setCut } from '../../src/core/draft/cuts';
import { openDraft } from '../../src/core/draft/edit-style';
import { emptyBase } from '../../src/core/draft/first-draft';
import { metricTrimmer, trimmer } from '../core/bench/bench-tools';
import { randomBox } from '../core/bench/random-boxes';
import { drawn, HINGED_LID } from '../core/draft/drawn-styles';
import { SEED } from '../seed';
import { firstLook, isThisNet, spellNet } from './compare';
import { readPrinted } from './read-card';

const on = (panel: string) => ({ piece: 'box', panel });

/** A hinged lid with every kind of cut: a round and a slanted corner, a scooped and an arched edge. */
const opened = openDraft(
  drawn(emptyBase('floor', 'Mine'), [
    ...HINGED_LID,
    setPanelTaper(on('tuck'), ''),
    setCut(on('tuck'), 'up', 'arch', 'edge', '1/4 in'),
    setCut(on('front'), 'down', 'scoop', 'edge', '1/4 in'),
    setCut(on('leftDust'), 'left', 'slant', 'corner', '1/4 in'),
    setCut(on('rightDust'), 'right', 'round', 'corner', '3/8 in'),
  ]),
);

test.each([
  ['in', trimmer, 'outside'],
  ['in', { ...trimmer, fence: 'right' }, 'inside'],
  ['mm', metricTrimmer, 'inside'],
] as const)(
  'who knows the printed words alone makes cut corners and curves of them (%s)',
  (_, tool, faceUp) => {
    if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
    fc.assert(
      fc.property(randomBox(opened.style, tool.finestMark), (box) => {
        for (const { piece, steps, joins } of boxCards(box, tool, { faceUp })) {
          if (joins) continue;
          expect(piece.curves).toHaveLength(3);
          const made = readPrinted(steps, tool.unit, 'fence' in tool ? tool.fence : 'left');
          if (!isThisNet(made, piece)) expect(firstLook(made)).toBe(spellNet(piece));
        }
      }),
      { seed: SEED, numRuns: 15 },
    );
  },
);
