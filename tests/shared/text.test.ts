import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cleanLine, cleanNote } from '../../src/core/rows/text';
import { SEED } from '../seed';

describe('text as it is kept', () => {
  test('loses what cannot be seen and could turn words around', () => {
    expect(cleanLine('Snow\u0000 \u202Eyart\u202C')).toBe('Snow yart');
    expect(cleanLine('two\r\nlines\tand a tab')).toBe('two lines and a tab');
    expect(cleanNote('one\r\ntwo\rthree\n\tfour\u0007')).toBe('one\ntwo\nthree\n\tfour');
  });

  test('keeps every script, and the marks that right-to-left writing needs', () => {
    for (const name of ['Fröhliche Schachtel', 'صندوق\u200F', '雪の箱', '👩‍🎨 étui', 'a\u00A0b'])
      expect(cleanLine(name)).toBe(name);
  });

  test('can be written in UTF-8: half a character becomes U+FFFD (Unicode 16, section 3.9)', () => {
    expect(cleanLine('a\uD83Cb')).toBe('a\uFFFDb');
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary' }).map((text) => `${text}\uD800`),
        (text) => {
          const clean = cleanNote(text);
          expect(new TextDecoder().decode(new TextEncoder().encode(clean))).toBe(clean);
          expect(cleanNote(clean)).toBe(clean);
          expect(clean.length).toBeLessThanOrEqual(text.length);
        },
      ),
      { seed: SEED },
    );
  });
});
