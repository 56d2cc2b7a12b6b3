import { useContext, useEffect } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { type BoxStyle, STYLES, styleById } from '../../core/styles';
import { letStylesGo } from '../own-styles';
import { useWorkbook, WorkbookContext } from '../use-workbook';

/** Every style a box can be made in: ours, then those that boxes of the shelf bring with them. */
export interface StylesAtHand {
  readonly styles: readonly BoxStyle[];
  readonly own: readonly BoxStyle[];
  /** What a recipe of this style keeps beside its id: the text of a maker’s own style, or nothing. */
  readonly kept: (styleId: string) => Pick<Recipe, 'ownStyle'>;
  /** The texts of the makers’ styles, for a worker that knows only ours. */
  readonly texts: readonly string[];
}

/** The same answer as long as the shelf has the same styles, whatever else is changed in its boxes. */
let last: { readonly key: string; readonly found: StylesAtHand } | null = null;

export function stylesAtHand(recipes: Iterable<Pick<Recipe, 'styleId' | 'ownStyle'>>): StylesAtHand {
  const texts = new Map<BoxStyle, string>();
  for (const { styleId, ownStyle } of recipes) {
    const style = ownStyle === undefined ? undefined : styleById(styleId);
    // Two devices may have left one of ours with the text of a style that it has no more.
    if (style && ownStyle !== undefined && !STYLES.includes(style) && !texts.has(style))
      texts.set(style, ownStyle);
  }
  const own = [...texts.keys()];
  // an id is made from the text, so that ids tell texts apart
  const key = own.map(({ id }) => id).join(' ');
  if (last?.key === key) return last.found;
  const found: StylesAtHand = {
    styles: [...STYLES, ...own],
    own,
    kept: (styleId) => {
      const style = own.find(({ id }) => id === styleId);
      const text = style && texts.get(style);
      return text === undefined ? {} : { ownStyle: text };
    },
    texts: [...texts.values()],
  };
  last = { key, found };
  return found;
}

export const useStylesAtHand = (): StylesAtHand =>
  stylesAtHand(useWorkbook((state) => state.rows.recipes).values());

/** Forgets a style that was looked at once it is looked at no more, unless a box has been made of it. */
export function useStyleWhileSeen(text: string | undefined): void {
  const store = useContext(WorkbookContext);
  useEffect(() => {
    if (text === undefined || store === null) return undefined;
    return () => letStylesGo([text], store.getState().rows.recipes.values());
  }, [text, store]);
}
