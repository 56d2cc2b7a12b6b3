import type { FavorEvent, NameCards, Recipe } from '../../rows';
import type { LengthUnit } from '../../units';

type CardKind = NameCards['kind'];

/** Cards as they are before anyone changes them. source: common sizes, common practice, no source; a label sheet differs, so it is measured */
const USUAL: Readonly<Record<LengthUnit, Readonly<Record<CardKind, NameCards>>>> = {
  in: {
    tag: card('tag', 76.2, 38.1, 9.525),
    'place-card': card('place-card', 88.9, 50.8, 12.7),
    label: {
      ...card('label', 101.6, 50.8, 12.7),
      labels: { across: 2, down: 5, leftMm: 3.96875, topMm: 12.7, stepAcrossMm: 106.3625, stepDownMm: 50.8 },
    },
  },
  mm: {
    tag: card('tag', 80, 40, 10),
    'place-card': card('place-card', 90, 50, 13),
    label: {
      ...card('label', 99, 57, 13),
      labels: { across: 2, down: 5, leftMm: 5, topMm: 6, stepAcrossMm: 101, stepDownMm: 57 },
    },
  },
};

function card(kind: CardKind, widthMm: number, heightMm: number, nameMm: number): NameCards {
  return { kind, widthMm, heightMm, nameMm, showTable: false, below: '', paperId: null };
}

/** The usual cards of a kind for a maker who measures in this unit. */
export const usualCards = (unit: LengthUnit, kind: CardKind = 'tag'): NameCards => USUAL[unit][kind];

/** What each line's favor is called by, and told apart where two lines hold the same box. */
export function favorNames(
  { lines }: Pick<FavorEvent, 'lines'>,
  recipes: ReadonlyMap<string, Pick<Recipe, 'name'>>,
  papers: ReadonlyMap<string, { readonly name: string }> = new Map(),
): ReadonlyMap<string, string> {
  return new Map(
    lines.map(({ id, recipeId, paperId }) => {
      const name = recipes.get(recipeId)?.name ?? recipeId;
      const twice = lines.filter((other) => other.recipeId === recipeId).length > 1;
      const paper = papers.get(paperId ?? '')?.name;
      return [id, twice && paper !== undefined ? `${name}, ${paper}` : name];
    }),
  );
}
