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

/** Notes that a text was read elsewhere and need not be read again. */
export const noteBrought = (text: string): void => void HANDED_IN.add(text);

const textsOf = (boxes: Boxes): ReadonlySet<string> => {
  const texts = new Set<string>();
  for (const { ownStyle } of boxes) if (ownStyle !== undefined) texts.add(ownStyle);
  return texts;
};

/**
 * Makes known the styles that come with these boxes; true if there was a new one. Their reader is fetched only when a box has such a style, and
 * once it is here the styles are known before this returns.
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

/** Has every drawing of a box made again, now that a new style is known. No row changes. */
const drawAgain = (store: WorkbookStore): void =>
  store.setState(({ rows }) => ({ rows: { ...rows, recipes: new Map(rows.recipes) } }));

/**
 * Keeps the styles known to those of the boxes, until the function it gives back is called. A style comes with a file, a link, another tab,
 * another device or an undo. It goes when its last box is deleted or gets another style.
 */
export function followStyles(store: WorkbookStore): () => void {
  const bring = () => {
    bringStyles(store.getState().rows.recipes.values()).then(
      (any) => any && drawAgain(store),
      // the reader could not be fetched: the next change asks again
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
