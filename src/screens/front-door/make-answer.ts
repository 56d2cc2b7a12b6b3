import { useNavigate, useSearchParams } from 'react-router';
import type { Paper, Tool } from '../../../shared/workbook';
import { type Answer, type AnswersQuestion, recipeOfAnswer } from '../../core/answers';
import { type Content, firstEvent, firstRecipe } from '../../state/intents/first-rows';
import { firstSizesMm } from '../../state/intents/first-sizes';
import { useStylesAtHand } from '../../state/results/styles-at-hand';
import { useWorkbook } from '../../state/use-workbook';
import type { NewRow } from '../../state/workbook-state';
import { pageAddress } from '../../ui/frame/addresses';

export interface Chosen {
  readonly paper: Paper | Content<'papers'>;
  readonly tool: Tool | Content<'tools'> | null;
}

/**
 * Opens an answer with everything that was typed: the box with its contents and paper, an event with the count and the tool; what is not on
 * the shelf yet is put there. One undo step.
 */
export function useMakeAnswer() {
  const createTogether = useWorkbook((state) => state.createTogether);
  const edit = useWorkbook((state) => state.edit);
  const currency = useWorkbook((state) => state.settings.currency);
  const navigate = useNavigate();
  const [search] = useSearchParams();
  const into = search.get('event');
  const { kept } = useStylesAtHand();
  return (answer: Answer, question: AnswersQuestion, chosen: Chosen, name: string) => {
    const parts: NewRow[] = [];
    const at = (
      row: Paper | Tool | Content<'papers'> | Content<'tools'> | null,
      table: 'papers' | 'tools',
    ) => {
      if (row === null) return () => null;
      if ('id' in row) return () => row.id;
      const place = parts.length;
      parts.push({ table, content: () => row } as NewRow);
      return (ids: readonly string[]) => ids[place] ?? null;
    };
    const paperId = at(chosen.paper, 'papers');
    const toolId = at(chosen.tool, 'tools');
    const recipe = recipeOfAnswer(answer, question);
    const sizesMm = { ...firstSizesMm(recipe.styleId, question.unit), ...recipe.sizesMm };
    const recipeAt = parts.length;
    parts.push({
      table: 'recipes',
      content: (ids) =>
        firstRecipe(
          { name, paperId: paperId(ids), ...recipe, ...kept(recipe.styleId), sizesMm },
          question.unit,
        ),
    });
    if (into === null)
      parts.push({
        table: 'events',
        content: (ids) =>
          firstEvent({
            name,
            currency,
            toolId: toolId(ids),
            lines: [
              {
                id: 'line-1',
                recipeId: ids[recipeAt] ?? '',
                dressingId: null,
                paperId: null,
                count: question.favors,
              },
            ],
          }),
      });
    const made = createTogether(name, parts);
    if (!made.ok) return;
    const recipeId = made.ids[recipeAt] ?? '';
    const eventId = into ?? made.ids[recipeAt + 1] ?? '';
    if (into !== null)
      edit('events', into, name, (event) => ({
        ...event,
        lines: [
          ...event.lines,
          { id: recipeId, recipeId, dressingId: null, paperId: null, count: question.favors },
        ],
      }));
    void navigate(pageAddress({ kind: 'event', id: eventId }, 'box', recipeId));
  };
}

/** What a new event allows for. */
export const FIRST_SPARES = firstEvent({ name: '-', currency: 'USD' }).spares;
