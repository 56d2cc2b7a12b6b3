import {
  type Edit,
  NO_SUCH_PANEL,
  type PieceDraft,
  refused,
  type StepDraft,
  taken,
  withPiece,
} from './draft';

const steps =
  (piece: string, change: (closing: readonly StepDraft[], of: PieceDraft) => readonly StepDraft[]): Edit =>
  (draft) =>
    draft.pieces?.[piece] === undefined
      ? NO_SUCH_PANEL
      : taken(withPiece(draft, piece, (of) => ({ ...of, closing: [...change(of.closing, of)] })));

/** Panels that the steps fold or tuck, in their order. */
export const panelsFolded = (closing: readonly StepDraft[]): readonly string[] =>
  closing.flatMap((step) => (step.do === 'glue' ? [] : step.panels));

/** Adds a step that folds or tucks these panels, at the end. */
export const addStep =
  (piece: string, does: 'fold' | 'tuck', panels: readonly string[]): Edit =>
  (draft) => {
    const known = draft.pieces?.[piece]?.panels ?? {};
    const there = panels.filter((panel) => known[panel]?.on !== undefined);
    if (there.length === 0)
      return refused(
        'step-without-panel',
        'A step needs at least one panel that folds, and the first panel stays flat.',
        'Choose another panel.',
      );
    return steps(piece, (closing) => [...closing, { do: does, panels: there }])(draft);
  };

/** Moves a step one place earlier or later. */
export const moveStep = (piece: string, at: number, by: -1 | 1): Edit =>
  steps(piece, (closing) => {
    const [one, other] = [closing[at], closing[at + by]];
    if (one === undefined || other === undefined) return closing;
    return closing.map((step, place) => (place === at ? other : place === at + by ? one : step));
  });

export const removeStep = (piece: string, at: number): Edit =>
  steps(piece, (closing) => closing.filter((_, place) => place !== at));

/** Puts a panel into a step of folding, or takes it out. */
export const setStepPanel = (piece: string, at: number, panel: string, isIn: boolean): Edit =>
  steps(piece, (closing, of) =>
    closing.flatMap((step, place): StepDraft[] => {
      if (place !== at || step.do === 'glue') return [step];
      const panels = step.panels.filter((name) => name !== panel);
      if (isIn && of.panels[panel]?.on !== undefined) panels.push(panel);
      if (panels.length === 0) return [];
      if (step.do === 'tuck') return [{ ...step, panels }];
      const { through: _, ...plain } = step;
      return [{ ...plain, panels }];
    }),
  );
