import { addUp, type Reason, reason } from '../../units/reason';
import type { CostOf } from '../buying/cost';
import { shareOut } from '../buying/money';
import type { SparesRule } from '../event/spares';
import type { EventPlan } from '../event/types';
import { whyCount } from './count-why';

const SAID: Readonly<Record<CostOf, string>> = {
  paper: 'Paper',
  adhesive: 'Tape and glue',
  ribbon: 'Ribbon and twine',
  extras: 'What is put on',
  contents: 'What goes in',
};

/** Boxes to make, line by line. */
export const whyBoxes = (plan: EventPlan, rule: SparesRule): readonly Reason[] =>
  plan.lines.length === 1
    ? plan.lines.flatMap((line) => whyCount(line, rule))
    : [
        ...plan.lines.flatMap((line) => [
          reason('{name}:', { name: { text: line.name } }),
          ...whyCount(line, rule),
        ]),
        reason('{sum} = {making}.', {
          sum: addUp(plan.lines.map(({ making }) => ({ count: making }))),
          making: plan.making,
        }),
      ];

/** Sheets, paper by paper: what is cut from them, and whether fewer could hold it. */
export function whySheets({ papers }: EventPlan): readonly Reason[] {
  const sheets = papers.reduce((sum, { plan, spoiled }) => sum + plan.sheets + spoiled, 0);
  const lost = papers.filter(({ spoiled }) => spoiled > 0);
  return [
    ...papers.map(({ name, parts, plan }) =>
      reason(
        plan.proven
          ? '{name}: {pieces} pieces from {sheets} sheets, the fewest possible.'
          : '{name}: {pieces} pieces from {sheets} sheets. At least {least} are needed.',
        {
          name: { text: name },
          pieces: parts.reduce((sum, { count }) => sum + count, 0),
          sheets: plan.sheets,
          least: plan.lowerBound,
        },
      ),
    ),
    ...lost.map(({ name, spoiled }) =>
      reason('{name}: {spoiled} more for sheets lost to mistakes.', { name: { text: name }, spoiled }),
    ),
    ...(papers.length + lost.length < 2
      ? []
      : [
          reason('{sum} = {sheets}.', {
            sum: addUp([
              ...papers.map(({ plan }) => ({ count: plan.sheets })),
              ...lost.map(({ spoiled }) => ({ count: spoiled })),
            ]),
            sheets,
          }),
        ]),
  ];
}

/** What is paid, kind by kind, and what a favor uses up of it. */
export function whyCost({ cost: { buying, using, favors } }: EventPlan): readonly Reason[] {
  return [
    ...buying.shares
      .filter(({ minor }) => minor > 0)
      .map(({ of, minor }) => reason('{kind}: {minor}.', { kind: SAID[of], minor: { minor } })),
    reason('Whole packs, before discount, shipping and tax: {total}.', {
      total: { minor: buying.totalMinor },
    }),
    ...(favors > 0
      ? [
          reason('Per favor: {used} of materials ÷ {favors} favors = {each}.', {
            used: { minor: using.totalMinor },
            favors,
            each: { minor: using.perFavorMinor },
          }),
        ]
      : []),
  ];
}

/** The time at the bench in whole minutes, whose parts add up. */
export function whyHours({ hours }: EventPlan): readonly Reason[] {
  const total = Math.round(hours.totalSeconds / 60);
  const [work = 0, ready = 0, rest = 0] = shareOut(total, [
    ...[hours.workSeconds, hours.setUpSeconds, hours.restSeconds].map(Math.round),
  ]);
  const { boxes, stages, setUpEach, allowancePercent } = hours;
  return [
    ...(boxes > 0
      ? [
          reason('Hand work: {boxes} boxes at about {each} s each = {work} minutes.', {
            boxes,
            each: Math.round(hours.workSeconds / boxes),
            work,
          }),
        ]
      : []),
    reason('Getting ready: {kinds} kinds of step at {each} s = {ready} minutes.', {
      kinds: stages.length,
      each: Math.round(setUpEach),
      ready,
    }),
    reason('Rest: {percent}% more = {rest} minutes.', { percent: allowancePercent, rest }),
    reason('{work} + {ready} + {rest} = {total} minutes.', { work, ready, rest, total }),
  ];
}
