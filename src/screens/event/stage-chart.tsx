import type { Sitting, Timetable } from '../../core/plan';
import { WideBox } from '../../ui/drawing/wide-box';
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

const ROW = 26;
const HEAD = 22;
const NAME = 150;
const WIDE = 720;

function Chart({ timetable: { sittings, startsOn, readyOn, waits } }: { timetable: Timetable }) {
  const words = usePageWords();
  const days = [...new Set(sittings.map(({ date }) => date))];
  const starts = Math.min(...sittings.map(({ startMinute }) => startMinute));
  const long = Math.max(...sittings.map(endOf)) - starts;
  const day = (WIDE - NAME) / days.length;
  const at = ({ date, startMinute }: Sitting) =>
    NAME + day * days.indexOf(date) + 4 + ((startMinute - starts) / long) * (day - 8);
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
      <WideBox label={words.event.chart}>
        <svg
          className="stage-chart"
          viewBox={`0 0 ${WIDE} ${HEAD + ROW * stages.length}`}
          role="img"
          aria-label={words.event.chart}
        >
          {days.map((date, i) => (
            <g key={date}>
              <path className="stage-day" d={`M${NAME + day * i} 0V${HEAD + ROW * stages.length}`} />
              <text className="stage-date" x={NAME + day * (i + 0.5)} y={14} textAnchor="middle">
                {day > 70 ? words.hours.day(date) : `${Number(date.slice(5, 7))}/${Number(date.slice(8))}`}
              </text>
            </g>
          ))}
          {stages.map(({ act, sittings: mine }, row) => (
            <g key={act}>
              <path className="stage-row" d={`M0 ${HEAD + ROW * row}H${WIDE}`} />
              <text x={0} y={HEAD + ROW * (row + 0.68)}>
                {words.run.acts[act]}
              </text>
              {mine.map((sitting) => (
                <rect
                  key={`${sitting.date} ${sitting.startMinute}`}
                  className="stage-bar"
                  x={at(sitting)}
                  y={HEAD + ROW * row + 5}
                  width={Math.max(2, (sitting.minutes / long) * (day - 8))}
                  height={ROW - 10}
                />
              ))}
            </g>
          ))}
        </svg>
      </WideBox>
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
