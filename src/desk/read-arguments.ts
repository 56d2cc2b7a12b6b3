import { suggestName } from './nearest-name';
import type { DeskRefusal, Given, Verb } from './verb';

interface WrittenOption {
  readonly name: string;
  readonly value: string | undefined;
}

/** The words after a verb, sorted as the verb declares them, or everything that is wrong with them. `--name value` and `--name=value` are one. */
export function readArguments(words: readonly string[], verb: Verb): Given | readonly DeskRefusal[] {
  const { plain, options } = sortWords(words);
  const refusals = [...options.flatMap((option) => checkOption(option, verb)), ...checkCount(plain, verb)];
  const one = new Map<string, string>();
  const many = new Map<string, string[]>();
  for (const { name, value = '' } of options)
    if (verb.options[name] === 'many') many.set(name, [...(many.get(name) ?? []), value]);
    else if (one.has(name))
      refusals.push(refuse('given-twice', `--${name}`, 'one value', `--${name} is given twice.`));
    else one.set(name, value);
  if (refusals.length > 0) return refusals;
  return { words: plain, one: Object.fromEntries(one), many: Object.fromEntries(many) };
}

/** An option takes the word behind it as its value, unless that is an option too. */
function sortWords(words: readonly string[]): { plain: string[]; options: WrittenOption[] } {
  const plain: string[] = [];
  const options: WrittenOption[] = [];
  const waiting = [...words];
  for (let word = waiting.shift(); word !== undefined; word = waiting.shift()) {
    const [option, name = '', , inline] = /^--([^=]*)(=(.*))?$/s.exec(word) ?? [];
    if (option === undefined) plain.push(word);
    else if (inline !== undefined || waiting[0]?.startsWith('--')) options.push({ name, value: inline });
    else options.push({ name, value: waiting.shift() });
  }
  return { plain, options };
}

function checkOption({ name, value }: WrittenOption, verb: Verb): DeskRefusal[] {
  const written = `--${name}`;
  const names = Object.keys(verb.options).map((known) => `--${known}`);
  if (!Object.hasOwn(verb.options, name)) {
    const says = `${written} is not an option here. ${suggestName(written, names)}`;
    return [refuse('unknown-option', written, names.join(', '), says)];
  }
  return value === undefined
    ? [refuse('no-value', written, 'a value', `${written} needs a value after it.`)]
    : [];
}

function checkCount(plain: readonly string[], { usage, words }: Verb): DeskRefusal[] {
  const expected = usage || 'nothing more';
  if (plain.length < words.least)
    return [refuse('missing-word', '', expected, `Something is missing. Expected: ${expected}.`)];
  return plain
    .slice(words.most)
    .map((extra) =>
      refuse('extra-word', extra, expected, `“${extra}” is one word too many. Expected: ${expected}.`),
    );
}

const refuse = (code: string, found: string, expected: string, says: string): DeskRefusal => ({
  code,
  path: found,
  found,
  expected,
  says,
});
