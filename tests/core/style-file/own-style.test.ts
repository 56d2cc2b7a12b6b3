import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readWorkbook } from '../../../shared/read-workbook';
import { readLink, writeLink } from '../../../shared/share-link';
import { netOfRecipe, styleOfRecipe } from '../../../src/core/plan';
import type { Recipe } from '../../../src/core/rows';
import {
  bringOwnStyle,
  bringStylesOf,
  ownStyleId,
  readOwnStyle,
} from '../../../src/core/style-file/own-style';
import { styleById } from '../../../src/core/styles';
import { callDesk } from '../../desk/call-desk';
import { recipeRow } from '../../state/draft-recipe';

const file = readFileSync('tests/fixtures/own-styles/deep-tray.json', 'utf8');
/** The same style under another name, so that each test starts with one that nobody has read. */
const called = (name: string) =>
  JSON.stringify(JSON.parse(file.replace('"Deep tray"', JSON.stringify(name))));

const recipeOf = (ownStyle: string, styleId = ownStyleId(ownStyle)): Recipe => ({
  ...recipeRow({ ownStyle, sizesMm: { width: 127 }, options: {} }),
  styleId,
});

const workbookOf = (recipe: Recipe) =>
  JSON.stringify({
    format: 'crease-and-count',
    schema: 3,
    kind: 'recipe',
    recipes: [recipe],
    events: [],
    papers: [],
    supplies: [],
    tools: [],
    photos: [],
  });

describe('a style of the maker’s own', () => {
  test('is called by its text: the same on every device, another for another text', () => {
    expect(ownStyleId(called('One'))).toMatch(/^own-[0-9a-z]{21}$/);
    expect(ownStyleId(called('One'))).toBe(ownStyleId(called('One')));
    const ids = Array.from({ length: 2000 }, (_, at) => ownStyleId(called(`Tray ${at}`)));
    expect(new Set(ids).size).toBe(2000);
  });

  test('is read of a file whose blank space does not count', () => {
    const one = readOwnStyle(file);
    const other = readOwnStyle(JSON.stringify(JSON.parse(file), null, 4));
    expect(one.ok && other.ok && one.style === other.style).toBe(true);
    expect(one.ok && styleById(one.style.id)?.name).toBe('Deep tray');
  });

  test('of a box is unknown until it is read, and then lays the box', () => {
    const recipe = recipeOf(called('Later'));
    expect(styleOfRecipe(recipe)).toBeUndefined();
    expect(netOfRecipe(recipe)).toBeNull();
    bringStylesOf([recipe]);
    // 5 in of floor as asked and twice 2 in of wall, the file's own height: 9 in, 228.6 mm, at 320 ticks each.
    expect(netOfRecipe(recipe)?.pieces[0]?.blank.across).toBe(228.6 * 320);
  });

  test('under a name that is not its text’s stays unknown, and so does one that is no style', () => {
    const forged = recipeOf(called('Forged'), ownStyleId(called('Another')));
    const broken = recipeOf('{"format": "crease-and-count-style"}');
    bringStylesOf([forged, broken]);
    expect([forged, broken].map(styleOfRecipe)).toEqual([undefined, undefined]);
    expect(bringOwnStyle(broken.ownStyle ?? '')).toBeNull();
  });

  test('goes through a saved file, and to the desk in it', async () => {
    const text = workbookOf(recipeOf(called('Saved')));
    const reading = readWorkbook(text);
    expect(reading.ok && reading.file.recipes[0]?.ownStyle).toBe(called('Saved'));
    const link = reading.ok ? writeLink(reading.file) : { ok: false as const };
    const sent = link.ok ? readLink(link.fragment) : { ok: false as const };
    expect(sent.ok && sent.file.recipes[0]?.ownStyle).toBe(called('Saved'));
    for (const verb of ['net', 'card']) {
      const { codes, printed } = await callDesk([verb, 'mine.json'], { 'mine.json': text });
      expect([verb, ...codes]).toEqual([verb]);
      expect(printed).toContain('"tray"');
    }
  });
});
