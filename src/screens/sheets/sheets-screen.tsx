import { Link, useOutletContext } from 'react-router';
import { pageAddress } from '../../ui/addresses';
import { BlankState } from '../../ui/blank-state';
import { classNames } from '../../ui/class-names';
import { EventFindings } from '../../ui/event-findings';
import type { OpenWorkbook } from '../../ui/open-workbook';
import { useWords } from '../../ui/words';
import { OneSheetOfEach } from './one-sheet-of-each';
import { PaperComparison } from './paper-comparison';
import { PlannedPaperView } from './planned-paper-view';
import './sheets.css';

/** How many sheets, cut how? Each paper's layouts with the proof of their count; for a recipe alone, what one sheet gives. */
export function SheetsScreen() {
  const { workbook, recipe, event, plan, stale } = useOutletContext<OpenWorkbook>();
  const words = useWords().sheets;
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
  if (!plan) return <p className="soft">{words.working}</p>;
  return (
    <div className={classNames('sheets-page', stale && 'is-stale')} aria-busy={stale}>
      <EventFindings
        findings={plan.findings.filter(({ code }) => code.startsWith('part-') || code === 'paper-missing')}
      />
      {plan.papers.map((planned) => (
        <PlannedPaperView key={planned.paperId} planned={planned} />
      ))}
      <PaperComparison event={event} plan={plan} />
    </div>
  );
}
