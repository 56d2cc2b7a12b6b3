import type { Recipe } from '../../../shared/workbook';

export function PrintCard(_: { recipe: Recipe }) {
  return null;
}
