import { isDeepStrictEqual } from 'node:util';
import { deflateRawSync, inflateSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LINK_LIMITS, readLink, writeLink } from '../../shared/share-link';
import { inOrder, workbookOf } from '../../shared/write-workbook';
import { REFUSAL_CODES } from '../../src/core/rows/refusals';
import { FUZZ_SEED, FUZZ_TRIES } from '../fuzz';
import { SEED } from '../seed';
import { recordFault } from '../setup/fault-record';
import { paperRow, photoRow, recipeRow, supplyRow } from '../storage/sample-rows';
import { anyRecipe } from './any-workbook';

const file = (recipe = recipeRow('a')) => workbookOf('recipe', { recipes: [recipe] });
const fragmentOf = (given = file()) => {
  const link = writeLink(given);
  if (!link.ok) throw new Error(`${link.letters} letters`);
  return link.fragment;
};
const codesOf = (fragment: string) => {
  const reading = readLink(fragment);
  return reading.ok ? [] : reading.refusals.map(({ code }) => code);
};
const packed = (text: string) => `v1.${deflateRawSync(text).toString('base64url')}`;

describe('a recipe in a link', () => {
  // Node's own zlib and base64url stand beside ours: RFC 1951 and RFC 4648.
  test('is what another program unpacks, and what another program packed is read', () => {
    const bytes = Buffer.from(fragmentOf().slice(3), 'base64url');
    expect(JSON.parse(inflateSync(bytes).toString())).toEqual(file());
    // A link of the first kind, from before there were checksums.
    expect(readLink(packed(JSON.stringify(file())))).toEqual({ ok: true, file: file() });
  });

  test('comes back as it was: 1,000 recipes', () => {
    let links = 0;
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        const given = inOrder(workbookOf('recipe', { recipes: [{ ...recipe, notes: '' }] }));
        const link = writeLink(given);
        if (!link.ok) {
          expect(link.letters).toBeGreaterThan(LINK_LIMITS.letters);
          return;
        }
        links++;
        expect(link.fragment).toMatch(/^v2\.[A-Za-z0-9_-]+$/);
        expect(readLink(link.fragment)).toEqual({ ok: true, file: given });
      }),
      { seed: SEED, numRuns: 1000 },
    );
    expect(links).toBeGreaterThan(500);
  });

  test('leaves notes, prices and stock at home, and asks for one recipe', (context) => {
    const own = {
      recipes: [recipeRow('a', { notes: 'Nan’s alarm code', paperId: 'p' })],
      papers: [paperRow('p')],
      supplies: [supplyRow('s', { offer: { buy: 2, free: 1 } })],
    };
    const told = inflateSync(
      Buffer.from(fragmentOf(workbookOf('recipe', own)).slice(3), 'base64url'),
    ).toString();
    const leaks = ['alarm', '799', '499', '"onHandSheets":4', '"onHandRolls":1', 'offer'].filter((word) =>
      told.includes(word),
    );
    recordFault(context, {
      fault: 'a link that carries notes, prices or stock',
      tries: 6,
      lost: leaks.length,
      goal: 0,
    });
    expect(readLink(fragmentOf(workbookOf('recipe', own)))).toMatchObject({ ok: true });
    expect(
      codesOf(fragmentOf(workbookOf('everything', { recipes: [recipeRow('a'), recipeRow('b')] }))),
    ).toEqual(['too-many']);
  });

  test('takes notes along where they are ticked, and prices; never stock', () => {
    const own = workbookOf('recipe', {
      recipes: [recipeRow('a', { notes: 'Nan’s alarm code', paperId: 'p' })],
      papers: [paperRow('p')],
      supplies: [supplyRow('s', { offer: { buy: 2, free: 1 } })],
    });
    const sent = (too: Parameters<typeof writeLink>[1]) => {
      const link = writeLink(own, too);
      const reading = readLink(link.ok ? link.fragment : '');
      if (!reading.ok) throw new Error('not read');
      const [recipe] = reading.file.recipes;
      const [paper] = reading.file.papers;
      return [recipe?.notes, paper?.packs.length, paper?.onHandSheets, reading.file.supplies];
    };
    expect(sent({})).toMatchObject(['', 0, 0, [{ priceMinor: 0, onHandRolls: 0 }]]);
    expect(sent({ notes: true })).toMatchObject(['Nan’s alarm code', 0, 0, [{ priceMinor: 0 }]]);
    expect(sent({ prices: true })).toMatchObject([
      '',
      own.papers[0]?.packs.length,
      0,
      [{ priceMinor: 499, onHandRolls: 0, offer: { buy: 2, free: 1 } }],
    ]);
  });

  test('leaves photos at home, and says when it is too long', () => {
    const withPhoto = { ...file(), photos: [photoRow('p')] };
    expect(fragmentOf(withPhoto)).toBe(fragmentOf());
    // Digits of a shift register, which no packer makes much smaller.
    let state = SEED;
    const name = () => {
      state = Math.imul(state ^ (state >>> 13), 2_654_435_761) >>> 0;
      return state.toString(36);
    };
    const many = workbookOf('everything', {
      recipes: Array.from({ length: 1000 }, (_, at) => recipeRow(`r${at}`, { name: `${name()}${name()}` })),
    });
    expect(writeLink(many).ok).toBe(false);
  });

  test.each([
    ['', 'not-a-workbook'],
    ['v3.abc', 'not-a-workbook'],
    ['v1.', 'damaged'],
    ['v1.a+b/', 'damaged'],
    ['v2.abc', 'damaged'],
    [`v1.${'A'.repeat(LINK_LIMITS.letters)}`, 'too-large'],
    [packed('x'.repeat(LINK_LIMITS.unpackedBytes + 1)), 'too-large'],
    [packed('{}'), 'not-a-workbook'],
    [packed('{"format":"crease-and-count","schema":99}'), 'newer-schema'],
  ])('is refused by its own gates and by those of a file: %#', (fragment, code) => {
    expect(codesOf(fragment)).toContain(code);
    const reading = readLink(fragment);
    expect(!reading.ok && reading.original).toBe(fragment);
  });

  test(`changed, cut and mixed, is read as it says or refused for a reason: ${FUZZ_TRIES} of them`, {
    timeout: 60_000 + FUZZ_TRIES * 20,
  }, ({ task }) => {
    const whole = fc.sample(anyRecipe, { seed: SEED, numRuns: 40 }).flatMap((recipe) => {
      const link = writeLink(file(recipe));
      return link.ok ? [link.fragment] : [];
    });
    let state = FUZZ_SEED;
    const roll = (below: number) => {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
      return Math.floor((state / 2 ** 32) * below);
    };
    const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_%=.# ';
    const sent = new Set(whole);
    let lost = 0;
    let changed = 0;
    let read = 0;
    for (let number = 0; number < FUZZ_TRIES; number++) {
      const from = whole[roll(whole.length)] ?? '';
      const other = whole[roll(whole.length)] ?? '';
      const at = roll(from.length);
      const link = [
        from,
        from.slice(0, at),
        from.slice(0, at) + (letters[roll(letters.length)] ?? '') + from.slice(at + 1),
        from.slice(0, at) + other.slice(roll(other.length)),
        from.slice(0, at) + from.slice(at + roll(9)),
      ][roll(5)];
      const began = performance.now();
      const reading = readLink(link ?? '');
      if (performance.now() - began > 1000) lost++;
      if (reading.ok) {
        read++;
        const again = writeLink(reading.file);
        // Equal by value: a forged link may name its sizes in another order.
        if (!again.ok || !isDeepStrictEqual(readLink(again.fragment), reading)) lost++;
        // Read without a word as something that nobody sent.
        else if (!sent.has(again.fragment)) changed++;
      } else if (
        reading.refusals.length === 0 ||
        reading.refusals.some(({ code }) => !REFUSAL_CODES.includes(code))
      )
        lost++;
    }
    expect(read).toBeGreaterThan(FUZZ_TRIES / 10);
    expect(read).toBeLessThan(FUZZ_TRIES / 2);
    recordFault(
      { task },
      { fault: 'a damaged or forged link', tries: FUZZ_TRIES, lost: lost + changed, goal: 0 },
    );
  });
});
