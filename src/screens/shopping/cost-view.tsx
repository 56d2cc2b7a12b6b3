import type { Asking, FavorEvent } from '../../../shared/workbook';
import { decimalsOf, type EventPlan, perPiece, printMoney } from '../../core/plan';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { NumberField } from '../../ui/fields/number-field';
import { Opening } from '../../ui/frame/opening';
import { Working } from '../../ui/frame/working';
import { usePageWords } from '../../ui/words';

interface CostViewProps {
  readonly plan: EventPlan;
  readonly event: FavorEvent;
}

/** Cost a favor, and how it comes about. */
export function CostView({ plan, event }: CostViewProps) {
  const words = usePageWords();
  const { cost, asking } = plan;
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
          {asking && (
            <li>
              {words.buying.timeShare(
                money(asking.workMinor),
                money(perPiece(asking.workMinor, cost.favors)),
              )}
            </li>
          )}
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
          <li>
            {words.buying.leftOverAll} {money(cost.leftOverMinor)}
          </li>
        </ul>
      </Opening>
      <AskingView plan={plan} event={event} />
    </section>
  );
}

/** An hour of work to begin with, in whole money. source: our own default, the maker's to change. */
const FIRST_HOUR = 15;

function AskingView({ plan, event }: CostViewProps) {
  const words = usePageWords();
  const edit = useWorkbook((state) => state.edit);
  const { asking } = event;
  const money = (minor: number) => printMoney(minor, plan.cost.currency, words.locale);
  const decimals = decimalsOf(event.currency);
  const set = (label: string, change: Partial<Asking>) =>
    void edit('events', event.id, label, (old) => ({
      ...old,
      asking: { hourlyMinor: FIRST_HOUR * 10 ** decimals, marginPercent: 0, ...old.asking, ...change },
    }));
  return (
    <div className="asking">
      <h3>{words.buying.askHead}</h3>
      {!asking && (
        <>
          <p className="soft">{words.buying.noAsk}</p>
          <Button onClick={() => set(words.buying.askHead, {})}>{words.buying.askBegin}</Button>
        </>
      )}
      {asking && plan.asking && (
        <>
          <Opening
            head={
              <>
                <strong className="cost-number">{money(plan.asking.perFavorMinor)}</strong> {words.buying.ask}
              </>
            }
          >
            <Working why={plan.asking.why} currency={plan.cost.currency} />
          </Opening>
          <p className="soft">{words.buying.askWhy}</p>
        </>
      )}
      {asking && (
        <div className="terms-form">
          <NumberField
            label={words.buying.hourly}
            unit={event.currency}
            decimals={decimals}
            least={0}
            most={100_000_000}
            value={asking.hourlyMinor}
            onChange={(hourlyMinor) => set(words.buying.hourly, { hourlyMinor })}
          />
          <NumberField
            label={words.buying.margin}
            unit="%"
            least={0}
            most={1000}
            value={asking.marginPercent}
            onChange={(marginPercent) => set(words.buying.margin, { marginPercent })}
          />
        </div>
      )}
    </div>
  );
}
