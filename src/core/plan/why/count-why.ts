import { type Reason, reason } from '../../units/reason';
import { addSpoilage, ceilDiv, type MakingCount, type SparesRule } from '../event/spares';
import type { EventPart } from '../event/types';

/** How many of a box are made: those ordered, the spares by the event's rule, and those spoiled beyond them. */
export function whyCount(
  line: MakingCount & { readonly again: number },
  rule: SparesRule,
): readonly Reason[] {
  const { ordered, spares, practice, making, perKit, again } = line;
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
    ...whySpares(kits ?? ordered, spares - again, perKit, rule),
    ...(again > 0 ? [reason('{again} of the spares are for boxes that went wrong.', { again })] : []),
  ];
}

const OF_BOXES = {
  percent: 'Spares: {percent}% of {of}, rounded up, are {share}.',
  byAct: 'Spares: mistakes expected at all steps together are {share}.',
  atLeast: 'Spares: at least {atLeast}.',
};
const OF_KITS = {
  percent: 'Spares: {percent}% of {of} kits, rounded up, are {share}.',
  byAct: 'Spares: mistakes expected at all steps together are {share} kits.',
  atLeast: 'Spares: at least {atLeast} kits.',
};

/** The parts of the rule that say anything, and which of them the spares go by. */
function whySpares(of: number, spares: number, perKit: number | null, rule: SparesRule): Reason[] {
  const { percent, atLeast, byAct = [] } = rule;
  const says = perKit === null ? OF_BOXES : OF_KITS;
  const byPercent = ceilDiv(of * percent, 100);
  const spoiled =
    addSpoilage(
      of,
      byAct.map((act) => act.percent),
    ) - of;
  const rules = [
    ...(percent > 0
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
  return rules.length > 1
    ? [...rules, reason('We use the largest of these, which is {spares}.', { spares })]
    : rules;
}

/** How many of a part are cut. */
export function whyPart(
  { perBox, count }: Pick<EventPart, 'perBox' | 'count'>,
  line: MakingCount & { readonly again: number },
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
