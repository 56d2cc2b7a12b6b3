import { type Reason, reason } from '../../units/reason';
import { nameAccuracy } from '../event/accuracy';
import {
  addSpoilage,
  BATCHES,
  beginFor,
  canMakeUp,
  ceilDiv,
  type MakingCount,
  type SparesRule,
} from '../event/spares';
import type { EventPart } from '../event/types';

/** A line as it was counted, with what the plan counted it from. */
type CountedLine = MakingCount & { readonly again: number; readonly closes: number | null };

/** How many of a box are made: those ordered, the spares by the event's rule, and those spoiled beyond them. */
export function whyCount(line: CountedLine, rule: SparesRule): readonly Reason[] {
  const { ordered, spares, practice, making, perKit, again, closes } = line;
  const kits = perKit === null ? null : ordered / perKit;
  return [
    ...(kits === null || perKit === null
      ? []
      : [reason('{kits} kits × {perKit} in each = {ordered} ordered.', { kits, perKit, ordered })]),
    reason(
      practice > 0
        ? perKit === null
          ? '{ordered} needed + {spares} spares + {practice} for practice = {making} to make.'
          : '{ordered} needed + {spares} spares + {practice} to show and practice = {making} to make.'
        : '{ordered} needed + {spares} spares = {making} to make.',
      { ordered, spares, practice, making },
    ),
    ...whySpares(kits ?? ordered, spares - again, perKit, rule, closes),
    ...(again > 0 ? [reason('{again} of the spares are for boxes that went wrong.', { again })] : []),
  ];
}

const OF_BOXES = {
  closing:
    'Spares: with every mark off by up to {offBy}, {closes} of 100 close. Of {begun}, at least {of} close in {batches} of 100 batches, so {share} more.',
  percent: 'Spares: {percent}% of {of}, rounded up, are {share}.',
  byAct: 'Spares: mistakes expected at all steps together are {share}.',
  atLeast: 'Spares: at least {atLeast}.',
};
const OF_KITS = {
  closing:
    'Spares: with every mark off by up to {offBy}, {closes} of 100 boxes close. Of {begun} boxes, at least {of} close in {batches} of 100 batches, so {share} kits more.',
  percent: 'Spares: {percent}% of {of} kits, rounded up, are {share}.',
  byAct: 'Spares: mistakes expected at all steps together are {share} kits.',
  atLeast: 'Spares: at least {atLeast} kits.',
};

const NO_FIT = 'Spares: no fit of this style is known that your marks could spoil, so the percentage counts.';
const TOO_FEW =
  'Spares: with every mark off by up to {offBy}, only {closes} of 100 close. Spares can’t make up for that, so the percentage counts.';

/** The parts of the rule that say anything, and which of them the spares go by. */
function whySpares(
  of: number,
  spares: number,
  perKit: number | null,
  rule: SparesRule,
  closes: number | null,
): Reason[] {
  const { percent, atLeast, byAct = [], offByMm } = rule;
  const offBy = { text: offByMm === undefined ? '' : nameAccuracy(offByMm) };
  const boxes = of * (perKit ?? 1);
  const begun = closes !== null && canMakeUp(closes) ? beginFor(boxes, closes) : null;
  const says = perKit === null ? OF_BOXES : OF_KITS;
  const byPercent = ceilDiv(of * percent, 100);
  const spoiled =
    addSpoilage(
      of,
      byAct.map((act) => act.percent),
    ) - of;
  const rules = [
    ...(begun !== null && closes !== null
      ? [
          reason(says.closing, {
            offBy,
            closes,
            of: boxes,
            begun,
            batches: BATCHES,
            share: ceilDiv(begun - boxes, perKit ?? 1),
          }),
        ]
      : []),
    ...(begun === null && percent > 0
      ? [
          reason(says.percent, {
            percent,
            of,
            share: byPercent,
          }),
        ]
      : []),
    ...(byAct.length > 0
      ? [
          reason(says.byAct, {
            share: spoiled,
          }),
        ]
      : []),
    ...(atLeast > 0 ? [reason(says.atLeast, { atLeast })] : []),
  ];
  const instead =
    offByMm === undefined || begun !== null
      ? []
      : [closes === null ? reason(NO_FIT, {}) : reason(TOO_FEW, { offBy, closes })];
  return rules.length > 1
    ? [...instead, ...rules, reason('We use the largest of these, which is {spares}.', { spares })]
    : [...instead, ...rules];
}

/** How many of a part are cut. */
export function whyPart(
  { perBox, count }: Pick<EventPart, 'perBox' | 'count'>,
  line: CountedLine,
  rule: SparesRule,
): readonly Reason[] {
  return [
    reason(perBox === 1 ? 'One for each of {making} boxes.' : '{making} boxes × {perBox} = {count}.', {
      making: line.making,
      perBox,
      count,
    }),
    ...whyCount(line, rule),
  ];
}
