import type { Recipe } from '../../shared/workbook';

/** A box with a style of its own, all else as usual. */
export const recipeRow = (
  own: Pick<Recipe, 'sizesMm' | 'options'> & { readonly ownStyle: string },
): Recipe => ({
  id: 'mine',
  rev: 1,
  createdAt: '2026-02-01T00:00:00Z',
  changedAt: '2026-02-01T00:00:00Z',
  name: 'Mine',
  styleId: 'own-style',
  caliperUm: 300,
  paperId: null,
  faceUp: 'outside',
  grain: 'free',
  dressings: [],
  notes: '',
  ...own,
});
