import type { FavorEvent } from '../../../shared/workbook';
import type { EventFinding } from '../../core/plan';
import { useWorkbook } from '../use-workbook';

/** Findings of an event that one press can mend. */
export type Mendable = 'part-fits-across-grain';
export const isMendable = (code: string): code is Mendable => code === 'part-fits-across-grain';

/** Mends a finding of this event, as one undo step called `label`; nothing where its line is gone. */
export function useMendEvent(event: FavorEvent | null) {
  const edit = useWorkbook((state) => state.edit);
  return ({ where }: EventFinding, label: string): void => {
    // A part is called after its line: `line.piece`.
    const line = event?.lines.find(({ id }) => where.startsWith(`${id}.`));
    if (line) edit('recipes', line.recipeId, label, (recipe) => ({ ...recipe, grain: 'free' }));
  };
}
