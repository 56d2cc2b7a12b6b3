import type { FavorEvent } from '../../../shared/workbook';
import { CountStepper } from '../../ui/fields/count-stepper';
import { NumberField } from '../../ui/fields/number-field';
import { Opening } from '../../ui/frame/opening';
import { usePageWords } from '../../ui/words';
import type { EventEdits } from './event-edits';

/** Acts that may spoil a piece, in the order of the batch. */
export const ACTS = [
  'cut',
  'score',
  'slit',
  'fold',
  'place',
  'glue',
  'close-bottom',
  'tuck',
  'fill',
  'tie-bow',
] as const;

/** Practice pieces, and what every act spoils. */
export function SparesForm({ event, edits }: { event: FavorEvent; edits: EventEdits }) {
  const { event: words, run } = usePageWords();
  const { spares } = event;
  const byAct = spares.byAct ?? [];
  return (
    <Opening head={<strong>{words.sparesHead}</strong>}>
      <p className="soft">{words.sparesWhy}</p>
      <div className="event-fields">
        <div className="field">
          <span className="field-name">{words.practice}</span>
          <CountStepper
            label={words.practice}
            value={spares.practice ?? 0}
            most={100}
            onChange={(practice) => edits.setSpares({ ...spares, practice })}
          />
          <p className="field-note">{words.practiceHelp}</p>
        </div>
      </div>
      <h3>{words.perAct}</h3>
      <div className="event-fields event-fields-narrow">
        {ACTS.map((act) => (
          <NumberField
            key={act}
            label={run.acts[act]}
            unit="%"
            value={byAct.find((each) => each.act === act)?.percent ?? 0}
            least={0}
            most={90}
            onChange={(percent) =>
              edits.setSpares({
                ...spares,
                byAct: [
                  ...byAct.filter((each) => each.act !== act),
                  ...(percent > 0 ? [{ act, percent }] : []),
                ],
              })
            }
          />
        ))}
      </div>
    </Opening>
  );
}
