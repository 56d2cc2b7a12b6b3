import type { CutTree, SheetPart, SheetPlan } from '../../yield/types';

/** What one event cuts from a paper by itself. */
export interface CutApart {
  readonly eventId: string;
  readonly parts: readonly SheetPart[];
  readonly plan: SheetPlan;
}

/** The same paper cut for several events at once; parts are called `event/part`. */
export interface CutTogether {
  readonly parts: readonly SheetPart[];
  readonly plan: SheetPlan;
  /** Sheets the events take when each is cut by itself. */
  readonly apartSheets: number;
}

/** All that is cut from one paper, each part called after its event. */
export const partsTogether = (apart: readonly Pick<CutApart, 'eventId' | 'parts'>[]): readonly SheetPart[] =>
  apart.flatMap(({ eventId, parts }) => parts.map((part) => ({ ...part, id: nameIn(eventId, part.id) })));

/**
 * One paper cut for several events. Never more sheets than apart: where the search for all parts at once (`joint`) found no plan as good,
 * the events' own layouts are the plan, beside the bound for all parts.
 */
export function cutTogether(apart: readonly CutApart[], joint: SheetPlan): CutTogether {
  const parts = partsTogether(apart);
  const apartSheets = apart.reduce((sum, { plan }) => sum + plan.sheets, 0);
  if (joint.sheets <= apartSheets) return { parts, plan: joint, apartSheets };
  const layouts = apart.flatMap(({ eventId, plan }) =>
    plan.layouts.map((layout) => ({
      ...layout,
      parts: layout.parts.map((placed) => ({ ...placed, part: nameIn(eventId, placed.part) })),
      tree: renamed(layout.tree, eventId),
    })),
  );
  const plan = { ...joint, sheets: apartSheets, proven: apartSheets === joint.lowerBound, layouts };
  return { parts, plan, apartSheets };
}

const nameIn = (eventId: string, part: string): string => `${eventId}/${part}`;

const renamed = (tree: CutTree, eventId: string): CutTree => {
  if (tree.kind === 'part') return { ...tree, part: nameIn(eventId, tree.part) };
  if (tree.kind === 'offcut') return tree;
  return { ...tree, first: renamed(tree.first, eventId), second: renamed(tree.second, eventId) };
};
