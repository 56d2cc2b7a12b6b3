import { Link } from 'react-router';
import { type EventPlan, printMoney } from '../../core/plan';
import { pageAddress } from '../../ui/addresses';
import { classNames } from '../../ui/class-names';
import { EventFindings, type MendOf } from '../../ui/event-findings';
import { usePageWords } from '../../ui/words';

interface EventSumProps {
  readonly eventId: string;
  readonly mendOf: MendOf;
  readonly plan: EventPlan | null;
  readonly stale: boolean;
}

/** What the event comes to: favors, sheets, cost, hours; each leads to the page that shows how. */
export function EventSum({ eventId, plan, stale, mendOf }: EventSumProps) {
  const words = usePageWords();
  if (!plan || plan.making === 0) return null;
  const workbook = { kind: 'event', id: eventId } as const;
  const money = (minor: number) => printMoney(minor, plan.cost.currency, words.locale);
  const sheets = plan.papers.reduce((sum, { plan: { sheets } }) => sum + sheets, 0);
  return (
    <section
      className={classNames('event-sum', stale && 'is-stale')}
      aria-labelledby="event-sum-head"
      aria-busy={stale}
    >
      <h2 id="event-sum-head">{words.event.comesTo}</h2>
      <dl>
        <div>
          <dt>{words.event.toMake}</dt>
          <dd>
            <strong>{plan.making}</strong> {words.event.ofThem(plan.ordered, plan.making - plan.ordered)}
          </dd>
        </div>
        <div>
          <dt>
            <Link className="link-alone" to={pageAddress(workbook, 'sheets')}>
              {words.pages.sheets}
            </Link>
          </dt>
          <dd>
            <strong>{sheets}</strong>{' '}
            {plan.papers.map(({ name, plan: each }) => words.event.sheetsOf(each.sheets, name)).join(', ')}
          </dd>
        </div>
        <div>
          <dt>
            <Link className="link-alone" to={pageAddress(workbook, 'shopping')}>
              {words.pages.shopping}
            </Link>
          </dt>
          <dd>
            <strong>{money(plan.cost.buying.totalMinor)}</strong>{' '}
            {words.event.eachFavor(money(plan.cost.using.perFavorMinor))}
          </dd>
        </div>
        <div>
          <dt>
            <Link className="link-alone" to={pageAddress(workbook, 'bench')}>
              {words.pages.bench}
            </Link>
          </dt>
          <dd>
            <strong>{words.event.hours(Math.round(plan.hours.totalSeconds / 60))}</strong>{' '}
            {words.event.hoursWhy}
          </dd>
        </div>
      </dl>
      <EventFindings findings={plan.findings} mendOf={mendOf} />
    </section>
  );
}
