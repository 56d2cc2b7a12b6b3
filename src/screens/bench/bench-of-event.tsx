import { useState } from 'react';
import { Link, useSearchParams } from 'react-router';
import type { FavorEvent } from '../../../shared/workbook';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { pageAddress } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import type { OpenWorkbook } from '../../ui/frame/open-workbook';
import { PlanWait } from '../../ui/frame/plan-wait';
import { usePageWords } from '../../ui/words';
import { HoursView } from './hours-view';
import { KeepAwake } from './keep-awake';
import { RunView } from './run-view';

type View = 'run' | 'card' | 'hours';

interface BenchOfEventProps extends Pick<OpenWorkbook, 'plan' | 'recipes' | 'failed' | 'again'> {
  readonly event: FavorEvent;
  readonly card: React.ReactNode;
}

/** An event at the bench: the run sheet, the card of one of its boxes, or how long it all takes. */
export function BenchOfEvent({ event, plan, recipes, failed, again, card }: BenchOfEventProps) {
  const words = usePageWords().run;
  const [view, setView] = useState<View>('run');
  const [, setSearch] = useSearchParams();
  const workbook = { kind: 'event', id: event.id } as const;
  if (event.lines.length === 0)
    return (
      <BlankState
        title={words.noRun}
        act={
          <Link className="button button-act" to={pageAddress(workbook, 'event')}>
            {words.toEvent}
          </Link>
        }
      >
        <p>{words.noRunWhy}</p>
      </BlankState>
    );
  return (
    <div className="bench-of-event">
      <div className="bench-views screen-only">
        <ChoiceStrip
          label={words.view}
          value={view}
          choices={[
            { id: 'run', label: words.viewRun },
            { id: 'card', label: words.viewCard },
            { id: 'hours', label: words.viewHours },
          ]}
          onChange={setView}
        />
        <KeepAwake wanted={view === 'run'} />
      </div>
      {view === 'card' && card}
      {view !== 'card' && !plan && <PlanWait failed={failed} again={again} working={words.working} />}
      {view === 'run' && plan && (
        <RunView
          event={event}
          plan={plan}
          recipes={recipes}
          onCard={(recipe) => {
            setSearch({ recipe }, { replace: true });
            setView('card');
          }}
        />
      )}
      {view === 'hours' && plan && <HoursView event={event} plan={plan} />}
    </div>
  );
}
