import { afterAll, describe, expect, test } from 'vitest';
import { boxCards, sizeAsItLies } from '../../src/core/bench';
import { drawNet } from '../../src/core/draw/net/net-drawing';
import { pictureOfStep } from '../../src/core/draw/step/step-picture';
import { paringsOf } from '../../src/core/net/parings';
import { STYLES } from '../../src/core/styles';
import { metricTrimmer, trimmer } from '../core/bench/bench-tools';
import { boxOf } from '../print/printed-boxes';
import { type At, readLength, type Unit, Unreadable } from './lengths';
import { spellWork, workOf } from './line-work';
import { type ReadBack, readPrinted } from './read-card';
import {
  curveEnds,
  type DrawnNumber,
  dimensions,
  linesOf,
  names,
  numbersAlong,
  type Picture,
  UNSEEN,
} from './read-picture';

const hands = [
  { tool: trimmer, faceUp: 'outside' },
  { tool: { ...metricTrimmer, fence: 'right' }, faceUp: 'outside' },
  { tool: { ...trimmer, fence: 'right' }, faceUp: 'inside' },
  { tool: metricTrimmer, faceUp: 'inside' },
] as const;
const tally = { nets: 0, netNumbers: 0, stepNumbers: 0, changed: 0 };

/** The card of the words as its net is drawn: cards with no side named may lie either way up. */
const layings = ({ card }: ReadBack): ((at: At) => At)[] => [
  (at) => at,
  ...(card.scores.length === 0 ? [([x, y]: At): At => [card.width - x, y]] : []),
];

type Work = ReturnType<typeof workOf>;

/**
 * The net that a picture shows: every line end is where its numbers say, across and down. What a number leaves open, "full" or "scant", is one of
 * the lengths of the words; of several, the one drawn nearest.
 */
function netOfPicture(picture: Picture, made: Work, [wide, high]: At, unit: Unit, goodUp: boolean) {
  const above = numbersAlong(picture, 'top', unit);
  const beside = numbersAlong(picture, 'left', unit);
  const zero = (numbers: readonly DrawnNumber[]) => numbers.find(({ mark, lean }) => mark === 0 && !lean);
  const [left, top] = [zero(above)?.place ?? 0, zero(beside)?.place ?? 0];
  const whole = Math.max(...above.map(({ place }) => place));
  const [last] = above.filter(({ place }) => place === whole);
  const [lowest] = beside.filter(({ place }) => place === Math.min(...beside.map((one) => one.place)));
  if (!last || !lowest || !names(last, wide, unit) || !names(lowest, high, unit))
    throw new Unreadable('the card is drawn another size');
  const scale = (whole - left) / wide;
  // Where two lines cross off the grid, a stretch has no whole end.
  const ends = made
    .flatMap(({ a, b, on }) => (on ? [a, b, on.a, on.b] : [a, b]))
    .map(([x, y]): At => [Math.round(x), Math.round(y)]);
  const truth = (numbers: readonly DrawnNumber[], place: number, known: readonly number[], drawn: number) => {
    const number = nearest(numbers, (one) => one.place, place);
    if (!number || Math.abs(number.place - place) > 0.02) throw new Unreadable(`no number at ${place}`);
    const could = [...new Set(known)].filter((length) => names(number, length, unit));
    if (could.length === 0) throw new Unreadable(`${number.lean ?? ''} ${number.text} is in no words`);
    return nearest(could, (one) => one, drawn) ?? 0;
  };
  const across = [0, wide, ...ends.map(([x]) => x)];
  const down = [0, high, ...ends.map(([, y]) => high - y)];
  const place = ([x, y]: At): At => [
    truth(above, x, across, (x - left) / scale),
    high - truth(beside, y, down, (top - y) / scale),
  ];
  const corners = new Set(ends.map(String));
  for (const end of curveEnds(picture))
    if (!corners.has(String(place(end)))) throw new Unreadable(`a curve ends at ${end.join(' × ')} on paper`);
  return linesOf(picture).flatMap(({ a, b, work }) => {
    const isIn = work === (goodUp ? 'away from you' : 'towards you');
    const folds = work === 'towards you' || work === 'away from you';
    return [{ a: place(a), b: place(b), work: folds ? `fold ${isIn ? 'in' : 'out'}` : work }];
  });
}

const nearest = <One>(all: readonly One[], of: (one: One) => number, wanted: number): One | undefined =>
  all.reduce<One | undefined>(
    (best, one) => (best && Math.abs(of(best) - wanted) <= Math.abs(of(one) - wanted) ? best : one),
    undefined,
  );

/** A score that lies flat in the end is drawn as neither. */
const blind = <L extends { readonly work: string }>(lines: readonly L[]): L[] =>
  lines.map((line) => ({ ...line, work: /^fold|^flat/.test(line.work) ? 'fold' : line.work }));

/** Does the picture show the net of the words? Curves are drawn, not numbered: of a net that has some every straight line has to be there. */
function showsNet(picture: Picture, made: ReadBack, unit: Unit, goodUp: boolean, isCurved: boolean): boolean {
  return layings(made).some((lay) => {
    const all = workOf(made.card, made.overBead);
    const settle = settled(all.flatMap(({ a, b, on }) => [a, b, ...(on ? [on.a, on.b] : [])]).map(lay));
    const work = all.map(({ a, b, on, ...line }) => ({
      ...line,
      a: settle(lay(a)),
      b: settle(lay(b)),
      ...(on ? { on: { a: settle(lay(on.a)), b: settle(lay(on.b)) } } : {}),
    })) as Work;
    const drawn = readable(() =>
      netOfPicture(picture, work, [made.card.width, made.card.height], unit, goodUp),
    );
    if (!drawn) return false;
    const isBlind = drawn.some(({ work: one }) => one === 'flat');
    const [one, other] = isBlind ? [blind(work), blind(drawn)] : [work, drawn];
    const still = (at: At): At => at;
    return spellWork(one, still) === spellWork(isCurved ? [...one, ...other] : other, still);
  });
}

/** Places so near to one another across (or up) that no eye tells them are one. */
function settled(places: readonly At[]): (at: At) => At {
  const [across, up] = [0, 1].map((way) => {
    const known = [...new Set(places.map((at) => at[way] as number))]
      .filter(Number.isInteger)
      .sort((p, q) => p - q);
    const first = new Map<number, number>();
    for (const one of known) {
      const last = [...first.values()].at(-1);
      first.set(one, last !== undefined && one - last <= UNSEEN ? last : one);
    }
    return first;
  });
  return ([x, y]) => [across?.get(x) ?? x, up?.get(y) ?? y];
}

function readable<Found>(read: () => Found): Found | null {
  try {
    return read();
  } catch (slip) {
    if (slip instanceof Unreadable) return null;
    throw slip;
  }
}

describe('the numbers of a printed net and the words of its card make one net', () => {
  for (const style of STYLES)
    test(style.name, { timeout: 60_000 }, () => {
      for (const { tool, faceUp } of hands) {
        const ruler = { unit: tool.unit, finest: tool.finestMark };
        for (const { piece, steps, joins } of boxCards(boxOf(style), tool, { faceUp })) {
          if (joins) continue;
          const made = readPrinted(steps, tool.unit, 'fence' in tool ? tool.fence : 'left');
          const drawing = drawNet(piece, { ruler, scale: 0.7, textMm: 4.9, faceUp, show: { areas: false } });
          // What is pared off later is a tip, and no line of the net.
          const parings = paringsOf(piece).length;
          const bare = drawing.marks.filter(
            ({ kind, key }) => kind === 'text' || key !== undefined || kind !== 'line',
          );
          const unkeyed = drawing.marks.filter(
            (mark) => mark.kind === 'line' && mark.ink === 'cut' && !mark.key,
          );
          expect(unkeyed).toHaveLength(parings);
          const picture = { marks: drawing.marks.filter((mark) => !unkeyed.includes(mark)) } as Picture;
          expect(bare.length).toBeGreaterThan(0);
          const goodUp = faceUp === 'outside';
          const isCurved = piece.curves.length > 0;
          const shows = (one: Picture) => showsNet(one, made, tool.unit, goodUp, isCurved);
          expect(shows(picture), `${piece.label}, ${faceUp}`).toBe(true);
          tally.nets++;
          if (faceUp !== 'outside' || tool.unit !== 'in') continue;
          for (const [at, mark] of picture.marks.entries()) {
            if (
              mark.kind !== 'text' ||
              !/\d|[½¼¾⅛⅜⅝⅞]/.test(mark.text ?? '') ||
              !/^(left|top)/.test((mark as { key?: string }).key ?? '')
            )
              continue;
            if (/mm/.test(mark.text ?? '')) continue;
            tally.netNumbers++;
            const marks = picture.marks.with(at, { ...mark, text: `1${mark.text}` });
            expect(shows({ marks }), `${mark.text} wrong`).toBe(false);
            tally.changed++;
          }
        }
      }
    });
});

/** What the words of a step give its picture to write: marks from the fence, and lengths off the near edge. */
function wantedOf({ set }: ReadBack, step: number, high: number) {
  const lines = set.filter((line) => line.step === step);
  const each = (lengths: readonly number[]) => [...new Set(lengths)].sort((p, q) => p - q);
  const ends = lines.flatMap(({ a, b }) => (a[1] === 0 && b[1] === high ? [] : [a[1], b[1]]));
  return { marks: each(lines.map(({ a }) => a[0])), ends: each(ends.filter((end) => end > 0)) };
}

/** Every number is one of the lengths, and every length has one. */
const isEach = (
  numbers: readonly Pick<DrawnNumber, 'mark' | 'lean'>[],
  lengths: readonly number[],
  unit: Unit,
): boolean =>
  numbers.length === lengths.length &&
  lengths.every((length) => numbers.some((number) => names(number, length, unit)));

const SIZES = /^Cut (?!\d+, from )(\d.*) × (.+)\.$/;
const CORNER = /^Cut away .+: (.+) × (.+)\.$/;

describe('the numbers of a step’s picture are those of its words', () => {
  for (const style of STYLES)
    test(style.name, { timeout: 60_000 }, () => {
      for (const { tool, faceUp } of hands)
        for (const card of boxCards(boxOf(style), tool, { faceUp })) {
          if (card.joins) continue;
          const made = readPrinted(card.steps, tool.unit, 'fence' in tool ? tool.fence : 'left');
          for (const [i, step] of card.steps.entries()) {
            if (!['blank', 'score', 'slit', 'cut'].includes(step.kind)) continue;
            const picture = pictureOfStep(card, step, { widthMm: 400, heightMm: 400 }, { textMm: 4 });
            if (!picture) throw new Error(step.headline);
            const [across, up] = [card.piece.blank.across, card.piece.blank.up];
            const high = sizeAsItLies({ across, up }, step.lie).up;
            const { marks, ends } = wantedOf(made, i, high);
            const above = numbersAlong(picture, 'top', tool.unit);
            const where = `${step.headline}: ${above.map(({ text }) => text).join(', ')}`;
            expect(isEach(above, marks.length > 0 ? [0, ...marks] : [], tool.unit), where).toBe(true);
            // Each points at a line that this step draws.
            const upright = linesOf(picture as Picture).filter(({ a, b }) => Math.abs(a[0] - b[0]) < 1e-6);
            for (const { place, mark, text } of above)
              if (mark > 0)
                expect(
                  upright.some(({ a }) => Math.abs(a[0] - place) < 0.01),
                  `${text}: ${where}`,
                ).toBe(true);
            const said = [step.headline, ...step.details].flatMap((text) =>
              text.split(/(?<=\.) (?=[A-Z\d])/),
            );
            const sizes = said.flatMap((text) => {
              const [, wide = '', far = ''] = SIZES.exec(text) ?? CORNER.exec(text) ?? [];
              return wide === '' ? [] : [[readLength(wide, tool.unit), readLength(far, tool.unit)]];
            });
            const isLike = (one: readonly number[], other: readonly number[]) =>
              one.every((length, way) => Math.abs(length - (other[way] ?? 0)) <= UNSEEN);
            const once = sizes
              .filter((size, at) => sizes.findIndex((one) => isLike(one, size)) === at)
              .flat();
            const written = dimensions(picture, tool.unit);
            expect(written.length, where).toBe(ends.length + once.length);
            for (const length of [...ends, ...once])
              expect(
                written.some((number) => names(number, length, tool.unit)),
                `${length} of ${where}`,
              ).toBe(true);
            tally.stepNumbers += above.length + written.length;
          }
        }
    });

  test('and a number that is another is seen', () => {
    expect(isEach([{ mark: 8128, lean: null }], [8128], 'in')).toBe(true);
    expect(isEach([{ mark: 8128, lean: null }], [16256], 'in')).toBe(false);
    expect(isEach([{ mark: 8128, lean: 'full' }], [8120], 'in')).toBe(false);
  });
});

afterAll(() => {
  console.info(
    `Pictures read by their numbers: ${tally.nets} nets; ${tally.netNumbers} of their numbers made wrong, ${tally.changed} seen; ${tally.stepNumbers} numbers of step pictures`,
  );
});
