import type { FavorEvent, Lesson } from '../../../shared/workbook';
import { decimalsOf, type EventPlan, type LessonPlan, lessonOf, printMoney } from '../../core/plan';
import { WideBox } from '../../ui/drawing/wide-box';
import { CountStepper } from '../../ui/fields/count-stepper';
import { NumberField } from '../../ui/fields/number-field';
import { TextField } from '../../ui/fields/text-field';
import { WhyOpening } from '../../ui/frame/working';
import { usePageWords, useSay } from '../../ui/words';
import type { EventEdits } from './event-edits';
import { ACTS } from './spares-form';

interface LessonFormProps {
  readonly event: FavorEvent;
  readonly edits: EventEdits;
  readonly plan: EventPlan;
}

/** A class as its teacher runs it: what is done ahead, what is shown, the learners' pace; and the timetable, prices and list to bring. */
export function LessonForm({ event, edits, plan }: LessonFormProps) {
  const { event: words, run } = usePageWords();
  const lesson = lessonOf(event);
  const set = (label: string, part: Partial<Lesson>) => void edits.setLesson(label, part);
  const count = (label: string, help: string, value: number, to: (next: number) => Partial<Lesson>) => (
    <div className="field">
      <span className="field-name">{label}</span>
      <CountStepper label={label} value={value} most={50} onChange={(next) => set(label, to(next))} />
      <p className="field-note">{help}</p>
    </div>
  );
  const minutes = (label: string, value: number, to: (next: number) => Partial<Lesson>) => (
    <NumberField
      label={label}
      unit="min"
      value={value}
      least={0}
      most={240}
      onChange={(next) => set(label, to(next))}
    />
  );
  return (
    <div className="lesson-form">
      <h3>{words.lessonHead}</h3>
      <p className="soft">{words.lessonWhy}</p>
      <fieldset className="lesson-ahead">
        <legend>{words.ahead}</legend>
        {ACTS.filter((act) => act !== 'cut').map((act) => (
          <label key={act} className="guest-tick">
            <input
              type="checkbox"
              checked={lesson.ahead.includes(act)}
              onChange={({ target }) =>
                set(words.ahead, {
                  ahead: target.checked ? [...lesson.ahead, act] : lesson.ahead.filter((one) => one !== act),
                })
              }
            />
            {run.acts[act]}
          </label>
        ))}
      </fieldset>
      <div className="event-fields event-fields-narrow">
        {count(words.samples, words.samplesHelp, lesson.samples, (samples) => ({ samples }))}
        {count(words.demonstrations, words.demonstrationsHelp, lesson.demonstrations, (demonstrations) => ({
          demonstrations,
        }))}
        <NumberField
          label={words.learnerPace}
          help={words.learnerPaceHelp}
          unit="%"
          value={lesson.learnerPercent}
          least={100}
          most={1000}
          onChange={(learnerPercent) => set(words.learnerPace, { learnerPercent })}
        />
        <TextField
          label={words.startsAt}
          type="time"
          value={`${two(Math.floor(lesson.startMinute / 60))}:${two(lesson.startMinute % 60)}`}
          onChange={(typed) => {
            const [hours, mins] = typed.split(':').map(Number);
            if (hours !== undefined && mins !== undefined)
              set(words.startsAt, { startMinute: hours * 60 + mins });
          }}
        />
        {minutes(words.welcome, lesson.welcomeMinutes, (welcomeMinutes) => ({ welcomeMinutes }))}
        {minutes(words.pause, lesson.breakMinutes, (breakMinutes) => ({ breakMinutes }))}
        {minutes(words.tidy, lesson.tidyMinutes, (tidyMinutes) => ({ tidyMinutes }))}
        <RoomField event={event} plan={plan} set={set} />
      </div>
      {plan.lesson && <Lessons plan={plan} lesson={plan.lesson} />}
    </div>
  );
}

const two = (number: number): string => `${number}`.padStart(2, '0');

interface RoomFieldProps {
  readonly event: FavorEvent;
  readonly plan: EventPlan;
  readonly set: (label: string, part: Partial<Lesson>) => void;
}

function RoomField({ event, plan, set }: RoomFieldProps) {
  const { event: words } = usePageWords();
  const decimals = decimalsOf(plan.cost.currency);
  return (
    <NumberField
      label={words.room}
      unit={plan.cost.currency}
      decimals={decimals}
      value={lessonOf(event).roomMinor}
      least={0}
      most={1_000_000}
      onChange={(roomMinor) => set(words.room, { roomMinor })}
    />
  );
}

/** The timetable, the two prices and what to bring. */
function Lessons({ plan, lesson }: { plan: EventPlan; lesson: LessonPlan }) {
  const { event: words, run, hours, locale } = usePageWords();
  const say = useSay();
  const money = (minor: number) => printMoney(minor, plan.cost.currency, locale);
  const named = {
    welcome: words.welcome,
    wait: words.lessonWait,
    break: words.pause,
    tidy: words.tidy,
  } as const;
  const inMinutes = (seconds: number) => (seconds === 0 ? '' : `${Math.ceil(seconds / 60)} min`);
  return (
    <>
      <WideBox label={words.lessonTable}>
        <table className="event-table">
          <caption>
            {words.lessonTable} <span className="soft">{words.lessonLong(lesson.minutes)}</span>
          </caption>
          <thead>
            <tr>
              <th scope="col">{words.lessonFrom}</th>
              <th scope="col">{words.lessonPart}</th>
              <th scope="col">{words.working}</th>
              <th scope="col">{words.lessonShow}</th>
              <th scope="col">{words.lessonDo}</th>
            </tr>
          </thead>
          <tbody>
            {lesson.steps.map(({ kind, act, startMinute, minutes, showSeconds, workSeconds }) => (
              <tr key={startMinute}>
                <td>{hours.ofDay(startMinute)}</td>
                <th scope="row">{kind === 'act' ? act && act !== 'set-up' && run.acts[act] : named[kind]}</th>
                <td>{`${minutes} min`}</td>
                <td>{inMinutes(showSeconds)}</td>
                <td>{inMinutes(workSeconds)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </WideBox>
      {lesson.perKit && lesson.perSeat ? (
        <div>
          <p>
            <strong>{money(lesson.perKit.perFavorMinor)}</strong> {words.perKit}
          </p>
          <WhyOpening of={words.perKit} why={lesson.perKit.why} currency={plan.cost.currency} />
          <p>
            <strong>{money(lesson.perSeat.perFavorMinor)}</strong> {words.perSeat}
          </p>
          <WhyOpening of={words.perSeat} why={lesson.perSeat.why} currency={plan.cost.currency} />
        </div>
      ) : (
        <p className="soft">{words.noLessonPrice}</p>
      )}
      <div>
        <h3>{words.bring}</h3>
        <ul>
          {lesson.bring.map(({ what, count, care }) => (
            <li key={what}>
              {words.bringItem(say(what), count)}
              {care !== null && <p className="soft">{say(care)}</p>}
            </li>
          ))}
        </ul>
      </div>
    </>
  );
}
