import type { Recipe } from '../../../shared/workbook';
import type { EditedStyle } from '../../core/draft/edit-style';
import { bringOwnStyle, ownStyleId } from '../../core/style-file/own-style';
import { noteBrought } from '../own-styles';

/** A size that an edit calls otherwise. */
export interface Renamed {
  readonly from: string;
  readonly to: string;
}

/** A box with the style that an edit made: its sizes and choices stay where the style still has them. */
export function withDraft(
  recipe: Recipe,
  { text, style }: Extract<EditedStyle, { ok: true }>,
  { renamed, usual }: { readonly renamed?: Renamed; readonly usual?: string } = {},
): Recipe {
  bringOwnStyle(text);
  noteBrought(text);
  const sizesMm = Object.fromEntries(
    Object.entries(recipe.sizesMm).flatMap(([name, length]) => {
      const now = name === renamed?.from ? renamed.to : name;
      // its usual size was set just now, and that is what is wanted to be seen
      return now in style.symbols && now !== usual ? [[now, length]] : [];
    }),
  );
  const options = Object.fromEntries(
    Object.entries(recipe.options).filter(([option, id]) =>
      style.options?.[option]?.choices.some((choice) => choice.id === id),
    ),
  );
  return { ...recipe, sizesMm, options, ownStyle: text, styleId: ownStyleId(text) };
}
