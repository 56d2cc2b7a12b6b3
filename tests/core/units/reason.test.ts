import { describe, expect, it } from 'vitest';
import { reason, sayReason, type Wording } from '../../../src/core/units/reason';
import { inches, toInches } from '../../../src/core/units/ticks';

const english: Wording = {
  length: (length) => `${toInches(length)} in`,
  money: (minor) => `$${minor / 100}`,
};
/** A made-up language: every template in brackets, lists with a slash. */
const madeUp: Wording = { ...english, say: (text) => `⟦${text}⟧`, list: (said) => said.join(' / ') };

describe('a sentence of ours', () => {
  const tuck = {
    says: 'While the {panels} of {name} fold, {one}: {deep}.',
    facts: {
      panels: ['lid', 'tuck', 'left flap'],
      name: { text: 'Ada’s box' },
      one: reason('{count} of {price}', { count: 2, price: { minor: 150 } }),
      deep: inches(1, 1, 2),
    },
  };

  it('fills in lengths, lists, sentences within it and what the maker wrote', () => {
    expect(sayReason(tuck, english)).toBe(
      'While the lid, tuck, and left flap of Ada’s box fold, 2 of $1.5: 1.5 in.',
    );
  });

  it('is put into another language before, and the maker’s own words are left alone', () => {
    expect(sayReason(tuck, madeUp)).toBe(
      '⟦While the ⟦lid⟧ / ⟦tuck⟧ / ⟦left flap⟧ of Ada’s box fold, ⟦2 of $1.5⟧: 1.5 in.⟧',
    );
  });

  it('hands the number it names to the language, for its plurals', () => {
    const said: (number | undefined)[] = [];
    const listening: Wording = { ...english, say: (text, count) => `${said.push(count)} ${text}` };
    sayReason(reason('{sheets} sheets', { sheets: 3 }), listening);
    sayReason(reason('Nothing counted.', {}), listening);
    expect(said).toEqual([3, undefined]);
  });

  it('leaves a name without a fact as it stands', () => {
    expect(sayReason({ says: '{one} {two}', facts: { one: 'a' } }, english)).toBe('a {two}');
  });
});
