import { CalendarPlus } from 'lucide-react';
import { Link } from 'react-router';
import type { FavorEvent } from '../../../shared/workbook';
import type { EventPlan } from '../../core/plan';
import { pageAddress } from '../../ui/frame/addresses';
import { Opening } from '../../ui/frame/opening';
import { PrintActs } from '../../ui/frame/print-acts';
import { usePrinter } from '../../ui/frame/printer';
import { usePageWords } from '../../ui/words';
import { LearningForm } from './learning-form';
import { TrialBoxes } from './trial-boxes';
import './hours.css';

/** How long the batch takes, by which arithmetic, and when it is done. */
export function HoursView({ event, plan }: { event: FavorEvent; plan: EventPlan }) {
  const words = usePageWords();
  const printer = usePrinter();
  return (
    <div className="hours-page">
      <HoursSum plan={plan} />
      <TrialBoxes event={event} />
      <LearningForm event={event} />
      <section aria-labelledby="when-head">
        <h2 id="when-head">{words.hours.when}</h2>
        {plan.timetable ? (
          <p>
            {words.hours.between(
              words.hours.day(plan.timetable.startsOn),
              words.hours.day(plan.timetable.readyOn),
            )}
          </p>
        ) : (
          <p className="soft">{words.hours.noDate}</p>
        )}
        <Link className="button button-quiet" to={pageAddress({ kind: 'event', id: event.id }, 'event')}>
          {words.hours.toPace}
        </Link>
      </section>
      <PrintActs
        acts={[
          { label: words.hours.print, tone: 'act', make: (paper) => printer.runSheet(plan, paper) },
          ...(plan.timetable
            ? [
                {
                  label: words.hours.calendar,
                  icon: <CalendarPlus aria-hidden="true" />,
                  make: () => printer.calendar(plan),
                },
              ]
            : []),
        ]}
      />
    </div>
  );
}

function HoursSum({ plan: { hours } }: { plan: EventPlan }) {
  const words = usePageWords();
  const { time } = words.hours;
  const firsts = (count: number) => count.toFixed(2);
  const averageTotal =
    ((hours.steadyBoxSeconds * hours.firstBoxes.average + hours.setUpSeconds) *
      (100 + hours.allowancePercent)) /
    100;
  return (
    <section aria-labelledby="hours-head">
      <h2 id="hours-head">{words.hours.head}</h2>
      <Opening
        open
        head={
          <>
            <strong className="hours-number">{time(hours.totalSeconds)}</strong> {words.hours.total}
          </>
        }
      >
        <ul className="working">
          {hours.stages.map(({ act, label, times, secondsEach, seconds }) => (
            <li key={act}>{words.hours.stage(label, times, secondsEach, time(seconds))}</li>
          ))}
          {hours.learningPercent < 100 && (
            <li>
              {words.hours.learned(hours.boxes, hours.learningPercent, firsts(hours.firstBoxes.unit))}{' '}
              {time(hours.steadySeconds)} → {time(hours.workSeconds)}
            </li>
          )}
          <li>{words.hours.setUps(hours.stages.length, time(hours.setUpEach), time(hours.setUpSeconds))}</li>
          <li>{words.hours.restOf(hours.allowancePercent, time(hours.restSeconds))}</li>
          {hours.makers > 1 && <li>{words.hours.shared(hours.makers, time(hours.elapsedSeconds))}</li>}
        </ul>
        {hours.learningPercent < 100 && (
          <Opening head={words.hours.otherTheory}>
            <p className="soft">
              {words.hours.average(hours.boxes, firsts(hours.firstBoxes.average), time(averageTotal))}
            </p>
          </Opening>
        )}
      </Opening>
    </section>
  );
}
