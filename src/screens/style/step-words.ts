import type { StepDraft } from '../../core/draft/draft';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { usePanelNames } from './panel-names';

/** How a step of closing is said on this page. */
export function useStepWords(): (step: StepDraft) => string {
  const words = useDraftingWords();
  const names = usePanelNames();
  return (step) => {
    if (step.do === 'glue') return words.steps.glue(names.panel(step.panel), names.panel(step.onto));
    const panels = names.list(step.panels);
    if (step.do === 'tuck') return words.steps.tuck(panels);
    return typeof step.to === 'number' ? words.steps.foldTo(panels, step.to) : words.steps.fold(panels);
  };
}
