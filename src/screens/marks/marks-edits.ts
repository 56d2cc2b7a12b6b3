import { useMemo } from 'react';
import type { Recipe } from '../../../shared/workbook';
import type { EasyRow } from '../../core/fit';
import { mmOfTicks } from '../../core/rows/lengths';
import { type Ticks, USUAL_FINEST } from '../../core/units';
import { useStylesAtHand } from '../../state/results/styles-at-hand';
import { useWorkbook } from '../../state/use-workbook';
import { useRuler } from '../../ui/fields/measure';
import { usePageWords } from '../../ui/words';

/** The sizes of a row as a recipe keeps them. */
export const sizesMmOf = ({ sizes }: Pick<EasyRow, 'sizes'>): Recipe['sizesMm'] =>
  Object.fromEntries(
    Object.entries(sizes).flatMap(([name, size]) => (size > 0 ? [[name, mmOfTicks(size)]] : [])),
  );

/** The marks a row was found on, where they are not the usual ones. */
export const markMmOf = (finest: Ticks): Pick<Recipe, 'markMm'> =>
  finest === USUAL_FINEST.in ? {} : { markMm: mmOfTicks(finest) };

/** What a maker settles on this page: sizes of a row, and what must stay as it is. Each one undo step. */
export function useMarksEdits({ id }: Recipe) {
  const edit = useWorkbook((state) => state.edit);
  const words = usePageWords().marks;
  const { finest } = useRuler();
  const { kept } = useStylesAtHand();
  return useMemo(
    () => ({
      use: (styleId: string, row: EasyRow) =>
        edit('recipes', id, words.use, ({ markMm: _, ownStyle: __, ...recipe }) => ({
          ...recipe,
          ...kept(styleId),
          styleId,
          sizesMm: {
            ...(recipe.styleId === styleId ? recipe.sizesMm : {}),
            ...sizesMmOf(row),
          },
          options: { ...(recipe.styleId === styleId ? recipe.options : {}), ...row.options },
          ...markMmOf(finest),
        })),
      hold: (name: string, isHeld: boolean) =>
        edit('recipes', id, words.held, (recipe) => {
          const others = (recipe.held ?? []).filter((one) => one !== name);
          return { ...recipe, held: isHeld ? [...others, name] : others };
        }),
    }),
    [edit, id, words, finest, kept],
  );
}

export type MarksEdits = ReturnType<typeof useMarksEdits>;
