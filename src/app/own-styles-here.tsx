import { useContext, useEffect } from 'react';
import { bringStyles, drawAgain } from '../state/own-styles';
import { useWorkbook, WorkbookContext } from '../state/use-workbook';

/** Makes styles known that come later than the shelf: with a file, a link, another tab or another device. */
export function OwnStylesHere() {
  const store = useContext(WorkbookContext);
  const recipes = useWorkbook((state) => state.rows.recipes);
  useEffect(() => {
    bringStyles(recipes.values()).then(
      (any) => any && store && drawAgain(store),
      // not to be fetched now: asked for again with the next change
      () => undefined,
    );
  }, [recipes, store]);
  return null;
}
