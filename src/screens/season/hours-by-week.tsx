import type { SeasonPlan } from '../../core/plan';
import { useWorkbook } from '../../state/use-workbook';
import { WideBox } from '../../ui/drawing/wide-box';
import { NumberField } from '../../ui/fields/number-field';
import { usePageWords } from '../../ui/words';

/** So many hours beside everything else. source: common practice, no source */
const USUAL_HOURS = 10;

interface HoursByWeekProps {
  readonly season: SeasonPlan;
  readonly nameOf: (eventId: string) => string;
}

/** The work of each week against the hours there are, and the days that two events want. */
export function HoursByWeek({ season: { weeks, clashes }, nameOf }: HoursByWeekProps) {
  const { season: words, event, hours, shelf } = usePageWords();
  const has = useWorkbook((state) => state.settings.weekHours) ?? USUAL_HOURS;
  const changeSettings = useWorkbook((state) => state.changeSettings);
  const names = (ids: readonly string[]) => ids.map(nameOf).join(', ');
  return (
    <section aria-labelledby="season-hours">
      <h2 id="season-hours">{words.hoursHead}</h2>
      {weeks.length === 0 ? (
        <p className="soft">{words.noHours}</p>
      ) : (
        <>
          <div className="season-has">
            <NumberField
              label={words.weekHours}
              unit="h"
              value={has}
              least={0}
              most={168}
              onChange={(weekHours) => void changeSettings({ weekHours })}
            />
          </div>
          <WideBox label={words.hoursHead}>
            <table className="season-table">
              <caption className="said-only">{words.hoursHead}</caption>
              <thead>
                <tr>
                  <th scope="col">{words.week}</th>
                  <th scope="col">{words.working}</th>
                  <th scope="col">{words.event}</th>
                </tr>
              </thead>
              <tbody>
                {weeks.map(({ monday, minutes, byEvent }) => (
                  <tr key={monday}>
                    <th scope="row">{shelf.onDate(monday)}</th>
                    <td>
                      {event.hours(minutes)}
                      {minutes > has * 60 && (
                        <strong className="season-over">{words.over(event.hours(minutes - has * 60))}</strong>
                      )}
                    </td>
                    <td>
                      {byEvent.map((each) => (
                        <div key={each.eventId}>
                          {nameOf(each.eventId)}: {event.hours(each.minutes)}
                        </div>
                      ))}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </WideBox>
        </>
      )}
      <h3>{words.clashHead}</h3>
      {clashes.length === 0 ? (
        <p className="soft">{words.noClash}</p>
      ) : (
        <ul>
          {clashes.map(({ kind, date, eventIds, minutes, hasMinutes }) => (
            <li key={`${kind} ${date}`}>
              {kind === 'same-date'
                ? words.sameDate(hours.day(date), names(eventIds))
                : words.tooFull(
                    hours.day(date),
                    names(eventIds),
                    event.hours(minutes),
                    event.hours(hasMinutes),
                  )}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
