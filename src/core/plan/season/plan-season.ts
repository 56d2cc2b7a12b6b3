import type { FavorEvent } from '../../rows';
import { planSheets } from '../../yield/plan-sheets';
import type { CuttingTool, SheetPaper, SheetPlan } from '../../yield/types';
import { fillRolls } from '../buying/rolls';
import { cuttingToolOf, sheetOfPaper } from '../buying/stock-rows';
import { type EventRows, planEvent, USUAL_DAYS } from '../event/plan-event';
import type { EventPlan } from '../event/types';
import { promiseStock, type SeasonRow } from './promises';
import { type CutApart, type CutTogether, cutTogether, partsTogether } from './together';
import { type Clash, clashesOf, type SeasonWeek, weeksOf } from './weeks';

/** One paper that events of a season share. */
export interface SeasonPaper extends CutTogether {
  readonly paperId: string;
  readonly name: string;
  readonly apart: readonly CutApart[];
}

/** Several events and classes on one calendar, against one stock. */
export interface SeasonPlan {
  /** In the order of their dates, those without one last. */
  readonly events: readonly EventPlan[];
  readonly papers: readonly SeasonPaper[];
  readonly rows: readonly SeasonRow[];
  readonly weeks: readonly SeasonWeek[];
  readonly clashes: readonly Clash[];
}

/** One paper and all that the events of a season cut from it. */
export interface SharedPaper {
  readonly paper: SheetPaper;
  readonly name: string;
  readonly tool: CuttingTool;
  readonly apart: readonly CutApart[];
}

/** Events in the order of their dates, those without one last. */
export const inSeason = <Event extends Pick<FavorEvent, 'id' | 'date'>>(events: readonly Event[]): Event[] =>
  events.toSorted((a, b) => (a.date ?? '9999').localeCompare(b.date ?? '9999') || (a.id < b.id ? -1 : 1));

/** The papers of these plans with what each event cuts from them, by the tool of the first. */
export function papersShared(
  { events, papers, tools }: EventRows,
  plans: readonly EventPlan[],
): readonly SharedPaper[] {
  return papers.flatMap((paper): SharedPaper[] => {
    const apart = plans.flatMap(({ eventId, papers: own }): CutApart[] =>
      own
        .filter(({ paperId }) => paperId === paper.id)
        .map(({ demand, plan }) => ({ eventId, parts: demand, plan })),
    );
    const [first] = apart;
    if (!first) return [];
    const toolId = events.find(({ id }) => id === first.eventId)?.toolId;
    const tool = cuttingToolOf(tools.find(({ id }) => id === toolId) ?? tools[0]);
    return [{ paper: sheetOfPaper(paper), name: paper.name, tool, apart }];
  });
}

/** What the events come to together: the same paper cut as one order (`joints`, by its id), one stock shared by date, and the work of each week. */
export function sumSeason(
  { events }: Pick<EventRows, 'events'>,
  plans: readonly EventPlan[],
  shared: readonly SharedPaper[],
  joints: ReadonlyMap<string, SheetPlan>,
): SeasonPlan {
  const papers = shared.flatMap(({ paper, name, apart }): SeasonPaper[] => {
    const joint = joints.get(paper.id);
    return joint ? [{ ...cutTogether(apart, joint), paperId: paper.id, name, apart }] : [];
  });
  const saved = new Map([
    ...papers.map(({ paperId, plan, apartSheets }) => [paperId, apartSheets - plan.sheets] as const),
    ...rollsSaved(plans),
  ]);
  const asked = plans.map(({ eventId, shopping }) => ({ eventId, rows: shopping }));
  const dayMinutes = new Map(events.map(({ id, pace }) => [id, (pace ?? USUAL_DAYS).dayMinutes]));
  return {
    events: plans,
    papers,
    rows: promiseStock(asked, saved),
    weeks: weeksOf(plans),
    clashes: clashesOf(plans, dayMinutes),
  };
}

/** Events planned together, here and now. */
export function planSeason(rows: EventRows, eventIds: readonly string[]): SeasonPlan {
  const chosen = inSeason(rows.events.filter(({ id }) => eventIds.includes(id)));
  const plans = chosen.flatMap(({ id }) => planEvent(rows, id) ?? []);
  const shared = papersShared(rows, plans);
  const joints = new Map(
    shared.map(({ paper, tool, apart }) => [paper.id, planSheets(partsTogether(apart), paper, tool)]),
  );
  return sumSeason(rows, plans, shared, joints);
}

/** Rolls that the events of a season save, by supply: what one event leaves of a roll serves the next. Never fewer than none. */
export function rollsSaved(plans: readonly Pick<EventPlan, 'rolls'>[]): ReadonlyMap<string, number> {
  const all = plans.flatMap(({ rolls }) => rolls);
  const ids = [...new Set(all.map(({ supplyId }) => supplyId))];
  return new Map(
    ids.map((id) => {
      const own = all.filter(({ supplyId }) => supplyId === id);
      const pieces = own.flatMap(({ rolls: { fills } }) =>
        fills.flatMap(({ rolls, pieces: each }) =>
          each.map(({ length, count }) => ({ length, count: count * rolls })),
        ),
      );
      const apart = own.reduce((sum, { rolls }) => sum + rolls.rolls, 0);
      const together = fillRolls(pieces, own[0]!.usable).rolls;
      return [id, Math.max(0, apart - together)] as const;
    }),
  );
}
