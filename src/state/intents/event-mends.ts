import type { FavorEvent } from '../../../shared/workbook';
import { countedByGuests, type EventFinding } from '../../core/plan';
import { useWorkbook } from '../use-workbook';

/** Findings of an event that one press can mend. */
export type Mendable = 'part-fits-across-grain' | 'guests-differ';
export const isMendable = (code: string): code is Mendable =>
  code === 'part-fits-across-grain' || code === 'guests-differ';

/** Mends a finding of this event, as one undo step called `label`; nothing where its line is gone. */
export function useMendEvent(event: FavorEvent | null) {
  const edit = useWorkbook((state) => state.edit);
  return ({ code, where }: EventFinding, label: string): void => {
    if (code === 'guests-differ') {
      if (event) edit('events', event.id, label, countedByGuests);
      return;
    }
    // A part is called after its line: `line.piece`.
    const line = event?.lines.find(({ id }) => where.startsWith(`${id}.`));
    if (line) edit('recipes', line.recipeId, label, (recipe) => ({ ...recipe, grain: 'free' }));
  };
}
