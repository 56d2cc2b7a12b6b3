/** A word for another that a slip of the pen might put there. */
const OTHERS: Readonly<Record<string, string>> = {
  left: 'right',
  right: 'left',
  front: 'back',
  back: 'front',
  top: 'bottom',
  bottom: 'top',
  near: 'far',
  far: 'near',
  inside: 'outside',
  outside: 'inside',
  in: 'out',
  up: 'out',
  over: 'back',
  out: 'in',
  Tuck: 'Fold',
  tab: 'flap',
  tabs: 'flaps',
  walls: 'flaps',
  four: 'three',
  all: 'both',
  its: 'no',
};

/** Sentences with one word changed, one left out, or two steps in the other order; and what was done to them. */
export function* changeWords(
  headlines: readonly string[],
): Generator<{ readonly headlines: string[]; readonly how: string }> {
  for (const [at, headline] of headlines.entries()) {
    for (const { 0: word, index } of headline.matchAll(/[A-Za-z]+/g)) {
      const other = OTHERS[word];
      if (other === undefined || /^(?:Fold every|Turn )/.test(headline)) continue;
      // `5 11/16 in` is a length.
      if (word === 'in' && /\d $/.test(headline.slice(0, index))) continue;
      const changed = headline.slice(0, index) + other + headline.slice(index + word.length);
      yield { headlines: headlines.with(at, changed), how: `${word} to ${other}: ${changed}` };
    }
    for (const [i, sentence] of headline.split(/(?<=\.) (?=[A-Z])/).entries()) {
      if (/^(?:Fold every|Turn )/.test(sentence)) continue;
      const left = headline
        .split(/(?<=\.) (?=[A-Z])/)
        .toSpliced(i, 1)
        .join(' ');
      yield { headlines: headlines.with(at, left).filter((one) => one !== ''), how: `left out: ${sentence}` };
    }
    const next = headlines[at + 1];
    if (next !== undefined && !/^(?:Fold every|Turn )/.test(headline))
      yield { headlines: headlines.with(at, next).with(at + 1, headline), how: `${next} before ${headline}` };
  }
}
