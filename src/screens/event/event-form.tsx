import type { FavorEvent } from '../../../shared/workbook';
import type { EventPlan } from '../../core/plan';
import { useWorkbook } from '../../state/use-workbook';
import { CountStepper } from '../../ui/count-stepper';
import type { MendOf } from '../../ui/event-findings';
import { NumberField } from '../../ui/number-field';
import { SelectField, TextField } from '../../ui/text-field';
import { usePageWords } from '../../ui/words';
import { AddLine } from './add-line';
import { useEventEdits } from './event-edits';
import { EventLineRow } from './event-line-row';
import { EventSum } from './event-sum';
import './event.css';

interface EventFormProps {
  readonly event: FavorEvent;
  readonly plan: EventPlan | null;
  readonly stale: boolean;
  readonly mendOf: MendOf;
}

/** Lines of an event (a recipe, its paper, how many), spares, date and tape; beside them what it comes to. */
export function EventForm({ event, plan, stale, mendOf }: EventFormProps) {
  const words = usePageWords().event;
  const edits = useEventEdits(event.id);
  const supplies = useWorkbook((state) => state.rows.supplies);
  const tapes = [...supplies.values()].filter(({ kind }) => kind === 'tape');
  return (
    <div className="event-page">
      <section className="event-lines" aria-labelledby="event-lines-head">
        <h2 id="event-lines-head">{words.lines}</h2>
        {event.lines.length === 0 && <p className="soft">{words.noLines}</p>}
        <ul>
          {event.lines.map((line) => (
            <EventLineRow
              key={line.id}
              line={line}
              edits={edits}
              planned={plan?.lines.find(({ lineId }) => lineId === line.id)}
            />
          ))}
        </ul>
        <AddLine event={event} edits={edits} />
      </section>
      <section className="event-rules" aria-labelledby="event-rules-head">
        <h2 id="event-rules-head">{words.rules}</h2>
        <TextField label={words.date} type="date" value={event.date ?? ''} onChange={edits.setDate} />
        <NumberField
          label={words.spares}
          unit="%"
          value={event.spares.percent}
          least={0}
          most={100}
          onChange={(percent) => edits.setSpares({ ...event.spares, percent })}
          help={words.sparesHelp}
        />
        <div className="field">
          <span className="field-name">{words.atLeast}</span>
          <CountStepper
            label={words.atLeast}
            value={event.spares.atLeast}
            onChange={(atLeast) => edits.setSpares({ ...event.spares, atLeast })}
          />
        </div>
        <SelectField
          label={words.tape}
          value={event.tapeId ?? ''}
          choices={[{ id: '', label: words.noTape }, ...tapes.map(({ id, name }) => ({ id, label: name }))]}
          onChange={(id) => edits.setTape(id === '' ? null : id)}
        />
      </section>
      <EventSum plan={plan} stale={stale} eventId={event.id} mendOf={mendOf} />
    </div>
  );
}
