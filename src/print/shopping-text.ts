import { leftOutOf, sayReason } from '../core/plan';
import { type Reason, reason } from '../core/units/reason';
import type { ShoppingListInput } from './shopping-list';
import { buyWords, NOT_WHOLE, whyTill, wordingOf } from './shopping-words';

type Listed = Pick<ShoppingListInput, 'plan' | 'ruler' | 'locale' | 'say'>;

/** What to buy as plain text, to send to whoever goes to the shop. */
export function shoppingText(input: Listed): string {
  const { plan } = input;
  const wording = wordingOf(input);
  const say = (says: Reason) => sayReason(says, wording);
  const name = { text: plan.name };
  const rows = plan.shopping
    .filter(({ short }) => short > 0)
    .map((row) => `- ${row.name}: ${buyWords(row, wording)}`);
  const leftOut = leftOutOf(plan).map((finding) => `- ${finding.about}: ${say(finding)}`);
  if (leftOut.length > 0)
    return [say(reason('{name}: to buy', { name })), ...rows, say(NOT_WHOLE), ...leftOut].join('\n');
  if (rows.length === 0) return say(reason('{name}: nothing to buy.', { name }));
  const { till } = plan.cost;
  return [
    say(reason('{name}: to buy', { name })),
    ...rows,
    say(reason('Total: {total}', { total: { minor: till.totalMinor } })),
    ...(till.totalMinor === till.subtotalMinor ? [] : [say(whyTill(till))]),
  ].join('\n');
}
