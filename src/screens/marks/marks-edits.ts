import { useMemo } from 'react';
import { mmOfTicks } from '../../../shared/lengths';
import type { Recipe } from '../../../shared/workbook';
import type { EasyRow } from '../../core/fit';
import { USUAL_FINEST } from '../../core/units';
import { useWorkbook } from '../../state/use-workbook';
import { useRuler } from '../../ui/measure';
import { usePageWords } from '../../ui/words';

/** What a maker settles on this page: sizes of a row, and what must stay as it is. Each one undo step. */
export function useMarksEdits({ id }: Recipe) {
  const edit = useWorkbook((state) => state.edit);
  const words = usePageWords().marks;
  const { finest } = useRuler();
  return useMemo(
    () => ({
      use: (styleId: string, { sizes, options }: EasyRow) =>
        edit('recipes', id, words.use, ({ markMm: _, ...recipe }) => ({
          ...recipe,
          styleId,
          sizesMm: {
            ...(recipe.styleId === styleId ? recipe.sizesMm : {}),
            ...Object.fromEntries(
              Object.entries(sizes).flatMap(([name, size]) => (size > 0 ? [[name, mmOfTicks(size)]] : [])),
            ),
          },
          options: { ...(recipe.styleId === styleId ? recipe.options : {}), ...options },
          ...(finest === USUAL_FINEST.in ? {} : { markMm: mmOfTicks(finest) }),
        })),
      hold: (name: string, isHeld: boolean) =>
        edit('recipes', id, words.held, (recipe) => {
          const others = (recipe.held ?? []).filter((one) => one !== name);
          return { ...recipe, held: isHeld ? [...others, name] : others };
        }),
    }),
    [edit, id, words, finest],
  );
}

export type MarksEdits = ReturnType<typeof useMarksEdits>;
