import type { Sitting, Timetable } from '../../core/plan';
import { WideBox } from '../../ui/drawing/wide-box';
import { classNames } from '../../ui/frame/class-names';
import { usePageWords } from '../../ui/words';

interface StageBar {
  readonly act: Sitting['act'];
  readonly sittings: readonly Sitting[];
  readonly minutes: number;
}

const endOf = ({ startMinute, minutes }: Sitting): number => startMinute + minutes;

/** The stages one below the other, days side by side, each sitting as a bar where it falls; and the same as a table. */
export function StageChart({ timetable }: { timetable: Timetable | null }) {
  const words = usePageWords();
  return (
    <section className="event-when" aria-labelledby="event-when-head">
      <h2 id="event-when-head">{words.event.whenHead}</h2>
      {timetable ? <Chart timetable={timetable} /> : <p className="soft">{words.event.noDate}</p>}
    </section>
  );
}

/** A day is drawn this wide and stretched to the room there is; sittings keep clear of its edges. */
const DAY = 100;
const CLEAR = 5;
const ROW = 26;
/** Days whose dates stand side by side on a phone. */
const FEW_DAYS = 5;

function Chart({ timetable: { sittings, startsOn, readyOn, waits } }: { timetable: Timetable }) {
  const words = usePageWords();
  const days = [...new Set(sittings.map(({ date }) => date))];
  const starts = Math.min(...sittings.map(({ startMinute }) => startMinute));
  const long = Math.max(...sittings.map(endOf)) - starts;
  const across = DAY - 2 * CLEAR;
  const at = ({ date, startMinute }: Sitting) =>
    DAY * days.indexOf(date) + CLEAR + ((startMinute - starts) / long) * across;
  const stages = stagesOf(sittings);
  const when = (sitting: Sitting, minute: number) =>
    `${words.hours.day(sitting.date)}, ${words.hours.ofDay(minute)}`;
  return (
    <>
      <p>
        {words.event.startOn(words.hours.day(startsOn), words.hours.day(readyOn))}{' '}
        {stages
          .flatMap(({ act }) => {
            const minutes = waits[act] ?? 0;
            return minutes > 0 ? [words.event.wait(words.run.acts[act], minutes)] : [];
          })
          .join(' ')}
      </p>
      <div className="stage-chart" role="img" aria-label={words.event.chart}>
        <div className={classNames('stage-dates', days.length > FEW_DAYS && 'stage-dates-many')}>
          {days.map((date) => (
            <span key={date}>
              <span className="stage-date-long">{words.hours.day(date)}</span>
              <span className="stage-date-short">{words.hours.shortDay(date)}</span>
            </span>
          ))}
        </div>
        {stages.map(({ act, sittings: mine }) => (
          <div key={act} className="stage-row">
            <span>{words.run.acts[act]}</span>
            <svg viewBox={`0 0 ${DAY * days.length} ${ROW}`} preserveAspectRatio="none" aria-hidden="true">
              {days.map((date, i) => (
                <path key={date} className="stage-day" d={`M${DAY * i} 0V${ROW}`} />
              ))}
              {mine.map((sitting) => (
                <rect
                  key={`${sitting.date} ${sitting.startMinute}`}
                  className="stage-bar"
                  x={at(sitting)}
                  y={5}
                  width={Math.max(1, (sitting.minutes / long) * across)}
                  height={ROW - 10}
                />
              ))}
            </svg>
          </div>
        ))}
      </div>
      <WideBox label={words.event.whenHead}>
        <table className="event-table">
          <thead>
            <tr>
              <th scope="col">{words.event.stage}</th>
              <th scope="col">{words.event.begins}</th>
              <th scope="col">{words.event.ends}</th>
              <th scope="col">{words.event.working}</th>
            </tr>
          </thead>
          <tbody>
            {stages.map(({ act, sittings: mine, minutes }) => {
              const [first, last] = [mine[0], mine.at(-1)];
              return (
                <tr key={act}>
                  <th scope="row">{words.run.acts[act]}</th>
                  <td>{first && when(first, first.startMinute)}</td>
                  <td>{last && when(last, endOf(last))}</td>
                  <td>{words.event.hours(minutes)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </WideBox>
    </>
  );
}

/** Sittings by stage, in the order of the batch. */
function stagesOf(sittings: readonly Sitting[]): readonly StageBar[] {
  const acts = [...new Set(sittings.map(({ act }) => act))];
  return acts.map((act) => {
    const mine = sittings.filter((sitting) => sitting.act === act);
    return { act, sittings: mine, minutes: mine.reduce((sum, { minutes }) => sum + minutes, 0) };
  });
}
