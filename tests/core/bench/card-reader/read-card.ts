import type { CardStep } from '../../../../src/core/bench/card-step';
import { flipped, turned } from '../../../../src/core/bench/equal/card-lie';
import type { BenchOp } from '../../../../src/core/bench/types';
import type { CardKey, HeardSoFar } from './heard';
import { readSentence } from './read-sentence';
import { readTemplate } from './read-template';

export type ReadCard =
  | { readonly ok: true; readonly ops: readonly BenchOp[] }
  | { readonly ok: false; readonly sentence: string };

/** The program that a card's printed words say; tips are left aside. Refuses at the first sentence that says nothing it knows. */
export function readCard(
  steps: readonly Pick<CardStep, 'headline' | 'details' | 'template'>[],
  key: CardKey,
): ReadCard {
  const ops: BenchOp[] = [];
  let heard: HeardSoFar = {
    key,
    blank: null,
    lie: { quarters: 0, mirrored: key.fence === 'right' },
    templates: new Map(),
    before: [],
    turned: null,
    it: [],
    stuck: new Map(),
  };
  for (const { headline, details, template } of steps) {
    const from = ops.length;
    heard = { ...heard, stuck: new Map() };
    for (const row of template) {
      const line = readTemplate(row);
      if (!line) return { ok: false, sentence: row };
      heard = { ...heard, templates: new Map([...heard.templates, line]) };
    }
    for (const sentence of [...sentencesOf(headline), ...details]) {
      const said = readSentence(sentence, heard);
      if (!said) return { ok: false, sentence };
      ops.push(...said);
      heard = said.reduce(hear, said.length > 0 ? { ...heard, it: [] } : heard);
    }
    heard = { ...heard, before: ops.slice(from) };
  }
  return { ok: true, ops };
}

const sentencesOf = (headline: string): readonly string[] => headline.split(/(?<=\.) (?=[A-Z])/);

/** How the card lies after an act. */
function hear(heard: HeardSoFar, op: BenchOp): HeardSoFar {
  switch (op.op) {
    case 'blank':
      return { ...heard, blank: op };
    case 'turn':
      return { ...heard, lie: turned(heard.lie, op.quarters), turned: op.quarters };
    case 'flip':
      return { ...heard, lie: flipped(heard.lie) };
    case 'stick':
      return {
        ...heard,
        it: [...heard.it, op.panel],
        stuck: new Map([...heard.stuck, [op.panel, op.face]]),
      };
    case 'glue':
      return { ...heard, it: [...heard.it, op.panel] };
    case 'close':
      return { ...heard, it: op.panels };
    default:
      return heard;
  }
}
