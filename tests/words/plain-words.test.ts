import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { catalogueTexts, docComments, markdownText, notPlain, readingOf } from './plain-words';

const read = (path: string) => readFileSync(path, 'utf8');
const MESSAGES = 'src/ui/words/english';
/** British English has a spelling and some words of its own. */
const catalogues = readdirSync(MESSAGES).filter((name) => name.endsWith('.ts') && name !== 'british.ts');
const PROSE = ['README.md', 'DEVELOPERS.md'];

describe('plain words', () => {
  test.each(catalogues)('%s has none that a US crafter would not say', (name) => {
    const texts = catalogueTexts(read(join(MESSAGES, name)));
    expect(texts.flatMap((text) => notPlain(text, true).map((fault) => `${fault} in “${text}”`))).toEqual([]);
  });

  test('neither has what is written for those who work on it', () => {
    const commented = ['src', 'shared'].flatMap((folder) =>
      readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
        .map((entry) => join(entry.parentPath, entry.name)),
    );
    const found = [
      ...PROSE.flatMap((path) =>
        markdownText(read(path)).flatMap((text) => notPlain(text, false).map((fault) => `${path}: ${fault}`)),
      ),
      ...commented.flatMap((path) =>
        docComments(read(path)).flatMap((text) => notPlain(text, false).map((fault) => `${path}: ${fault}`)),
      ),
    ];
    expect(commented.length).toBeGreaterThan(300);
    expect(found).toEqual([]);
  });

  test.each([
    ['Mend the box first', true],
    ['What it comes to', true],
    ['Cut 44 sheets so', true],
    ['a card for the bench', true],
    ['put away by her', false],
    ['on a telephone', false],
  ])('“%s” is seen', (text, page) => {
    expect(notPlain(text, page)).not.toEqual([]);
  });

  test.each([
    ['a step card and a gift card on cardstock', true],
    ['What goes in?', true],
    ['something', true],
    ['the recipe of a box', false],
  ])('“%s” is not', (text, page) => {
    expect(notPlain(text, page)).toEqual([]);
  });
});

describe('sentences are short', () => {
  /** Words a sentence, of our choosing: a page is read at a glance, a paragraph of README at leisure. */
  const MOST = { page: 14, prose: 16, longest: 25 };

  test('on every page: 14 words on average, none of more than 25', () => {
    const table = catalogues.map((name) => ({
      page: name.replace('.ts', ''),
      ...readingOf(catalogueTexts(read(join(MESSAGES, name)))),
    }));
    const rows = table.map(
      ({ page, sentences, average, longest }) =>
        `${page.padEnd(16)} ${`${sentences}`.padStart(4)} ${average.toFixed(1).padStart(5)} ${`${longest}`.padStart(3)}`,
    );
    process.stdout.write(`sentences, words a sentence, longest\n${rows.join('\n')}\n`);
    expect(table.filter(({ average }) => average > MOST.page)).toEqual([]);
    expect(
      table.filter(({ longest }) => longest > MOST.longest).map(({ longestSays }) => longestSays),
    ).toEqual([]);
  });

  test.each(PROSE)('in %s: 16 words on average', (path) => {
    const { average, sentences } = readingOf(markdownText(read(path)));
    process.stdout.write(`${path}: ${sentences} sentences, ${average.toFixed(1)} words each\n`);
    expect(sentences).toBeGreaterThan(50);
    expect(average).toBeLessThanOrEqual(MOST.prose);
  });

  test('are counted at full stops, not at points in numbers', () => {
    expect(readingOf(['It is 3.5 in wide. Cut it, then fold it!', 'A label'])).toMatchObject({
      sentences: 2,
      average: 5,
      longest: 5,
    });
  });
});
