import { Unreadable } from './lengths';

/** A panel's name as a stranger may shorten it: `front flap` for the front bottom flap where no other has both words. */
const isCalled = (name: string, words: readonly string[]): boolean =>
  words.every((word) => name.split(' ').includes(word));

const COUNTS = ['two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const IRREGULAR: Readonly<Record<string, string>> = { feet: 'foot' };

const singular = (word: string): string =>
  IRREGULAR[word] ?? (/(xes|ches|sses)$/.test(word) ? word.slice(0, -2) : word.replace(/s$/, ''));

/** The panels a phrase names: `the tab`, `both corners`, `the front and back walls`, `walls 2 to 6 and the tab`. */
export function readPanelPhrase(phrase: string, names: readonly string[]): string[] {
  const parts = phrase.split(/(?:, and |, | and )(?=the |all |both |[a-z ]+s \d+ to \d|(?:[a-z]+ )+\d+\b)/);
  return [...new Set(parts.flatMap((part) => readPart(part, names)))];
}

function readPart(part: string, names: readonly string[]): string[] {
  const [, noun, from, to] = /^(?:the )?([a-z ]+s) (\d+) to (\d+)$/.exec(part) ?? [];
  if (noun !== undefined) {
    const words = wordsOf(noun);
    const numbers = Array.from({ length: Number(to) - Number(from) + 1 }, (_, i) => `${Number(from) + i}`);
    return numbers.map((number) => only([...words, number], names));
  }
  const [, count, rest = ''] =
    /^(?:the |all ([a-z]+|\d+) )?(.+)$/.exec(part.replace('both ', 'all two ')) ?? [];
  const items = rest.split(/, | and /);
  const last = items.pop()?.split(' ') ?? [];
  if (items.length > 0) {
    // `the right back and left back inner pleats` are inner pleats both: as much as may be is shared.
    for (let tail = last.length - 1; tail > 0; tail--) {
      const shared = last.slice(-tail).map(singular);
      const all = [...items.map((item) => item.split(' ')), last.slice(0, -tail)];
      const found = all.map((own) => exactly([...own, ...shared], names));
      if (found.every((name) => name !== null)) return found;
      const loose = all.map((own) => loosely([...own, ...shared], names));
      if (loose.every((those) => those.length === 1)) return loose.flat();
    }
    throw new Unreadable(part);
  }
  const isPlural = singular(last.at(-1) ?? '') !== last.at(-1);
  if (!isPlural) return [only(last, names)];
  const found = loosely(wordsOf(last.join(' ')), names);
  if (found.length < 2) throw new Unreadable(part);
  if (count !== undefined && (Number(count) || COUNTS.indexOf(count) + 2) !== found.length)
    throw new Unreadable(`${part}: there are ${found.length}`);
  return found;
}

/** Words of a plural, its last one singular. */
const wordsOf = (plural: string): string[] => {
  const words = plural.split(' ');
  return [...words.slice(0, -1), singular(words.at(-1) ?? '')];
};

const exactly = (words: readonly string[], names: readonly string[]): string | null =>
  names.find((name) => name === words.join(' ')) ?? null;

const loosely = (words: readonly string[], names: readonly string[]): string[] =>
  names.filter((name) => isCalled(name, words));

function only(words: readonly string[], names: readonly string[]): string {
  const exact = exactly(words, names);
  const [found, ...others] = exact === null ? loosely(words, names) : [exact];
  if (found === undefined || others.length > 0) throw new Unreadable(`which is the ${words.join(' ')}?`);
  return found;
}
