import type { HandAct } from '../../rows/hand-times';
import type { Ticks } from '../../units';
import { type Reason, reason, sayReason, type Wording } from '../../units/reason';
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

/** A step as the maker reads it, in their units and language. */
export function sayRunStep({ of, name, work }: RunStep, wording: Wording): RunWords {
  const say = (says: string, facts: Parameters<typeof reason>[1] = {}) =>
    sayReason(reason(says, facts), wording);
  switch (work.do) {
    case 'sheets': {
      const cut = say(of === 1 ? 'Cut {of} sheet of {name}.' : 'Cut {of} sheets of {name}.', {
        of,
        name: { text: name },
      });
      return {
        headline: cut,
        details: [
          work.layouts === 1
            ? say('All are cut alike. Sheets shows every cut.')
            : say('They are cut in {ways} ways. Sheets shows every cut.', { ways: work.layouts }),
        ],
      };
    }
    case 'fence':
      return {
        headline: say('Set the fence to {at}. Score {spans}.', {
          at: { length: work.at },
          spans: work.spans
            .slice(1)
            .reduce<Reason>(
              (before, span) => ({ says: '{before}, then {span}', facts: { before, span: spanOf(span) } }),
              spanOf(work.spans[0] ?? null),
            ),
        }),
        details: [
          say('{lies} It is {across} across, {up} up.', {
            lies: liesOf(work.lies),
            across: { length: work.size.across },
            up: { length: work.size.up },
          }),
        ],
      };
    case 'card':
      return sayCard(work, wording);
    case 'place':
      return {
        headline: say('{name}: {perBox} per box.', { name: { text: work.name }, perBox: work.perBox }),
        details: work.size
          ? [
              say('Each is {across} × {up}.', {
                across: { length: work.size.across },
                up: { length: work.size.up },
              }),
              ...work.cuts.map((cut) => sayReason(cut, wording)),
            ]
          : [],
      };
    case 'fill':
      return {
        headline: say('Put in each box:'),
        details: work.things.map((thing) => `${thing.perBox} × ${thing.name}`),
      };
    case 'tie':
      return {
        headline: say(
          work.perBox === 1 ? '{name}: {length} each.' : '{name}: {length} each, {perBox} per box.',
          { name: { text: work.name }, length: { length: work.length }, perBox: work.perBox },
        ),
        details: [say('Cut them all first, each from one end of the roll, then tie.')],
      };
  }
}

function sayCard({ steps, lies }: Extract<RunWork, { do: 'card' }>, wording: Wording): RunWords {
  const [first, ...others] = steps;
  const say = (says: string) => sayReason({ says, facts: {} }, wording);
  if (!first) return { headline: '', details: [] };
  if (others.length === 0)
    return {
      headline: say(first.headline),
      details: [...(lies ? [sayReason(liesOf(lies), wording)] : []), ...first.details.map(say)],
    };
  return {
    headline: say('On each, one after the other:'),
    details: steps.map(({ headline }) => say(headline)),
  };
}

const spanOf = (span: null | { readonly from: Ticks; readonly to: Ticks }): Reason => {
  if (span === null) return { says: 'edge to edge', facts: {} };
  return span.from === 0
    ? { says: 'from the near edge up to {to}', facts: span }
    : { says: 'from {from} up to {to}', facts: span };
};

const TURNS: Readonly<Record<Exclude<CardLies['turned'], 'not'>, string>> = {
  'counter-clockwise': 'a quarter turn counterclockwise',
  clockwise: 'a quarter turn clockwise',
  'half round': 'half a turn',
};

/** How to lay the card, said from the drawing of the face that is up. */
function liesOf({ flipped, turned }: CardLies): Reason {
  const turn = turned === 'not' ? null : TURNS[turned];
  if (!flipped)
    return turn === null
      ? { says: 'Lay the piece inside up, as it is drawn.', facts: {} }
      : { says: 'Lay the piece inside up, {turn} from the drawing.', facts: { turn } };
  return turn === null
    ? { says: 'Lay the piece good side up, as it is drawn.', facts: {} }
    : {
        says: 'Lay the piece good side up, {turn} from the drawing.',
        facts: { turn },
      };
}
