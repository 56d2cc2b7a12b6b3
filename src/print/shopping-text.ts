import { lengthWords } from '../core/draw/length-text';
import { printMoney, type Wording } from '../core/plan';
import { buyWords, type ShoppingListInput, sayTill } from './shopping-list';

type Listed = Pick<ShoppingListInput, 'plan' | 'ruler' | 'locale'>;

/** What to buy as plain text, to send to whoever goes to the shop. */
export function shoppingText({ plan, ruler, locale }: Listed): string {
  const money = (minor: number) => printMoney(minor, plan.cost.currency, locale);
  const wording: Wording = { money, length: (length) => lengthWords(length, ruler) };
  const rows = plan.shopping
    .filter(({ short }) => short > 0)
    .map((row) => `- ${row.name}: ${buyWords(row, wording)}`);
  if (rows.length === 0) return `${plan.name}: everything is in the cupboard already.`;
  const { till } = plan.cost;
  return [
    `${plan.name}: to buy`,
    ...rows,
    `To pay: ${money(till.totalMinor)}`,
    ...(till.totalMinor === till.subtotalMinor ? [] : [sayTill(till, money)]),
  ].join('\n');
}
