import { Link, useOutletContext } from 'react-router';
import { type EventPlan, leftOutOf, type RemarkCode } from '../../core/plan';
import { pageAddress } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import { classNames } from '../../ui/frame/class-names';
import { EventFindings } from '../../ui/frame/event-findings';
import type { OpenWorkbook } from '../../ui/frame/open-workbook';
import { PlanWait } from '../../ui/frame/plan-wait';
import { usePageWords } from '../../ui/words';
import { CostView } from './cost-view';
import { ShareList } from './share-list';
import { ShoppingTable } from './shopping-table';
import { TermsForm } from './terms-form';
import { Ways } from './till';
import './shopping.css';
import { PrintActs } from '../../ui/frame/print-acts';
import { usePrinter } from '../../ui/frame/printer';

/** What the plan remarks on that is mended by choosing or buying. */
const BUYING: ReadonlySet<string> = new Set<RemarkCode>([
  'tape-missing',
  'tape-too-wide',
  'glue-missing',
  'tie-missing',
  'pull-missing',
  'supply-missing',
  'longer-than-roll',
  'spoiled-beyond-spares',
  'order-below-minimum',
  'price-missing',
]);

/** What do I buy? Need, on hand, buy, packs and price; every total opens to its arithmetic. */
export function ShoppingScreen() {
  const { workbook, event, plan, stale, failed, again, mendOf, choosePaper, chooseTape } =
    useOutletContext<OpenWorkbook>();
  const { shopping: words, buying } = usePageWords();
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
  if (!plan) return <PlanWait failed={failed} again={again} working={words.working} />;
  const leftOut = leftOutOf(plan);
  return (
    <div className={classNames('shopping-page', stale && 'is-stale')} aria-busy={stale}>
      {choosePaper}
      {chooseTape}
      {leftOut.length > 0 && (
        <section aria-labelledby="left-out-head">
          <h2 id="left-out-head">{buying.leftOut}</h2>
          <p className="soft">{buying.leftOutWhy}</p>
          <EventFindings mendOf={mendOf} findings={leftOut} />
        </section>
      )}
      <ShoppingTable plan={plan} event={event} />
      <EventFindings
        mendOf={mendOf}
        findings={plan.findings.filter((finding) => BUYING.has(finding.code) && !leftOut.includes(finding))}
      />
      <div className="shopping-acts">
        <ShoppingActions plan={plan} />
        <ShareList plan={plan} />
      </div>
      {leftOut.length === 0 && <Ways plan={plan} />}
      <TermsForm event={event} />
      {leftOut.length === 0 && <CostView plan={plan} event={event} />}
    </div>
  );
}

/** The list on paper, and as a table for a spreadsheet. */
function ShoppingActions({ plan }: { plan: EventPlan }) {
  const words = usePageWords();
  const printer = usePrinter();
  return (
    <PrintActs
      acts={[
        { label: words.shopping.print, tone: 'act', make: (paper) => printer.shoppingList(plan, paper) },
        { label: words.printing.table, make: () => printer.shoppingTable(plan) },
      ]}
    />
  );
}
