import { panelWords } from '../net/panel-words';
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

/** The step that folds a panel for good, which is the last that names it; -1 where none does. */
export const stepOf = (closing: readonly StepDraft[], panel: string): number =>
  closing.findLastIndex((step) => step.do !== 'glue' && step.panels.includes(panel));

/** Folds a panel together with those of another step; or, with null, in a step of its own right after the one it was in. */
export const foldWith =
  (piece: string, panel: string, at: number | null): Edit =>
  (draft) => {
    const of = draft.pieces?.[piece];
    if (of?.panels[panel]?.on === undefined) return NO_SUCH_PANEL;
    const target = at === null ? null : of.closing[at];
    if (target === undefined || target?.do === 'glue')
      return refused(
        'no-such-step',
        'That step folds nothing, so the {panel} can’t fold with it.',
        'Choose a step that folds or tucks.',
        { panel: panelWords(panel) },
      );
    const was = stepOf(of.closing, panel);
    if (was === at) return taken(draft);
    const alone: StepDraft = { do: 'fold', panels: [panel] };
    const moved = of.closing.flatMap((step, place): StepDraft[] => {
      const others = place === was ? withoutPanel(step, panel) : [step];
      if (place === was && at === null) return [...others, alone];
      return place === at && step.do !== 'glue' ? [{ ...step, panels: [...step.panels, panel] }] : others;
    });
    return taken(
      withPiece(draft, piece, (each) => ({
        ...each,
        closing: was < 0 && at === null ? [...moved, alone] : moved,
      })),
    );
  };

/** A step without one of its panels; nothing where that was its last. */
function withoutPanel(step: StepDraft, panel: string): StepDraft[] {
  if (step.do === 'glue') return [step];
  const panels = step.panels.filter((name) => name !== panel);
  if (panels.length === 0) return [];
  if (step.do === 'tuck') return [{ ...step, panels }];
  const { through: _, ...plain } = step;
  return [{ ...plain, panels }];
}
