import type { Recipe } from '../../shared/workbook';
import type { WorkbookStore } from './workbook-store';

/** Texts handed in already; each is read once, whatever came of it. */
const HANDED_IN = new Set<string>();

/** A text that was read here, and need not be read again. */
export const noteBrought = (text: string): void => void HANDED_IN.add(text);

/** Makes the styles known that these boxes bring with them. True if there was a new one. What reads them is fetched only where a box has one. */
export async function bringStyles(recipes: Iterable<Recipe>): Promise<boolean> {
  const newer = [...recipes].filter(({ ownStyle }) => ownStyle !== undefined && !HANDED_IN.has(ownStyle));
  if (newer.length === 0) return false;
  const { bringStylesOf } = await import('../core/style-file/own-style');
  bringStylesOf(newer);
  for (const { ownStyle = '' } of newer) HANDED_IN.add(ownStyle);
  return true;
}

/** Everything that is drawn of boxes is asked for again: a style has come to be known since. No row changes. */
export const drawAgain = (store: WorkbookStore): void =>
  store.setState(({ rows }) => ({ rows: { ...rows, recipes: new Map(rows.recipes) } }));
