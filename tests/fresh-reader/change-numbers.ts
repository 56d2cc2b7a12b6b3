import type { PrintedStep } from './read-card';

/** A card with one number changed, and the sentence it stands in. */
export interface Changed {
  readonly steps: readonly PrintedStep[];
  readonly sentence: string;
}

/** Folding and pressing name panels, some with a number; those are no lengths. */
const IS_ABOUT_PANELS = /^(?:Fold|Tuck|Press|Bring|Open|Do the same|Dab)/;
const NUMBER = /\d+ \d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?/g;

/** Every length, count and size of a card, one after the other, another by a little. */
export function* changeNumbers(steps: readonly PrintedStep[]): Generator<Changed> {
  for (const [at, step] of steps.entries()) {
    const withStep = (changed: Partial<PrintedStep>) =>
      steps.map((other, i) => (i === at ? { ...step, ...changed } : other));
    const sentences = step.headline.split(/(?<=\.) (?=[A-Z])/);
    for (const [i, sentence] of sentences.entries())
      if (!IS_ABOUT_PANELS.test(sentence))
        for (const changed of changesOf(sentence))
          yield { steps: withStep({ headline: sentences.with(i, changed).join(' ') }), sentence };
    for (const [i, row] of step.details.entries())
      for (const changed of changesOf(row))
        yield { steps: withStep({ details: step.details.with(i, changed) }), sentence: row };
  }
}

function* changesOf(sentence: string): Generator<string> {
  for (const { 0: number, index } of sentence.matchAll(NUMBER))
    yield `${sentence.slice(0, index)}${another(number)}${sentence.slice(index + number.length)}`;
}

/** `3 1/2` and `1/2` a part of their fraction more, `3` one more, `74.306` a millimeter and a bit. */
function another(number: string): string {
  const [, whole, over, under] = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(number) ?? [];
  if (over === undefined)
    return number.includes('.') ? (Number(number) + 1.3).toFixed(3) : `${Number(number) + 1}`;
  const parts = 2 * Number(over) + (Number(over) + 1 < Number(under) ? 1 : -1);
  return `${whole === undefined ? '' : `${whole} `}${parts}/${2 * Number(under)}`;
}
