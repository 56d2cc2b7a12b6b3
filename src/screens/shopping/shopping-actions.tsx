import type { FavorEvent } from '../../../shared/workbook';
import type { EventPlan } from '../../core/plan';

export function ShoppingActions(_: { plan: EventPlan; event: FavorEvent }) {
  return null;
}
