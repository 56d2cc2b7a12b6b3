import type { HandAct } from '../../../shared/catalogue/hand-times';
import type { Ticks } from '../units';
import type { RunStep, RunWork } from './run-sheet';
import type { CardLies } from './run-stages';

/** The stages of a batch by name, as a run sheet and a calendar say them. */
export const STAGE_NAMES: Readonly<Record<HandAct, string>> = {
  cut: 'Cut all',
  score: 'Score all',
  slit: 'Slit and cut away',
  fold: 'Fold and burnish',
  place: 'Decorate flat',
  glue: 'Glue the sides',
  'close-bottom': 'Close the bottoms',
  tuck: 'Close by tucking',
  fill: 'Fill',
  'tie-bow': 'Tie',
  'set-up': 'Get ready',
};

/** A step of the run sheet in words. */
export interface RunWords {
  readonly headline: string;
  readonly details: readonly string[];
}

/** A step as the maker reads it; `length` prints a length in her unit. */
export function sayRunStep({ of, name, work }: RunStep, length: (length: Ticks) => string): RunWords {
  switch (work.do) {
    case 'sheets': {
      const ways = work.layouts === 1 ? 'All are cut alike.' : `They are cut in ${work.layouts} ways.`;
      return {
        headline: `Cut ${of} ${of === 1 ? 'sheet' : 'sheets'} of ${name}.`,
        details: [`${ways} The Sheets page shows every cut.`],
      };
    }
    case 'fence':
      return {
        headline: `Set the fence to ${length(work.at)}. Score ${work.spans.map((span) => saySpan(span, length)).join(', then ')}.`,
        details: [
          `${sayLies(work.lies)} It is ${length(work.size.across)} across, ${length(work.size.up)} up.`,
        ],
      };
    case 'card':
      return sayCard(work);
    case 'place':
      return {
        headline: `${work.name}: ${work.perBox} on each box.`,
        details: work.size ? [`Each is ${length(work.size.across)} × ${length(work.size.up)}.`] : [],
      };
    case 'fill':
      return {
        headline: 'Put in each box:',
        details: work.things.map((thing) => `${thing.perBox} × ${thing.name}`),
      };
    case 'tie':
      return {
        headline: `${work.name}: ${length(work.length)} for each${work.perBox === 1 ? '' : `, ${work.perBox} to a box`}.`,
        details: ['Cut them all first, each from one end of the roll, then tie.'],
      };
  }
}

function sayCard({ steps, lies }: Extract<RunWork, { do: 'card' }>): RunWords {
  const [first, ...others] = steps;
  if (!first) return { headline: '', details: [] };
  if (others.length === 0)
    return { headline: first.headline, details: [...(lies ? [sayLies(lies)] : []), ...first.details] };
  return { headline: 'On each, one after the other:', details: steps.map(({ headline }) => headline) };
}

const saySpan = (
  span: null | { readonly from: Ticks; readonly to: Ticks },
  length: (length: Ticks) => string,
): string => {
  if (span === null) return 'edge to edge';
  return span.from === 0
    ? `from the near edge up to ${length(span.to)}`
    : `from ${length(span.from)} up to ${length(span.to)}`;
};

const TURNS: Readonly<Record<Exclude<CardLies['turned'], 'not'>, string>> = {
  'counter-clockwise': 'a quarter turn counter-clockwise',
  clockwise: 'a quarter turn clockwise',
  'half round': 'half round',
};

/** How to lay the card, said from how it lay when it was cut. */
export function sayLies({ flipped, turned }: CardLies): string {
  if (!flipped && turned === 'not') return 'Lay the card as it was cut.';
  const turn = turned === 'not' ? '' : TURNS[turned];
  if (!flipped) return `Lay the card as it was cut, turned ${turn}.`;
  return `Lay the card as it was cut, flipped over left to right${turn === '' ? '' : `, then turned ${turn}`}.`;
}
