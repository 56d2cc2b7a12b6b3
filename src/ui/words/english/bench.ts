import { plural } from './plural';

const PARTS: Readonly<Record<string, readonly [one: string, many: string]>> = {
  2: ['a half', 'halves'],
  4: ['a quarter', 'quarters'],
  8: ['an eighth', 'eighths'],
  16: ['a sixteenth', 'sixteenths'],
  32: ['a thirty-second', 'thirty-seconds'],
  64: ['a sixty-fourth', 'sixty-fourths'],
};

const UNITS: Readonly<Record<string, readonly [one: string, many: string]>> = {
  in: ['inch', 'inches'],
  mm: ['millimeter', 'millimeters'],
};

/** A length as the step card prints it: a fraction with or without a whole number before it, or a plain number; and its unit. */
const LENGTH = /\b(?:(?:(\d+) )?(\d+)\/(2|4|8|16|32|64)|(\d+(?:\.\d+)?))(?: (in|mm))?\b/g;

/** `4½` and `2¹⁵⁄₁₆` as `4 1/2` and `2 15/16`. */
const plainFractions = (text: string): string =>
  text
    .replace(/(\d)(?=[¼½¾⅐-⅞⁰¹²³⁴-⁹])/g, '$1 ')
    .normalize('NFKC')
    .replaceAll('⁄', '/');

/** A sentence of the step card as a voice should say it: `3 1/2 in` is `3 and a half inches`, so that no `in` is heard as a word. */
export const sayAloud = (text: string): string =>
  plainFractions(text).replace(
    LENGTH,
    (_, whole?: string, count?: string, of?: string, plain?: string, unit?: string) => {
      const [one = '', many = ''] = UNITS[unit ?? ''] ?? [];
      if (plain !== undefined) return `${plain} ${plain === '1' ? one : many}`.trim();
      const [part, parts] = PARTS[of ?? ''] ?? [];
      const fraction = count === '1' ? part : `${count} ${parts}`;
      if (whole !== undefined) return `${whole} and ${fraction} ${many}`.trim();
      return unit === undefined ? `${fraction}` : `${fraction} of ${unit === 'in' ? 'an' : 'a'} ${one}`;
    },
  );

export const benchMessages = {
  noRecipe: 'No box to make yet',
  toRecipe: 'Add one on the Count page',
  noCard: 'No steps for this box yet',
  mendFirstWhy: 'These steps would make a box that doesn’t close. See Size for what to fix.',
  toBox: 'Open the Size page',
  piece: 'Piece',
  way: 'Show steps',
  oneByOne: 'One by one',
  asList: 'As a list',
  back: 'Back',
  next: 'Next',
  again: 'Start over',
  tip: 'Tip:',
  caution: 'Take care:',
  template: 'Template points',
  printCard: 'Print the step card',
  printRoomy: 'Print it large, with big pictures',
  readAloud: 'Read aloud',
  noVoice: 'This device has no voice of its own, so it can’t read the steps aloud.',
  aloud: sayAloud,
  mendFirst: (count: number) => `Fix ${plural(count, 'problem')} first`,
  making: (count: number, recipe: string) => `Make ${count} of ${recipe}.`,
  stepOf: (step: number, of: number) => `Step ${step} of ${of}`,
  kinds: {
    blank: 'cut to size',
    score: 'score',
    slit: 'slit',
    cut: 'cut away',
    fold: 'fold',
    glue: 'glue',
    close: 'close',
  },
};
