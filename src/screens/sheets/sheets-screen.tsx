import { useMemo } from 'react';
import { Link, useOutletContext } from 'react-router';
import { cuttingToolOf, leftOutOf } from '../../core/plan';
import { ownOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { pageAddress } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import { classNames } from '../../ui/frame/class-names';
import { EventFindings } from '../../ui/frame/event-findings';
import type { OpenWorkbook } from '../../ui/frame/open-workbook';
import { PlanWait } from '../../ui/frame/plan-wait';
import { PrintActs } from '../../ui/frame/print-acts';
import { usePrinter } from '../../ui/frame/printer';
import { usePageWords } from '../../ui/words';
import { MixPanel } from './mix-panel';
import { OneSheetOfEach } from './one-sheet-of-each';
import { PaperComparison } from './paper-comparison';
import { PlannedPaperView } from './planned-paper-view';
import { WhatIfPanel } from './what-if-panel';
import './sheets.css';

/** How many sheets, cut how? Each paper's layouts with the proof of their count; for a recipe alone, what one sheet gives. */
export function SheetsScreen() {
  const { workbook, recipe, event, plan, stale, bettering, settle, failed, again, mendOf, choosePaper } =
    useOutletContext<OpenWorkbook>();
  const words = usePageWords().sheets;
  const printer = usePrinter();
  const tools = useWorkbook((state) => state.rows.tools);
  const tool = useMemo(
    () => cuttingToolOf(tools.get(event?.toolId ?? '') ?? ownOf(tools)[0]),
    [tools, event?.toolId],
  );
  if (!event) return recipe && <OneSheetOfEach recipe={recipe} />;
  if (event.lines.length === 0)
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
  return (
    <div className={classNames('sheets-page', stale && 'is-stale')} aria-busy={stale}>
      <EventFindings mendOf={mendOf} findings={leftOutOf(plan)} />
      {choosePaper}
      <div className="bettering" role="status">
        {bettering && (
          <>
            <p>{words.bettering}</p>
            <Button onClick={settle}>{words.settle}</Button>
          </>
        )}
      </div>
      {plan.papers.map((planned) => (
        <PlannedPaperView
          key={planned.paperId}
          planned={planned}
          tool={tool}
          event={event}
          lines={plan.lines}
        />
      ))}
      {plan.papers.length > 0 && (
        <PrintActs
          acts={[{ label: words.print, tone: 'act', make: (paper) => printer.cuttingSheets(plan, paper) }]}
        />
      )}
      <PaperComparison event={event} plan={plan} tool={tool} />
      <MixPanel event={event} plan={plan} />
      <WhatIfPanel event={event} plan={plan} />
    </div>
  );
}
