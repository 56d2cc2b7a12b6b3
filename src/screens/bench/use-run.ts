import type { FavorEvent } from '../../../shared/workbook';
import { addCount, countAt, type RunStep, setFirstRight } from '../../core/plan';
import { nextStep } from '../../state/keeping/history';
import { useWorkbook } from '../../state/use-workbook';
import { usePageWords } from '../../ui/words';

export interface Tap {
  readonly done?: number;
  readonly spoiled?: number;
  readonly seconds?: number;
}

/** What is counted at the bench, written into the event at every tap, and taken back one tap at a time. */
export function useRun({ id, run }: FavorEvent) {
  const words = usePageWords().run;
  const edit = useWorkbook((state) => state.edit);
  const device = useWorkbook((state) => state.sharing?.device);
  const undo = useWorkbook((state) => state.undo);
  const last = useWorkbook((state) => nextStep(state.history, 'undo'));
  const canUndo =
    last?.changes.every(
      (change) =>
        change.do === 'edit' && change.id === id && change.fields.every(({ at: [field] }) => field === 'run'),
    ) ?? false;
  return {
    undo: canUndo ? undo : null,
    tap(step: RunStep, more: Tap): void {
      const before = countAt(run, step.id);
      // Each tap has a label of its own, so that no two become one step of the undo list.
      const label = words.tapLabel(
        words.acts[step.act],
        before.done + (more.done ?? 0),
        before.spoiled + (more.spoiled ?? 0),
      );
      void edit('events', id, label, (event) => ({
        ...event,
        run: addCount(event.run, step.id, more, device),
      }));
    },
    confirmFirst(lineId: string, name: string, right: boolean): void {
      const change = (event: FavorEvent) => ({ ...event, run: setFirstRight(event.run, lineId, right) });
      void edit('events', id, words.firstLabel(name), change);
    },
  };
}
