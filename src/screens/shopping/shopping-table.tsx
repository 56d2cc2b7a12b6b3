import { PackageCheck } from 'lucide-react';
import type { FavorEvent } from '../../../shared/workbook';
import { type EventPlan, followShopping, leftOutOf } from '../../core/plan';
import { Button } from '../../ui/fields/button';
import { usePageWords } from '../../ui/words';
import { useShoppingEdits } from './shopping-edits';
import { ShoppingLine } from './shopping-line';
import { TillSum } from './till';

/** The list, ticked off as it is bought and put on hand as it comes home. */
export function ShoppingTable({ plan, event }: { plan: EventPlan; event: FavorEvent }) {
  const words = usePageWords();
  const edits = useShoppingEdits(event);
  const whole = leftOutOf(plan).length === 0;
  const rows = followShopping(plan.shopping, event.bought);
  const listed = rows.filter(
    ({ row, underway, received }) => row.short > 0 || underway || received.length > 0,
  );
  const bought = listed.filter(({ underway, row }) => underway !== null || row.short === 0);
  const underway = rows.flatMap((each) => each.underway ?? []);
  return (
    <section aria-labelledby="shopping-head">
      <div className="shopping-head">
        <h2 id="shopping-head">{words.shopping.list}</h2>
        <p className="soft" role="status">
          {listed.length > 0
            ? words.buying.progress(bought.length, listed.length)
            : whole
              ? words.buying.nothing
              : words.buying.leftOut}
        </p>
        {underway.length > 1 && (
          <Button
            icon={<PackageCheck aria-hidden="true" />}
            onClick={() => edits.receive(words.buying.receiveAll, underway)}
          >
            {words.buying.receiveAll}
          </Button>
        )}
      </div>
      <div className="table-box">
        <table className="shopping-table">
          <thead>
            <tr>
              <th scope="col">
                <span className="said-only">{words.buying.ticked}</span>
              </th>
              <th scope="col">{words.shopping.what}</th>
              <th scope="col">{words.shopping.need}</th>
              <th scope="col">{words.shopping.onHand}</th>
              <th scope="col">{words.shopping.buy}</th>
              <th scope="col">{words.buying.left}</th>
              <th scope="col">{words.shopping.price}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((followed) => (
              <ShoppingLine
                key={followed.row.id}
                followed={followed}
                currency={plan.cost.currency}
                edits={edits}
              />
            ))}
          </tbody>
        </table>
      </div>
      {whole && <TillSum sum={plan.cost.till} currency={plan.cost.currency} />}
    </section>
  );
}
