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
