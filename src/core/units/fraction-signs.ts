const PLAIN = '0123456789';
const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';

// biome-ignore format: a table reads better than a column
const VULGAR: Readonly<Record<string, string>> = {
  '¼': '1/4', '½': '1/2', '¾': '3/4', '⅓': '1/3', '⅔': '2/3', '⅕': '1/5', '⅖': '2/5', '⅗': '3/5', '⅘': '4/5',
  '⅙': '1/6', '⅚': '5/6', '⅐': '1/7', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8', '⅑': '1/9', '⅒': '1/10',
};

const PRECOMPOSED = new RegExp(`[${Object.keys(VULGAR).join('')}]`, 'gu');
const BUILT = new RegExp(`(?:([${RAISED}]+)[⁄∕/]|⅟)([${LOWERED}]+)`, 'gu');

/** The same figures in another alphabet; all ten figures of each lie in the first Unicode plane. */
const inFigures = (digits: string, from: string, to: string): string =>
  digits.replace(/./gu, (digit) => to.charAt(from.indexOf(digit)));

/** Keeps a written-out fraction apart from digits beside it: `3½` is 3 1/2, never 31/2. */
const apart = (fraction: string, at: number, whole: string, length: number): string =>
  `${/\d/.test(whole[at - 1] ?? '') ? ' ' : ''}${fraction}${/\d/.test(whole[at + length] ?? '') ? ' ' : ''}`;

/**
 * Typographic fractions, slashes, hyphens and spaces as plain ones; every other character is left alone and judged later.
 * Never a Unicode compatibility form, which glues `3½` into thirty-one halves.
 */
export function spellPlainly(text: string): string {
  return text
    .replace(PRECOMPOSED, (sign, at: number, whole: string) =>
      apart(VULGAR[sign] ?? sign, at, whole, sign.length),
    )
    .replace(BUILT, (sign: string, over: string | undefined, under: string, at: number, whole: string) =>
      apart(
        `${over === undefined ? 1 : inFigures(over, RAISED, PLAIN)}/${inFigures(under, LOWERED, PLAIN)}`,
        at,
        whole,
        sign.length,
      ),
    )
    .replace(/[⁄∕]/gu, '/')
    .replace(/[‐‑–]/gu, '-')
    .replace(/\s+/gu, ' ')
    .trim();
}

/** A fraction as a printer sets it: precomposed where one exists (`½`), else raised figures, U+2044 and lowered figures (`⁷⁄₁₆`). */
export function setFraction(over: number, under: number): string {
  const plain = `${over}/${under}`;
  const precomposed = Object.keys(VULGAR).find((sign) => VULGAR[sign] === plain);
  if (precomposed) return precomposed;
  return `${inFigures(`${over}`, PLAIN, RAISED)}⁄${inFigures(`${under}`, PLAIN, LOWERED)}`;
}
