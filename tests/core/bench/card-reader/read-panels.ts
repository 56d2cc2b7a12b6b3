import { every, splitList } from './read-length-words';

/** The panels that words mean, by the labels of the piece; null if they mean none. Written apart from what says them. */
export function readPanels(words: string, labels: ReadonlyMap<string, string>): readonly string[] | null {
  const parts = words.split(/(?:, | and )(?=the |all |both |(?:[a-z]+ )+\d)/);
  return every(parts, (part) => readPart(part, labels))?.flat() ?? null;
}

function readPart(part: string, labels: ReadonlyMap<string, string>): readonly string[] | null {
  const [, phrase] = /^(?:the |all \w+ |both |(?=.*\d$))(.+)$/.exec(part) ?? [];
  if (phrase === undefined) return null;
  /** By its name, or by some words of it that no other has: `right flap` for the only bottom flap at the right. */
  const called = (name: string): string | undefined => {
    const found = [...labels].filter(([, label]) => hasWords(label, name.split(' ')));
    return (found.find(([, label]) => label === name) ?? (found.length === 1 ? found[0] : undefined))?.[0];
  };
  const exact = called(phrase);
  if (exact !== undefined) return [exact];
  const [, row = '', from, to] = /^(.+) (\d+) to (\d+)$/.exec(phrase) ?? [];
  if (from !== undefined) {
    const numbers = Array.from({ length: Number(to) - Number(from) + 1 }, (_, i) => Number(from) + i);
    return every(numbers, (number) => called(`${singular(row)} ${number}`) ?? null);
  }
  const names = splitList(phrase);
  const [, last, noun] = /^(?:(.+) )?(\S+)$/.exec(names.at(-1) ?? '') ?? [];
  if (noun === undefined) return null;
  const one = singular(noun);
  if (names.length > 1)
    return readListed(names.slice(0, -1), `${last ?? ''} ${one}`.trim().split(' '), called);
  const wanted = [...(last?.split(' ') ?? []), one];
  const meant = [...labels].filter(([, label]) => hasWords(label, wanted));
  return meant.length > 0 ? meant.map(([panel]) => panel) : null;
}

const hasWords = (label: string, words: readonly string[]): boolean =>
  words.every((word) => label.split(' ').includes(word));

/** `right`, before `left bottom flap`: each is called with the words that the last one ends with. */
function readListed(
  names: readonly string[],
  last: readonly string[],
  called: (name: string) => string | undefined,
): readonly string[] | null {
  for (let from = 1; from < last.length; from++) {
    const tail = last.slice(from).join(' ');
    const panels = every(
      [...names.map((name) => `${name} ${tail}`), last.join(' ')],
      (name) => called(name) ?? null,
    );
    if (panels) return panels;
  }
  return null;
}

const singular = (noun: string): string => (noun === 'feet' ? 'foot' : noun.replace(/(?<=s|x|ch)es$|s$/, ''));
