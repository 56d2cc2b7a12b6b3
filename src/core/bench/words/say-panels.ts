import { sayList } from './say-length';

/** Panels by their labels, as many as a piece has. */
export type Labels = ReadonlyMap<string, string>;

/**
 * Panels in the fewest words that mean these and no others: `the tab`, `all four tabs`, `the top dust flaps`,
 * `the front and back walls`, `walls 2 to 6`.
 * A plural names every panel of the piece whose label has all of its words.
 */
export function sayPanels(panels: readonly string[], labels: Labels): string {
  const named = panels.map((panel) => labels.get(panel) ?? panel);
  const [only] = named;
  if (named.length === 1 && only !== undefined) return withArticle(only);
  const kinds = new Map<string, string[]>();
  for (const label of named) kinds.set(nounOf(label), [...(kinds.get(nounOf(label)) ?? []), label]);
  return sayList([...kinds].map(([noun, those]) => sayKind(those, noun, labels)));
}

const isNumber = (word: string): boolean => /^\d+$/.test(word);

/** The last word that is no number. */
const nounOf = (label: string): string => label.split(' ').findLast((word) => !isNumber(word)) ?? label;

function sayKind(those: readonly string[], noun: string, labels: Labels): string {
  const [first = ''] = those;
  if (those.length === 1) return withArticle(first);
  const shared = first
    .split(' ')
    .filter((word) => !isNumber(word) && those.every((label) => label.split(' ').includes(word)));
  const meant = [...labels.values()].filter((label) => hasAll(label, shared));
  if (meant.length === those.length) {
    const whole = [...labels.values()].filter((label) => nounOf(label) === noun).length === those.length;
    return `${whole ? allOf(those.length) : 'the'} ${plural(shared.join(' '))}`;
  }
  const numbers = those.map((label) => Number(label.split(' ').at(-1)));
  if (numbers.every((number, i) => number === (numbers[0] ?? 0) + i))
    return `${plural(shared.join(' '))} ${numbers[0]} to ${numbers.at(-1)}`;
  if (numbers.some((number) => !Number.isNaN(number))) return sayList(those.map(withArticle));
  const tail = sharedTail(those.map((label) => label.split(' ')));
  const before = those.map((label) => label.split(' ').slice(0, -tail.length).join(' '));
  return before.includes('')
    ? sayList(those.map(withArticle))
    : `the ${sayList(before)} ${plural(tail.join(' '))}`;
}

/** The words that all labels end with. */
function sharedTail(labels: readonly (readonly string[])[]): readonly string[] {
  const [first = []] = labels;
  let length = 0;
  while (
    labels.every(
      (words) => words.at(-1 - length) !== undefined && words.at(-1 - length) === first.at(-1 - length),
    )
  )
    length++;
  return first.slice(first.length - length);
}

/** What has a number needs no article: `wall 2`, but `the tab`. */
const withArticle = (label: string): string => (/\d$/.test(label) ? label : `the ${label}`);

const allOf = (count: number): string => (count === 2 ? 'both' : `all ${COUNTS[count] ?? count}`);

const hasAll = (label: string, words: readonly string[]): boolean =>
  words.every((word) => label.split(' ').includes(word));

const COUNTS: Readonly<Record<number, string>> = {
  3: 'three',
  4: 'four',
  5: 'five',
  6: 'six',
  7: 'seven',
  8: 'eight',
  9: 'nine',
  10: 'ten',
};

const plural = (words: string): string =>
  /\bfoot$/.test(words)
    ? words.replace(/foot$/, 'feet')
    : /(s|x|ch)$/.test(words)
      ? `${words}es`
      : `${words}s`;
