import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { layNet, nameValues } from '../../../src/core/net';
import { legalBoxes, notABox, proveStyle, sayProof } from '../../../src/core/proof';
import { readStyle } from '../../../src/core/style-file/read-style';
import type { StyleRefusal } from '../../../src/core/style-file/style-refusal';
import { writeStyle } from '../../../src/core/style-file/write-style';
import { type BoxStyle, piecesOf, STYLES } from '../../../src/core/styles';
import { tray } from '../../../src/core/styles/boxes/tray';
import { declarationOf } from '../../../src/core/styles/language/define';
import { printLength, rulerBeside } from '../../../src/core/units';
import { sayReason } from '../../../src/core/units/reason';
import { swayFrom } from '../../../src/core/yield/stock/sway';
import { SEED } from '../../seed';

/** Styles that no file can say, each with the reason. It is empty; a style that joins it needs a reason that holds. */
const WITHOUT_FILE: Readonly<Record<string, string>> = {};

const inWords = (refusal: StyleRefusal): string =>
  sayReason(refusal, {
    length: (length) => printLength(length, rulerBeside('in')).text,
    money: String,
  });

function written(style: BoxStyle): string {
  const writing = writeStyle(style);
  if (!writing.ok) throw new Error(`${style.id} has no file: ${writing.onlyCode.join(', ')}`);
  return writing.text;
}

function readBack(text: string): BoxStyle {
  const reading = readStyle(text);
  if (!reading.ok) throw new Error(reading.refusals.map(inWords).join(' '));
  return reading.style;
}

/** A file's style as JSON gives it, for changing one thing in it. */
type Edited = ReturnType<typeof JSON.parse>;

/** Angles agree to a billionth of a degree, and so do rooms; everything else to the tick. */
const toNine = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (_, part: unknown) =>
      typeof part === 'number' && !Number.isInteger(part) ? Number(part.toPrecision(9)) : part,
    ),
  );

/** The tray's file with one thing changed in it, read again. */
function refusedWith(change: (style: Edited) => void): readonly StyleRefusal[] {
  const file = JSON.parse(written(tray)) as { style: Edited };
  change(file.style);
  const reading = readStyle(JSON.stringify(file));
  return reading.ok ? notABox(reading.style) : reading.refusals;
}

describe('a style as a file', () => {
  test('every style has one, but for those listed with the reason', () => {
    const without = STYLES.flatMap((style) => {
      const writing = writeStyle(style);
      return writing.ok ? [] : [[style.id, writing.onlyCode] as const];
    });
    process.stdout.write(`style files: ${STYLES.length - without.length} of ${STYLES.length} styles\n`);
    expect(without.map(([id]) => id)).toEqual(Object.keys(WITHOUT_FILE));
  });

  test('what is given as code without a formula is named, and no file is written', () => {
    const [[id, whole] = expect.fail()] = Object.entries(piecesOf(tray, {}));
    const { roomFormula: _, ...piece } = whole;
    const writing = writeStyle({ ...declarationOf(tray), pieces: { [id]: piece } });
    expect(writing).toEqual({ ok: false, onlyCode: ['room of the tray'] });
  });

  test('only a file that needs it is of the second schema: readers of the first still read the others', () => {
    const schemas = STYLES.map((style) => (JSON.parse(written(style)) as { schema: number }).schema);
    // 35 styles on the day that the second schema came, 25 of them with a file of the first.
    expect(schemas.filter((schema) => schema === 1).length).toBeGreaterThanOrEqual(25);
    expect((JSON.parse(written(tray)) as { schema: number }).schema).toBe(1);
  });

  test.each(STYLES.filter((style) => writeStyle(style).ok).map((style) => [style.id, style] as const))(
    '%s comes back as the same box: options, limits, sizes and nets',
    (_, style) => {
      const back = readBack(written(style));
      expect({ ...back.options }).toEqual({ ...style.options });
      expect(back.constraints).toEqual(style.constraints);
      expect(Object.keys(back.symbols)).toEqual(Object.keys(style.symbols));
      for (const box of legalBoxes(style, 8, swayFrom(SEED))) {
        const [one, other] = [layNet(style, box), layNet(back, box)];
        expect(other.values).toEqual(one.values);
        expect(other.inside).toEqual(one.inside);
        expect(toNine(other.pieces)).toEqual(toNine(one.pieces));
      }
    },
  );

  test('what is read passes the published proof, like the style it was written from', () => {
    expect(sayProof(proveStyle(readBack(written(tray)), { boxes: 10 }))).toEqual([
      'tray: all is well at 10 boxes.',
    ]);
  });

  test('the example of the room’s README is read, and is sound', () => {
    const readme = readFileSync('src/core/style-file/README.md', 'utf8');
    const style = readBack(/```json\n(.*?)```/s.exec(readme)?.[1] ?? '');
    expect(notABox(style)).toEqual([]);
    expect(sayProof(proveStyle(style, { boxes: 10 }))).toEqual(['place-card: all is well at 10 boxes.']);
  });

  test('every formula beside a function gives the same number', () => {
    for (const style of STYLES.filter((each) => writeStyle(each).ok)) {
      const back = readBack(written(style));
      for (const box of legalBoxes(style, 4, swayFrom(SEED + 1))) {
        const { mm } = nameValues(style, box);
        for (const [id, piece] of Object.entries(piecesOf(style, box.options)))
          expect([style.id, piecesOf(back, box.options)[id]?.roomMm3(mm)]).toEqual([
            style.id,
            expect.closeTo(piece.roomMm3(mm), 4),
          ]);
      }
    }
  });
});

test('a file of another kind is named whole, and one without a format has none', () => {
  const said = (text: string) => {
    const reading = readStyle(text);
    return reading.ok ? [] : reading.refusals.map(inWords);
  };
  expect(said('# A readme')).toEqual(['This file has "# A readme". It needs a box style saved as JSON.']);
  expect(said('{"name": "package"}')).toEqual([
    'In format the file has nothing. It needs crease-and-count-style.',
  ]);
});

describe('what is no style is refused, with value, reason and remedy', () => {
  test.each([
    ['not-json', '{"format": '],
    ['not-a-style', '[]'],
    ['not-a-style', '{"format": "another", "schema": 1, "style": {}}'],
    ['newer-schema', '{"format": "crease-and-count-style", "schema": 4, "style": {}}'],
    ['missing-field', '{"format": "crease-and-count-style", "schema": 1}'],
    ['repeated-key', '{"format": "crease-and-count-style", "schema": 1, "schema": 1, "style": {}}'],
    ['too-deep', '['.repeat(40)],
    ['too-large', `"${'a'.repeat(200_001)}"`],
    ['too-many', `[${'1,'.repeat(300)}1]`],
  ])('%s', (code, text) => {
    const reading = readStyle(text);
    expect(reading.ok ? [] : reading.refusals.map((each) => each.code)).toEqual([code]);
  });

  test('a panel joined to nothing, or to one after it', () => {
    const [loose] = refusedWith(({ pieces }) => delete pieces.tray.panels.front.on);
    expect(loose).toMatchObject({ code: 'panel-hangs-on-nothing', path: 'pieces.tray.panels.front' });
    const [later] = refusedWith(({ pieces }) => {
      pieces.tray.panels.left.on = 'frontLeftTab.left';
    });
    expect(later && inWords(later)).toBe(
      'The panel left is joined to frontLeftTab.left, and no panel before it has that name.',
    );
    const [ring] = refusedWith(({ pieces }) => {
      pieces.tray.panels.base.on = 'left.left';
    });
    expect(ring?.code).toBe('first-panel-hangs');
  });

  test('panels that lie on one another in the flat, with both names and how far', () => {
    // The left wall, 1 in high, is moved onto the front edge, where the front wall is: they share 1 × 4 in.
    const [overlap] = refusedWith(({ pieces }) => {
      pieces.tray.panels.left = { role: 'wall', size: ['width', 'height'], on: 'base.down', fold: 90 };
      pieces.tray.seams = [];
    });
    expect(overlap?.code).toBe('panels-overlap-flat');
    expect(overlap && inWords(overlap)).toBe('The left and the front overlap by 1 in on the flat net.');
  });

  test('a length that can be nothing, with the panel, its form, the number and the sizes that show it', () => {
    const [nothing] = refusedWith(({ pieces }) => {
      pieces.tray.panels.left.size = ['height - 1/2 in', 'depth'];
    });
    expect(nothing?.code).toBe('length-of-nothing');
    // 3/8 in is the least height: 3/8 - 1/2 = -1/8 in.
    expect(nothing && inWords(nothing)).toMatch(
      /^The left is height - 1\/2 in long, which is -1\/8 in at .*height 3\/8 in/,
    );
  });

  test('a name nobody declared, and a form that is none', () => {
    const [unknown] = refusedWith(({ pieces }) => {
      pieces.tray.panels.left.size = ['hieght', 'depth'];
    });
    expect(unknown && inWords(unknown)).toContain("'hieght' asks for hieght");
    const [bare] = refusedWith(({ symbols }) => {
      symbols.width.max = '12';
    });
    expect(bare && inWords(bare)).toContain('a bare number needs a unit');
  });

  test('names that every object has are no names', () => {
    const codes = refusedWith((style) => {
      style['lets'] = { constructor: '1 in' };
    }).map(({ code }) => code);
    expect(codes.length).toBeGreaterThan(0);
  });

  test('limits that let no size in', () => {
    const [none] = refusedWith(({ constraints }) => {
      constraints[0].atMost = '0 in - 1 in';
    });
    expect(none?.code).toBe('no-legal-size');
  });

  test('options without their pieces, and more ways than can be checked', () => {
    const choices = (count: number) =>
      Array.from({ length: count }, (_, at) => ({ id: `c${at}`, label: `Choice ${at}` }));
    const option = (count: number) => ({ label: 'One', help: 'One of them.', choices: choices(count) });
    const missing = refusedWith((style) => {
      style['options'] = { one: option(2) };
      style['ways'] = [{ given: [{ one: 'c0' }], pieces: style['pieces'] }];
      delete style['pieces'];
    });
    expect(missing.map(inWords)).toEqual(['No way has the pieces for one c1.']);
    const many = refusedWith((style) => {
      style['options'] = { one: option(9), two: option(9) };
    });
    expect(many.map(({ code }) => code)).toEqual(['too-many-ways']);
  });
});
