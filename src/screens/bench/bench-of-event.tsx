import { Sun } from 'lucide-react';
import { useState } from 'react';
import { Link, useSearchParams } from 'react-router';
import type { FavorEvent } from '../../../shared/workbook';
import { Button } from '../../ui/fields/button';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { pageAddress } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import type { OpenWorkbook } from '../../ui/frame/open-workbook';
import { PlanWait } from '../../ui/frame/plan-wait';
import { usePageWords } from '../../ui/words';
import { HoursView } from './hours-view';
import { RunView } from './run-view';
import { useWakeLock } from './wake-lock';

type View = 'run' | 'card' | 'hours';

interface BenchOfEventProps extends Pick<OpenWorkbook, 'plan' | 'failed' | 'again'> {
  readonly event: FavorEvent;
  readonly card: React.ReactNode;
}

/** An event at the bench: the run sheet, the card of one of its boxes, or how long it all takes. */
export function BenchOfEvent({ event, plan, failed, again, card }: BenchOfEventProps) {
  const words = usePageWords().run;
  const [view, setView] = useState<View>('run');
  const [keep, setKeep] = useState(false);
  const [, setSearch] = useSearchParams();
  const awake = useWakeLock(view === 'run' && keep);
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
        {view === 'run' && !keep && (
          <Button
            tone="quiet"
            className="bench-keep"
            aria-label={words.keepAwake}
            icon={<Sun aria-hidden="true" />}
            onClick={() => setKeep(true)}
          >
            <span>{words.keepAwake}</span>
          </Button>
        )}
        <p className="soft bench-awake" role="status">
          {awake === 'on' ? words.awake : awake === 'no' ? words.noAwake : ''}
        </p>
      </div>
      {view === 'card' && card}
      {view !== 'card' && !plan && <PlanWait failed={failed} again={again} working={words.working} />}
      {view === 'run' && plan && (
        <RunView
          event={event}
          plan={plan}
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
