import type { Recipe } from '../../../shared/workbook';

export function PrintActions(_: { recipe: Recipe }) {
  return null;
}
