import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { boxCards, panelLabels } from '../../src/core/bench';
import { STYLES } from '../../src/core/styles';
import { metricTrimmer, trimmer } from '../core/bench/bench-tools';
import { randomBox } from '../core/bench/random-boxes';
import { boxOf } from '../print/printed-boxes';
import { SEED } from '../seed';
import { changeWords } from './change-words';
import { designedDeeds, flatCard } from './compare-folds';
import { type FlatCard, foldByWords } from './fold-by-words';
import { Unreadable } from './lengths';
import { readPrinted } from './read-card';

type Card = ReturnType<typeof boxCards>[number];

/** Steps that are done with hands alone. */
const FOLDS = new Set(['fold', 'glue', 'close']);
const headlinesOf = ({ steps }: Card): string[] =>
  steps.filter(({ kind }) => FOLDS.has(kind)).map(({ headline }) => headline);

/** The panels by the names that the card uses; how they were creased, read off what its words make. */
function flatOf({ piece, steps, joins, tool }: Card): FlatCard {
  const made = joins ? null : readPrinted(steps, tool.unit, tool.fence ?? 'left');
  return flatCard(piece, panelLabels(piece), made);
}

const hands = [
  { tool: trimmer, faceUp: 'outside' },
  { tool: { ...metricTrimmer, fence: 'right' }, faceUp: 'inside' },
] as const;

describe('a reader who knows nothing but the printed words closes the box as its style does', () => {
  for (const style of STYLES)
    test(`${style.name}, 24 sizes`, { timeout: 60_000 }, () => {
      for (const [i, { tool, faceUp }] of hands.entries())
        fc.assert(
          fc.property(randomBox(style, tool.finestMark), (box) => {
            for (const card of boxCards(box, tool, { faceUp }))
              expect(foldByWords(headlinesOf(card), flatOf(card)), card.piece.label).toEqual(
                designedDeeds(card.piece, panelLabels(card.piece)),
              );
          }),
          { seed: SEED + i, numRuns: 12 },
        );
    });
});

const tally = { changes: 0, same: 0 };

/** Two panels that fold in turn the same two scores whether one hand holds the first panel of three or the last. */
const MAY_BE_HARMLESS = /^(?:right to left|back to front): (?:.+\. )?Fold the \w+ and (?:the )?[\w ]+ in\./;

describe('one wrong word is another box, or none', () => {
  for (const style of STYLES)
    test(style.name, () => {
      const missed: string[] = [];
      for (const card of boxCards(boxOf(style), trimmer)) {
        const flat = flatOf(card);
        const wanted = JSON.stringify(designedDeeds(card.piece, panelLabels(card.piece)));
        for (const { headlines, how } of changeWords(headlinesOf(card))) {
          tally.changes++;
          if (readAs(headlines, flat) !== wanted) continue;
          tally.same++;
          if (!MAY_BE_HARMLESS.test(how)) missed.push(how);
        }
      }
      expect(missed).toEqual([]);
    });

  test('all but a few, which turn the same scores', () => {
    expect(tally.changes).toBeGreaterThan(1000);
    expect(tally.same / tally.changes).toBeLessThan(0.01);
  });

  afterAll(() => {
    console.info(
      `Words of folding changed, left out or put first: ${tally.changes}; the same box by ${tally.same}`,
    );
  });
});

function readAs(headlines: readonly string[], flat: FlatCard): string {
  try {
    return JSON.stringify(foldByWords(headlines, flat));
  } catch (slip) {
    if (slip instanceof Unreadable) return 'unreadable';
    throw slip;
  }
}
