import { describe, expect, it } from 'vitest';
import { boxCards, subjectOf } from '../../src/core/bench';
import { layNet } from '../../src/core/net';
import { type BoxStyle, STYLES, styleById } from '../../src/core/styles';
import { inches, type Ticks } from '../../src/core/units';
import { handoutPage, placeTips, printHandout } from '../../src/print';
import { trimmer } from '../core/bench/bench-tools';
import { inputOf } from './handout-input';

const cardsOf = (id: string, sizes: Readonly<Record<string, Ticks>> = {}) =>
  boxCards(layNet(styleById(id) as BoxStyle, { sizes, caliperUm: 300 }), trimmer);
type Cards = ReturnType<typeof cardsOf>;

/** The step whose words fit, in the piece they are wanted in. */
function stepWhere(cards: Cards, says: RegExp, piece?: string) {
  for (const card of cards)
    for (const step of card.steps)
      if (says.test(step.headline) && (piece === undefined || card.piece.id === piece)) return { card, step };
  throw new Error(`no step says ${says}`);
}

function tipAt(cards: Cards, says: RegExp, piece?: string) {
  const { card, step } = stepWhere(cards, says, piece);
  return { id: 'tip-1', step: step.id, about: subjectOf(card, step), says: 'My own way' };
}

/** Where tips are shown: the words of their steps, or `kept`. */
const shownAt = (cards: Cards, tips: Parameters<typeof placeTips>[0]): string[] => {
  const places = placeTips(tips, cards);
  return [
    ...cards.flatMap((card) =>
      card.steps.flatMap((step) => places.at(card, step).map(() => `${card.piece.id}: ${step.headline}`)),
    ),
    ...places.before.map(() => 'before'),
    ...places.kept.map(() => 'kept'),
  ];
};

describe('a tip hangs on what it is about', () => {
  it('goes along with the joint to a style whose steps are counted otherwise, and comes back', () => {
    const straight = cardsOf('straight-tuck');
    const tip = tipAt(straight, /^Tape the outside of the tab/);
    expect(shownAt(straight, [tip])).toEqual([expect.stringMatching(/Tape the outside of the tab/)]);
    const gable = cardsOf('gable-top');
    expect(shownAt(gable, [tip])).toEqual([expect.stringMatching(/the tab/)]);
    expect(shownAt(straight, [tip])).toHaveLength(1);
  });

  it('is kept, not lost and not moved, where the other style has nothing like it', () => {
    const wallet = cardsOf('tray');
    const tip = tipAt(cardsOf('straight-tuck'), /[Tt]uck/);
    expect(shownAt(wallet, [tip])).toEqual(['kept']);
    expect(shownAt(cardsOf('straight-tuck'), [tip])).toEqual([expect.stringMatching(/[Tt]uck/)]);
  });

  it('stays with its piece where two pieces have steps of the same number', () => {
    const cards = cardsOf('tray-lid');
    const lid = tipAt(cards, /^Cut/, 'lid');
    expect(shownAt(cards, [lid])).toEqual([expect.stringMatching(/^lid: Cut/)]);
  });

  it('one saved before tips knew what they are about is at the first step of its number, or kept', () => {
    const cards = cardsOf('tray-lid');
    const old = (step: string) => ({ id: 'tip-1', step, says: 'Old' });
    expect(shownAt(cards, [old('score-1')])).toHaveLength(1);
    expect(shownAt(cards, [old('score-9')])).toEqual(['kept']);
    expect(shownAt(cards, [{ id: 'tip-1', step: null, says: 'All' }])).toEqual(['before']);
  });

  it('every step of every style finds its own tip again, also at another size', () => {
    const moved: string[] = [];
    for (const style of STYLES) {
      const cards = cardsOf(style.id);
      // A sixteenth more everywhere: the same steps, unless a limit is met.
      const sizes = Object.fromEntries(
        Object.entries(style.symbols).map(([name]) => [
          name,
          (cardsValue(style.id, name) + inches(0, 1, 8)) as Ticks,
        ]),
      );
      const larger = cardsOf(style.id, sizes);
      for (const card of cards)
        for (const step of card.steps) {
          const tip = { id: 'a', step: step.id, about: subjectOf(card, step), says: 'x' };
          const at = (those: Cards) => {
            const places = placeTips([tip], those);
            return those.flatMap((one) =>
              one.steps.filter((other) => places.at(one, other).length > 0).map((other) => ({ one, other })),
            );
          };
          expect(at(cards).map(({ one, other }) => `${one.piece.id} ${other.id}`)).toEqual([
            `${card.piece.id} ${step.id}`,
          ]);
          const [found] = at(larger);
          if (found?.other.kind !== step.kind || found.one.piece.id !== card.piece.id)
            moved.push(`${style.id} ${card.piece.id} ${step.headline} -> ${found?.other.headline}`);
        }
    }
    expect(moved).toEqual([]);
  });

  it('no tip is lost or shown twice, from any step of any style in any other', () => {
    const all = STYLES.map((style) => cardsOf(style.id));
    const tips = all.flatMap((cards, from) =>
      cards.flatMap((card) =>
        card.steps.map((step) => ({
          id: `${from} ${card.piece.id} ${step.id}`,
          step: step.id,
          about: subjectOf(card, step),
          says: 'x',
        })),
      ),
    );
    for (const to of all) {
      const places = placeTips(tips, to);
      const shown = [
        ...places.before,
        ...to.flatMap((card) => card.steps.flatMap((step) => places.at(card, step))),
        ...places.kept,
      ].map(({ id }) => id);
      expect(shown.toSorted()).toEqual(tips.map(({ id }) => id).toSorted());
    }
  });
});

const cardsValue = (id: string, name: string): Ticks => {
  const style = styleById(id) as BoxStyle;
  return layNet(style, { sizes: {}, caliperUm: 300 }).values[name] ?? (0 as Ticks);
};

describe('the handout says what is kept', () => {
  const kept = () => {
    const input = inputOf(styleById('tray') as BoxStyle);
    const tip = tipAt(cardsOf('straight-tuck'), /[Tt]uck/);
    return { ...input, recipe: { ...input.recipe, handout: { tips: [tip], credits: '' } } };
  };

  it('on paper', () => {
    const words = printHandout({ ...kept(), paper: 'letter' })
      .pages.flatMap(({ marks }) => marks)
      .flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
    expect(words).toEqual(expect.arrayContaining(['Kept from before', '– My own way']));
  });

  it('on the phone', () => {
    expect(handoutPage(kept())).toMatch(/<h2>Kept from before<\/h2><ul><li>My own way<\/li>/);
  });
});
