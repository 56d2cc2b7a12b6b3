import { useMemo } from 'react';
import type { CatalogueItem } from '../../../shared/catalogue/items';
import type { Recipe } from '../../../shared/workbook';
import type { Contents, Item, ItemShape } from '../../core/rows/contents';
import type { LengthUnit } from '../../core/units';
import { useWorkbook } from '../../state/use-workbook';
import { useRuler } from '../../ui/fields/measure';
import { usePageWords } from '../../ui/words';

const NOTHING: Contents = { items: [], clearanceMm: null };

/** First sizes of a thing the maker measures themselves, round on their own ruler. source: our choice */
const MEASURED: Readonly<Record<LengthUnit, ItemShape>> = {
  in: { shape: 'cuboid', widthMm: 63.5, depthMm: 38.1, heightMm: 31.75 },
  mm: { shape: 'cuboid', widthMm: 60, depthMm: 40, heightMm: 30 },
};

/** Every change to what goes inside, each one undo step under the name the maker sees. A change of things forgets the way they lay. */
export function useContentsEdits({ id }: Recipe) {
  const edit = useWorkbook((state) => state.edit);
  const words = usePageWords().contents;
  const { unit } = useRuler();
  return useMemo(() => {
    const change = (label: string, to: (contents: Contents) => Contents) =>
      edit('recipes', id, label, (recipe) => ({ ...recipe, contents: to(recipe.contents ?? NOTHING) }));
    const put = (label: string, items: (before: readonly Item[]) => Item[]) =>
      change(label, ({ items: before, clearanceMm }) => ({ items: items(before), clearanceMm }));
    const add = (label: string, thing: Omit<Item, 'id'>) =>
      put(label, (items) => [...items, { ...thing, id: freeId(items) }]);
    return {
      addFromList: ({ name, size, gramsEach, care }: CatalogueItem) =>
        add(name, { ...BARE, name, size, gramsEach, care: [...care] }),
      addMeasured: () => add(words.newThing, { ...BARE, name: words.newThing, size: MEASURED[unit] }),
      setItem: (itemId: string, label: string, to: Partial<Item>) =>
        put(label, (items) => items.map((item) => (item.id === itemId ? { ...item, ...to } : item))),
      /** As if nobody had read its label yet. */
      forgetLabel: (itemId: string) =>
        put(words.allergens, (items) =>
          items.map((item) => {
            const { allergens: _, ...unread } = item;
            return item.id === itemId ? unread : item;
          }),
        ),
      removeItem: (itemId: string) =>
        put(words.remove, (items) => items.filter((item) => item.id !== itemId)),
      setAir: (clearanceMm: number | null) => change(words.air, ({ items }) => ({ items, clearanceMm })),
      chooseWay: (arrangement: number) => change(words.choose, (contents) => ({ ...contents, arrangement })),
      setSizes: (sizesMm: Readonly<Record<string, number>>) =>
        edit('recipes', id, words.setSizes, (recipe) => ({
          ...recipe,
          sizesMm: { ...recipe.sizesMm, ...sizesMm },
        })),
    };
  }, [edit, id, words, unit]);
}

export type ContentsEdits = ReturnType<typeof useContentsEdits>;

const BARE = {
  count: 1,
  wrapMm: 0,
  aboveRimMm: 0,
  thisWayUp: false,
  fragile: false,
  care: [],
  gramsEach: null,
} satisfies Omit<Item, 'id' | 'name' | 'size'>;

/** The least `thing-N` that is free. */
function freeId(items: readonly Item[]): string {
  for (let n = 1; ; n++) {
    const id = `thing-${n}`;
    if (!items.some((item) => item.id === id)) return id;
  }
}
