import type { Sitting, Timetable } from '../../core/plan';
import { usePageWords } from '../../ui/words';

/** The stages day by day, as bars along the day and as times. */
export function TimetableView({ timetable: { sittings, readyOn, waits } }: { timetable: Timetable }) {
  const words = usePageWords();
  const days = [...new Set(sittings.map(({ date }) => date))];
  const starts = Math.min(...sittings.map(({ startMinute }) => startMinute));
  const ends = Math.max(...sittings.map(endOf));
  return (
    <div className="timetable">
      <ol>
        {days.map((date) => {
          const mine = sittings.filter((sitting) => sitting.date === date);
          return (
            <li key={date} className="timetable-day">
              <h3>{words.hours.day(date)}</h3>
              <svg viewBox={`0 0 ${ends - starts} 10`} preserveAspectRatio="none" aria-hidden="true">
                {mine.map(({ startMinute, minutes }, place) => (
                  <rect
                    key={startMinute}
                    className={place % 2 === 0 ? 'sitting' : 'sitting sitting-other'}
                    x={startMinute - starts}
                    y={0}
                    width={minutes}
                    height={10}
                  />
                ))}
              </svg>
              <ul>
                {mine.map((sitting) => (
                  <li key={sitting.startMinute}>
                    <span className="sitting-times">
                      {words.hours.ofDay(sitting.startMinute)}–{words.hours.ofDay(endOf(sitting))}
                    </span>{' '}
                    {words.run.acts[sitting.act]}
                  </li>
                ))}
              </ul>
            </li>
          );
        })}
      </ol>
      {sittings.some(({ act }) => waits[act]) && (
        <ul className="soft">
          {Object.entries(waits).flatMap(([act, minutes]) => {
            const sitting = sittings.find((each) => each.act === act);
            return sitting && minutes > 0
              ? [<li key={act}>{words.hours.wait(words.run.acts[sitting.act], minutes)}</li>]
              : [];
          })}
        </ul>
      )}
      <p className="soft">{words.hours.ready(words.hours.day(readyOn))}</p>
    </div>
  );
}

const endOf = ({ startMinute, minutes }: Sitting): number => startMinute + minutes;
