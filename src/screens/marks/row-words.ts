import type { EasyRow } from '../../core/fit';
import { costOfRow } from '../../core/fit';
import { styleById } from '../../core/styles';
import type { Ruler, Ticks } from '../../core/units';
import { lengthWords } from '../../ui/fields/measure';
import type { PageWords } from '../../ui/words';
import type { Say } from '../../ui/words/spoken';

/** The sizes a maker chose by, in the style's order: `3½ × 1½ × 3 in`. */
export function sizesWords(styleId: string, row: EasyRow, ruler: Ruler): string {
  const style = styleById(styleId);
  const names = Object.entries(style?.symbols ?? {}).flatMap(([name, { role }]) =>
    role === 'size' ? [name] : [],
  );
  const numbers = names.map((name) =>
    lengthWords(row.sizes[name] ?? (0 as Ticks), ruler).replace(` ${ruler.unit}`, ''),
  );
  return `${numbers.join(' × ')} ${ruler.unit}`;
}

/**
 * What tells rows of the same chosen sizes apart: their working sizes and ways of construction that differ, one text a row; empty where a row
 * stands alone.
 */
export function apartWords(
  styleId: string,
  rows: readonly EasyRow[],
  ruler: Ruler,
  say: Say,
): readonly string[] {
  const style = styleById(styleId);
  const heads = rows.map((row) => sizesWords(styleId, row, ruler));
  return rows.map((row, at) => {
    const alike = rows.filter((_, i) => heads[i] === heads[at]);
    const sizes = Object.entries(style?.symbols ?? {}).flatMap(([name, { label }]) =>
      alike.every(({ sizes }) => sizes[name] === row.sizes[name])
        ? []
        : [`${say(label).toLowerCase()} ${lengthWords(row.sizes[name] ?? (0 as Ticks), ruler)}`],
    );
    const ways = Object.entries(style?.options ?? {}).flatMap(([name, { label, choices }]) => {
      const chosen = choices.find(({ id }) => id === row.options[name]);
      return chosen === undefined || alike.every(({ options }) => options[name] === row.options[name])
        ? []
        : [`${say(label).toLowerCase()}: ${say(chosen.label).toLowerCase()}`];
    });
    return [...sizes, ...ways].join(', ');
  });
}

/** Paper of one box, in words. */
export function paperWords(
  row: EasyRow,
  need: readonly [Ticks, Ticks, Ticks],
  sheet: string,
  words: PageWords['marks'],
): string {
  const { boxesPerSheet, sheetsPerBox } = costOfRow(row, need);
  if (sheetsPerBox === null) return words.fitsNot(sheet);
  return boxesPerSheet === null
    ? words.sheetsEach(sheetsPerBox.toFixed(2).replace(/0$/, ''), sheet)
    : words.perSheet(boxesPerSheet, sheet);
}

/** What a row costs in one line: its hardest mark, its paper, how loose the thing lies, and lines no ruler sets. */
export function costWords(
  row: EasyRow,
  need: readonly [Ticks, Ticks, Ticks],
  sheet: string,
  ruler: Ruler,
  words: PageWords['marks'],
): string {
  const { hardest, loose } = costOfRow(row, need);
  const steps = words.hardest[ruler.unit];
  return [
    steps[Math.min(hardest, steps.length - 1)],
    paperWords(row, need, sheet, words),
    loose > 0 ? words.loose(lengthWords(loose, ruler)) : words.snug,
    ...(row.byTemplate > 0 ? [words.byTemplate(row.byTemplate)] : []),
  ].join(', ');
}
