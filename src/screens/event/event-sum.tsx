import type { ReactNode } from 'react';
import { Link } from 'react-router';
import type { FavorEvent } from '../../../shared/workbook';
import {
  type EventPlan,
  leftOutOf,
  printMoney,
  whyBoxes,
  whyCost,
  whyHours,
  whySheets,
} from '../../core/plan';
import { pageAddress } from '../../ui/frame/addresses';
import { classNames } from '../../ui/frame/class-names';
import { EventFindings, type MendOf } from '../../ui/frame/event-findings';
import { WhyOpening } from '../../ui/frame/working';
import { usePageWords } from '../../ui/words';

interface EventSumProps {
  readonly event: FavorEvent;
  readonly mendOf: MendOf;
  readonly plan: EventPlan | null;
  readonly stale: boolean;
  /** Offered where a box has no paper; null where all have one. */
  readonly choosePaper: ReactNode;
}

/** What the event comes to: favors, sheets, cost, hours; each opens to how it comes about, and leads to the page that shows more. */
export function EventSum({ event, plan, stale, mendOf, choosePaper }: EventSumProps) {
  const words = usePageWords();
  if (!plan) return null;
  if (plan.making === 0) return <EventFindings findings={plan.findings} mendOf={mendOf} />;
  const whole = leftOutOf(plan).length === 0;
  const workbook = { kind: 'event', id: event.id } as const;
  const money = (minor: number) => printMoney(minor, plan.cost.currency, words.locale);
  const unknown = choosePaper !== null;
  const sheets = plan.papers.reduce((sum, { plan: { sheets }, spoiled }) => sum + sheets + spoiled, 0);
  return (
    <section
      className={classNames('event-sum', stale && 'is-stale')}
      aria-labelledby="event-sum-head"
      aria-busy={stale}
    >
      <h2 id="event-sum-head">{words.event.comesTo}</h2>
      {choosePaper}
      <dl>
        <div>
          <dt>{words.event.toMake}</dt>
          <dd>
            <strong>{plan.making}</strong> {words.event.ofThem(plan.ordered, plan.making - plan.ordered)}
            <WhyOpening of={words.event.toMake} why={whyBoxes(plan, event.spares)} />
          </dd>
        </div>
        <div>
          <dt>
            <Link className="link-alone" to={pageAddress(workbook, 'sheets')}>
              {words.pages.sheets}
            </Link>
          </dt>
          <dd>
            <strong>{unknown ? words.frame.choosePaper : sheets}</strong>{' '}
            {plan.papers.map(({ name, plan: each }) => words.event.sheetsOf(each.sheets, name)).join(', ')}
            {!unknown && <WhyOpening of={words.pages.sheets} why={whySheets(plan)} />}
          </dd>
        </div>
        <div>
          <dt>
            <Link className="link-alone" to={pageAddress(workbook, 'shopping')}>
              {words.pages.shopping}
            </Link>
          </dt>
          <dd>
            {unknown ? (
              <strong>{words.frame.choosePaper}</strong>
            ) : whole ? (
              <>
                <strong>{money(plan.cost.buying.totalMinor)}</strong>{' '}
                {words.event.eachFavor(money(plan.cost.using.perFavorMinor))}
                <WhyOpening of={words.pages.shopping} why={whyCost(plan)} currency={plan.cost.currency} />
              </>
            ) : (
              words.buying.leftOut
            )}
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
            <WhyOpening of={words.pages.bench} why={whyHours(plan)} />
          </dd>
        </div>
      </dl>
      <EventFindings findings={plan.findings} mendOf={mendOf} />
    </section>
  );
}
