import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { boxCards } from '../../src/core/bench';
import { STYLES } from '../../src/core/styles';
import { pdfOf } from '../../src/print';
import { metricTrimmer, trimmer } from '../core/bench/bench-tools';
import { randomBox } from '../core/bench/random-boxes';
import { benchCardOf, boxOf } from '../print/printed-boxes';
import { fonts, readPdf } from '../print/read-pdf';
import { SEED } from '../seed';
import { changeNumbers } from './change-numbers';
import { firstLook, isThisNet, spellNet, spellTape } from './compare';
import { Unreadable } from './lengths';
import { printedSteps } from './printed-steps';
import { type PrintedStep, readPrinted } from './read-card';

const SIZES = 50;
const hands = [
  { tool: trimmer, faceUp: 'outside' },
  { tool: { ...metricTrimmer, fence: 'right' }, faceUp: 'outside' },
  { tool: { ...trimmer, fence: 'right' }, faceUp: 'inside' },
  { tool: metricTrimmer, faceUp: 'inside' },
] as const;

describe('a reader who knows nothing but the printed words makes the net', () => {
  for (const style of STYLES)
    test(`${style.name}, ${SIZES} sizes`, { timeout: 60_000 }, () => {
      for (const [i, { tool, faceUp }] of hands.entries())
        fc.assert(
          fc.property(randomBox(style, tool.finestMark), (box) => {
            for (const { piece, steps, joins, program } of boxCards(box, tool, { faceUp })) {
              if (joins) continue;
              const made = readPrinted(steps, tool.unit, 'fence' in tool ? tool.fence : 'left');
              if (!isThisNet(made, piece)) expect(firstLook(made)).toBe(spellNet(piece));
              expect(spellTape(made.tape)).toEqual(spellTape(program.ops));
              const threads = program.ops.flatMap((op) => (op.op === 'thread' ? [op.length] : []));
              expect(made.ribbon).toEqual(threads);
            }
          }),
          { seed: SEED + i, numRuns: i < 2 ? 13 : 12 },
        );
    });
});

/** A score or a slit may run on over card that falls away, and a sheet may be longer where its end is cut off. */
const MAY_BE_HARMLESS = /^(?:Cut \d|Slit |Score at .+, from |Quarter turn|Half turn|Turn back)/;
const tally = { numbers: 0, same: 0 };

describe('one wrong number on the card is one wrong box', () => {
  const isSame = (
    changed: readonly PrintedStep[],
    card: ReturnType<typeof boxCards>[number],
    tape: string,
  ): boolean => {
    try {
      const made = readPrinted(changed, 'in', 'left');
      return isThisNet(made, card.piece) && spellTape(made.tape).join() === tape;
    } catch (slip) {
      if (slip instanceof Unreadable) return false;
      throw slip;
    }
  };
  for (const style of STYLES)
    test(style.name, { timeout: 60_000 }, () => {
      for (const card of boxCards(boxOf(style), trimmer)) {
        if (card.joins) continue;
        const tape = spellTape(readPrinted(card.steps, 'in', 'left').tape).join();
        expect(isSame(card.steps, card, tape)).toBe(true);
        for (const { steps, sentence } of changeNumbers(card.steps)) {
          tally.numbers++;
          if (!isSame(steps, card, tape)) continue;
          tally.same++;
          expect(sentence.split('. ').at(-1)).toMatch(MAY_BE_HARMLESS);
        }
      }
    });

  test('all but a few, which change nothing of the finished card', () => {
    expect(tally.numbers).toBeGreaterThan(1000);
    expect(tally.same / tally.numbers).toBeLessThan(0.005);
  });

  afterAll(() => {
    console.info(
      `Numbers on the cards of ${STYLES.length} styles changed one by one: ${tally.numbers}; the same box by ${tally.same}`,
    );
  });
});

// Read by pdfjs-dist 4.10.38, from the file that is printed.
describe('the words on the printed page make the net', () => {
  test.each(['open-top', 'straight-tuck', 'crash-lock', 'gable-top', 'house', 'tray', 'wedge', 'cornet'])(
    '%s',
    async (id) => {
      const style = STYLES.find((one) => one.id === id);
      if (!style) throw new Error(id);
      const pages = await readPdf(await pdfOf(benchCardOf(style, 'letter'), fonts));
      expect(pages).toHaveLength(1);
      const [piece] = boxOf(style).pieces;
      const made = readPrinted(pages.flatMap(printedSteps), 'in', 'left');
      if (!piece) throw new Error(`${id} has no piece`);
      if (!isThisNet(made, piece)) expect(firstLook(made)).toBe(spellNet(piece));
    },
  );
});
