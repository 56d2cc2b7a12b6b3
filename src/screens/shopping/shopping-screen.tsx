import { Link, useOutletContext } from 'react-router';
import { type EventPlan, printMoney, type RemarkCode, type ShoppingRow, sayReason } from '../../core/plan';
import { pageAddress } from '../../ui/addresses';
import { BlankState } from '../../ui/blank-state';
import { classNames } from '../../ui/class-names';
import { EventFindings } from '../../ui/event-findings';
import { lengthWords, useRuler } from '../../ui/measure';
import type { OpenWorkbook } from '../../ui/open-workbook';
import { Opening } from '../../ui/opening';
import { usePageWords } from '../../ui/words';
import { ShoppingActions } from './shopping-actions';
import './shopping.css';

/** What the plan remarks on that is mended by choosing or buying. */
const BUYING: ReadonlySet<string> = new Set<RemarkCode>([
  'tape-missing',
  'tape-too-wide',
  'glue-missing',
  'tie-missing',
  'supply-missing',
  'longer-than-roll',
  'order-below-minimum',
  'price-missing',
]);

/** What do I buy? Need, on hand, buy, packs and price; every total opens to its arithmetic. */
export function ShoppingScreen() {
  const { workbook, event, plan, stale, mendOf } = useOutletContext<OpenWorkbook>();
  const words = usePageWords().shopping;
  if (!event || event.lines.length === 0)
    return (
      <BlankState
        title={words.needsCount}
        act={
          <Link className="button button-act" to={pageAddress(workbook, 'event')}>
            {words.toEvent}
          </Link>
        }
      >
        <p>{words.needsCountWhy}</p>
      </BlankState>
    );
  if (!plan) return <p className="soft">{words.working}</p>;
  return (
    <div className={classNames('shopping-page', stale && 'is-stale')} aria-busy={stale}>
      <ShoppingTable plan={plan} />
      <CostOf plan={plan} />
      <EventFindings mendOf={mendOf} findings={plan.findings.filter(({ code }) => BUYING.has(code))} />
      <ShoppingActions plan={plan} />
    </div>
  );
}

function ShoppingTable({ plan }: { plan: EventPlan }) {
  const words = usePageWords().shopping;
  return (
    <section aria-labelledby="shopping-head">
      <h2 id="shopping-head">{words.list}</h2>
      <div className="table-box">
        <table className="shopping-table">
          <thead>
            <tr>
              <th scope="col">{words.what}</th>
              <th scope="col">{words.need}</th>
              <th scope="col">{words.onHand}</th>
              <th scope="col">{words.buy}</th>
              <th scope="col">{words.price}</th>
            </tr>
          </thead>
          <tbody>
            {plan.shopping.map((row) => (
              <ShoppingLine key={row.id} row={row} currency={plan.cost.currency} />
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row" colSpan={4}>
                {words.total}
              </th>
              <td>
                <Money minor={plan.cost.buying.totalMinor} currency={plan.cost.currency} />
              </td>
            </tr>
          </tfoot>
        </table>
      </div>
    </section>
  );
}

function Money({ minor, currency }: { minor: number; currency: string }) {
  return <strong>{printMoney(minor, currency, usePageWords().locale)}</strong>;
}

function ShoppingLine({ row, currency }: { row: ShoppingRow; currency: string }) {
  const words = usePageWords();
  const ruler = useRuler();
  const money = (minor: number) => printMoney(minor, currency, words.locale);
  const packs = row.packs.filter(({ count }) => count > 0);
  return (
    <tr className="shopping-row">
      <th scope="row" aria-label={row.name}>
        <Opening head={row.name}>
          <ul className="working">
            {row.why.map((reason) => {
              const said = sayReason(reason, { length: (length) => lengthWords(length, ruler), money });
              return <li key={said}>{said}</li>;
            })}
          </ul>
        </Opening>
      </th>
      <td data-head={words.shopping.need}>{words.shopping.units[row.unit](row.need)}</td>
      <td data-head={words.shopping.onHand}>{row.onHand}</td>
      <td data-head={words.shopping.buy}>
        <span>
          {row.short === 0 ? (
            <span className="soft">{words.shopping.enough}</span>
          ) : packs.length === 0 ? (
            words.shopping.units[row.unit](row.short)
          ) : (
            packs.map(({ units, count }) => (
              <span key={units} className="pack">
                {words.shopping.packs(count, units, row.unit)}
              </span>
            ))
          )}
        </span>
      </td>
      <td data-head={words.shopping.price}>
        {row.priceMinor === null ? (
          <span className="soft">{words.shopping.noPrice}</span>
        ) : (
          money(row.priceMinor)
        )}
      </td>
    </tr>
  );
}

/** Cost a favor, and how it comes about. */
function CostOf({ plan }: { plan: EventPlan }) {
  const words = usePageWords();
  const { cost } = plan;
  const money = (minor: number) => printMoney(minor, cost.currency, words.locale);
  return (
    <section className="cost" aria-labelledby="cost-head">
      <h2 id="cost-head">{words.shopping.costHead}</h2>
      <Opening
        head={
          <>
            <strong className="cost-number">{money(cost.using.perFavorMinor)}</strong> {words.shopping.aFavor}
          </>
        }
      >
        <ul className="working">
          {cost.using.shares.map(({ of, minor, perFavorMinor }) => (
            <li key={of}>
              {words.shopping.share(words.shopping.kinds[of], money(minor), money(perFavorMinor))}
            </li>
          ))}
          <li>
            {words.shopping.perFavor(
              money(cost.using.totalMinor),
              cost.favors,
              money(cost.using.perFavorMinor),
            )}
          </li>
        </ul>
      </Opening>
      <Opening
        head={
          <>
            <strong>{money(cost.buying.perFavorMinor)}</strong> {words.shopping.aFavorPaid}
          </>
        }
      >
        <ul className="working">
          <li>
            {words.shopping.perFavor(
              money(cost.buying.totalMinor),
              cost.favors,
              money(cost.buying.perFavorMinor),
            )}
          </li>
          <li>{words.shopping.paidWhy}</li>
        </ul>
      </Opening>
    </section>
  );
}
