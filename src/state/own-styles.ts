import type { Recipe } from '../../shared/workbook';
import type { WorkbookStore } from './workbook-store';

type Boxes = Iterable<Pick<Recipe, 'ownStyle'>>;
type Reader = typeof import('../core/style-file/own-style');

let reader: Reader | null = null;

/** What reads a maker's styles, fetched when it is first asked for. */
export async function styleReader(): Promise<Reader> {
  reader ??= await import('../core/style-file/own-style');
  return reader;
}

/** Texts handed in already; each is read once, whatever came of it. */
const HANDED_IN = new Set<string>();

/** A text that was read here, and need not be read again. */
export const noteBrought = (text: string): void => void HANDED_IN.add(text);

const textsOf = (boxes: Boxes): ReadonlySet<string> => {
  const texts = new Set<string>();
  for (const { ownStyle } of boxes) if (ownStyle !== undefined) texts.add(ownStyle);
  return texts;
};

/**
 * Makes the styles known that these boxes bring with them, at once where what reads them has been fetched. True if there was a new one. It is
 * fetched only where a box has one.
 */
export async function bringStyles(boxes: Boxes): Promise<boolean> {
  const newer = [...textsOf(boxes)].filter((text) => !HANDED_IN.has(text));
  if (newer.length === 0) return false;
  const { bringOwnStyle } = reader ?? (await styleReader());
  for (const text of newer) {
    bringOwnStyle(text);
    HANDED_IN.add(text);
  }
  return true;
}

/** Forgets the styles of these texts, but for those that a box still has. */
export function letStylesGo(texts: Iterable<string>, boxes: Boxes): void {
  const kept = textsOf(boxes);
  for (const text of texts) {
    if (kept.has(text)) continue;
    HANDED_IN.delete(text);
    reader?.dropOwnStyle(text);
  }
}

/** Everything that is drawn of boxes is asked for again: a style has come to be known since. No row changes. */
const drawAgain = (store: WorkbookStore): void =>
  store.setState(({ rows }) => ({ rows: { ...rows, recipes: new Map(rows.recipes) } }));

/**
 * As long as it runs, the styles known are those of the boxes: one comes with a file, a link, another tab, another device or an undo, and goes
 * when its last box is deleted or has another style. Gives what ends it.
 */
export function followStyles(store: WorkbookStore): () => void {
  const bring = () => {
    bringStyles(store.getState().rows.recipes.values()).then(
      (any) => any && drawAgain(store),
      // not to be fetched now: asked for again with the next change
      () => undefined,
    );
  };
  bring();
  return store.subscribe(({ rows: { recipes } }, before) => {
    if (recipes === before.rows.recipes) return;
    bring();
    letStylesGo(textsOf(before.rows.recipes.values()), recipes.values());
  });
}
