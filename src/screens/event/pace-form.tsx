import { HAND_TIMES } from '../../../shared/catalogue';
import type { FavorEvent } from '../../../shared/workbook';
import { USUAL_PACE } from '../../core/plan';
import { NumberField } from '../../ui/fields/number-field';
import { Opening } from '../../ui/frame/opening';
import { usePageWords, useSay } from '../../ui/words';
import type { EventEdits } from './event-edits';
import { ACTS } from './spares-form';

/** Makers, days, and the maker's own seconds for an act in place of the usual ones. */
export function PaceForm({ event, edits }: { event: FavorEvent; edits: EventEdits }) {
  const words = usePageWords();
  const say = useSay();
  const pace = event.pace ?? USUAL_PACE;
  return (
    <Opening head={<strong>{words.event.paceHead}</strong>}>
      <div className="event-fields event-fields-narrow">
        <NumberField
          label={words.hours.makers}
          value={pace.makers}
          least={1}
          most={50}
          onChange={(makers) => edits.setPace(words.hours.makers, { makers })}
        />
        <NumberField
          label={words.hours.dayMinutes}
          unit={words.hours.minutes}
          value={pace.dayMinutes}
          least={15}
          most={1440}
          onChange={(dayMinutes) => edits.setPace(words.hours.dayMinutes, { dayMinutes })}
        />
        <NumberField
          label={words.hours.daysFree}
          unit={words.hours.days}
          value={pace.daysFree}
          least={0}
          most={60}
          onChange={(daysFree) => edits.setPace(words.hours.daysFree, { daysFree })}
        />
      </div>
      <p className="soft">{words.event.paceWhy}</p>
      <div className="event-fields event-fields-narrow">
        {ACTS.map((act) => {
          const time = HAND_TIMES.find((each) => each.act === act);
          if (!time) return null;
          const usual = time.seconds;
          const seconds = pace.seconds.find((each) => each.act === act)?.seconds ?? usual;
          return (
            <NumberField
              key={act}
              label={words.run.acts[act]}
              help={words.event.usualSeconds(say(time.label), usual)}
              unit="s"
              value={seconds}
              least={1}
              most={3600}
              onChange={(next) =>
                edits.setPace(words.event.seconds(say(time.label)), {
                  seconds: [
                    ...pace.seconds.filter((each) => each.act !== act),
                    ...(next === usual ? [] : [{ act, seconds: next }]),
                  ],
                })
              }
            />
          );
        })}
      </div>
    </Opening>
  );
}
