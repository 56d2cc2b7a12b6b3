import { type Draft, type PanelDraft, type Place, type RectangleDraft, withPanel } from './draft';
import { isRectangle } from './sides';

export type Hole = NonNullable<RectangleDraft['holes']>[number];

export const holesOf = (panel: PanelDraft | undefined): readonly Hole[] =>
  isRectangle(panel) ? (panel.holes ?? []) : [];

export const withHoles = (panel: PanelDraft, holes: readonly Hole[]): PanelDraft => {
  const { holes: _, ...rest } = panel as RectangleDraft;
  return holes.length === 0 ? rest : { ...rest, holes: [...holes] };
};

/** The draft with one opening of a panel changed, or removed where the change gives null. */
export const withHole = (
  draft: Draft,
  place: Place,
  at: number,
  change: (hole: Hole) => Hole | null,
): Draft =>
  withPanel(draft, place, (panel) =>
    withHoles(
      panel,
      holesOf(panel).flatMap((hole, nth) => (nth === at ? (change(hole) ?? []) : hole)),
    ),
  );
