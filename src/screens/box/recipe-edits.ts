import { useMemo } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { mmOfTicks } from '../../core/rows/lengths';
import type { Ticks } from '../../core/units';
import { inStyle } from '../../state/intents/first-sizes';
import { useStylesAtHand } from '../../state/results/styles-at-hand';
import { useWorkbook } from '../../state/use-workbook';
import { usePageWords } from '../../ui/words';

/** Every change a maker can make to a recipe on this page, each one undo step under the name they see. */
export function useRecipeEdits({ id }: Recipe) {
  const edit = useWorkbook((state) => state.edit);
  const words = usePageWords().box;
  const { kept } = useStylesAtHand();
  return useMemo(() => {
    const change = (label: string, to: (recipe: Recipe) => Recipe) => edit('recipes', id, label, to);
    return {
      setSize: (symbol: string, length: Ticks, label: string) =>
        change(label, (recipe) => ({
          ...recipe,
          sizesMm: { ...recipe.sizesMm, [symbol]: mmOfTicks(length) },
        })),
      /** Several sizes as one step. */
      setSizes: (lengths: Readonly<Record<string, Ticks>>) =>
        change(words.sizes, (recipe) => ({
          ...recipe,
          sizesMm: {
            ...recipe.sizesMm,
            ...Object.fromEntries(Object.entries(lengths).map(([name, length]) => [name, mmOfTicks(length)])),
          },
        })),
      setOption: (option: string, choice: string, label: string) =>
        change(label, (recipe) => ({ ...recipe, options: { ...recipe.options, [option]: choice } })),
      /** Another style keeps the sizes that it has a name for. */
      setStyle: (styleId: string) =>
        change(words.style, ({ ownNet: _, ownStyle: __, ...recipe }) => ({
          ...inStyle(recipe, styleId),
          ...kept(styleId),
        })),
      setPaper: (paperId: string | null, caliperUm: number | null) =>
        change(words.paper, (recipe) => ({ ...recipe, paperId, caliperUm: caliperUm ?? recipe.caliperUm })),
      setCaliper: (caliperUm: number) => change(words.caliper, (recipe) => ({ ...recipe, caliperUm })),
      setFaceUp: (faceUp: Recipe['faceUp']) => change(words.faceUp, (recipe) => ({ ...recipe, faceUp })),
      setGrain: (grain: Recipe['grain']) => change(words.grain, (recipe) => ({ ...recipe, grain })),
    };
  }, [edit, id, words, kept]);
}

export type RecipeEdits = ReturnType<typeof useRecipeEdits>;
