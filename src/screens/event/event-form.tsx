import type { ReactNode } from 'react';
import type { FavorEvent } from '../../../shared/workbook';
import { ACCURACIES, type EventPlan, listRunSheet, nameAccuracy, repeatEvent } from '../../core/plan';
import { ownOf, rowsOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { CountStepper } from '../../ui/fields/count-stepper';
import { useRuler } from '../../ui/fields/measure';
import { NumberField } from '../../ui/fields/number-field';
import { SelectField, TextField } from '../../ui/fields/text-field';
import type { MendOf } from '../../ui/frame/event-findings';
import { usePageWords } from '../../ui/words';
import { CarryForm } from './carry-form';
import { type EventEdits, useEventEdits } from './event-edits';
import { EventLineRow } from './event-line-row';
import { EventSum } from './event-sum';
import { GuestsForm } from './guests-form';
import { KitsForm } from './kits-form';
import { PaceForm } from './pace-form';
import { SparesForm } from './spares-form';
import { StageChart } from './stage-chart';
import './event.css';
import { CopyPlus, Plus } from 'lucide-react';
import { Link, useNavigate } from 'react-router';
import { Button } from '../../ui/fields/button';
import { pageAddress, START } from '../../ui/frame/addresses';

const FIRST_COUNT = 40;

interface EventFormProps {
  readonly event: FavorEvent;
  readonly plan: EventPlan | null;
  readonly stale: boolean;
  readonly mendOf: MendOf;
  readonly choosePaper: ReactNode;
  readonly chooseTape: ReactNode;
}

/** Lines of an event (a recipe, its paper, how many), spares, date and what holds it; what it comes to; and the rest, which opens. */
export function EventForm({ event, plan, stale, mendOf, choosePaper, chooseTape }: EventFormProps) {
  const words = usePageWords().event;
  const edits = useEventEdits(event.id);
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
              isKit={(event.kits ?? null) !== null}
              planned={plan?.lines.find(({ lineId }) => lineId === line.id)}
            />
          ))}
        </ul>
        <AddLine event={event} edits={edits} />
      </section>
      <EventRules event={event} edits={edits} chooseTape={chooseTape} />
      <EventSum choosePaper={choosePaper} plan={plan} stale={stale} event={event} mendOf={mendOf} />
      <div className="event-more">
        {(event.kits ?? null) === null && <GuestsForm event={event} edits={edits} />}
        <SparesForm event={event} edits={edits} />
        <KitsForm event={event} edits={edits} plan={plan} />
        <PaceForm event={event} edits={edits} />
        {(event.kits ?? null) === null && (
          <CarryForm event={event} edits={edits} carry={plan?.carry ?? null} />
        )}
        {plan && <RepeatEvent event={event} plan={plan} />}
        <p className="soft">{words.moreTo}</p>
      </div>
      {plan && plan.making > 0 && <StageChart timetable={plan.timetable} />}
    </div>
  );
}

interface RulesProps {
  readonly event: FavorEvent;
  readonly edits: EventEdits;
  readonly chooseTape: ReactNode;
}

/** When, how many more, and which tape, glue and tool. */
function EventRules({ event, edits, chooseTape }: RulesProps) {
  const words = usePageWords().event;
  const { supplies, tools } = useWorkbook((state) => state.rows);
  const named = (rows: Iterable<{ readonly id: string; readonly name: string }>) =>
    [...rows].map(({ id, name }) => ({ id, label: name }));
  const tapes = ownOf(supplies, event.tapeId).filter(({ kind }) => kind === 'tape');
  const glues = ownOf(supplies, event.glueId).filter(({ kind }) => kind === 'glue');
  const ownTools = ownOf(tools, event.toolId);
  return (
    <section className="event-rules" aria-labelledby="event-rules-head">
      <h2 id="event-rules-head">{words.rules}</h2>
      <TextField label={words.date} type="date" value={event.date ?? ''} onChange={edits.setDate} />
      <SparesSource event={event} edits={edits} />
      <NumberField
        label={words.spares}
        unit="%"
        value={event.spares.percent}
        least={0}
        most={100}
        onChange={(percent) => edits.setSpares({ ...event.spares, percent })}
        help={event.spares.offByMm === undefined ? words.sparesHelp : words.sparesOtherwise}
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
        choices={[{ id: '', label: words.noTape }, ...named(tapes)]}
        onChange={(id) => edits.setTape(id === '' ? null : id)}
      />
      {chooseTape}
      {(glues.length > 0 || event.glueId) && (
        <SelectField
          label={words.glue}
          value={event.glueId ?? ''}
          choices={[{ id: '', label: words.noGlue }, ...named(glues)]}
          onChange={(id) => edits.setGlue(id === '' ? null : id)}
        />
      )}
      {ownTools.length > 0 && (
        <SelectField
          label={words.tool}
          value={event.toolId ?? ''}
          choices={[{ id: '', label: words.noTool }, ...named(ownTools)]}
          onChange={(id) => edits.setTool(id === '' ? null : id)}
        />
      )}
    </section>
  );
}

const PERCENT = 'percent';

/** Whether spares are a percentage or what does not close at the maker's accuracy; what an event has from the other unit stays offered. */
function SparesSource({ event, edits }: { event: FavorEvent; edits: EventEdits }) {
  const words = usePageWords().event;
  const offered = ACCURACIES[useRuler().unit].map(({ mm }) => mm);
  const { offByMm, ...spares } = event.spares;
  const all = offByMm === undefined || offered.includes(offByMm) ? offered : [...offered, offByMm];
  return (
    <SelectField
      label={words.sparesFrom}
      value={offByMm === undefined ? PERCENT : `${offByMm}`}
      choices={[
        { id: PERCENT, label: words.fromPercent },
        ...all.map((mm) => ({ id: `${mm}`, label: words.fromAccuracy(nameAccuracy(mm)) })),
      ]}
      onChange={(id) => edits.setSpares(id === PERCENT ? spares : { ...spares, offByMm: Number(id) })}
      help={offByMm === undefined ? undefined : words.sparesFromHelp}
    />
  );
}

/** The event once more, with what was learned of it; leads to the new one. */
function RepeatEvent({ event, plan }: { event: FavorEvent; plan: EventPlan }) {
  const { season: words } = usePageWords();
  const rows = useWorkbook((state) => state.rows);
  const create = useWorkbook((state) => state.create);
  const navigate = useNavigate();
  const repeat = () => {
    const sheet = listRunSheet(plan, rowsOf(rows), rows.tools.get(event.toolId ?? ''));
    const made = create('events', repeatEvent(event, words.again(event.name), plan, sheet), words.repeat);
    if (made.ok) void navigate(pageAddress({ kind: 'event', id: made.id }, 'event'));
  };
  return (
    <div>
      <Button icon={<CopyPlus aria-hidden="true" />} onClick={repeat}>
        {words.repeat}
      </Button>
      <p className="field-note">{words.repeatWhy}</p>
    </div>
  );
}

/** Recipes that are not on the event yet, those of the example only on the example itself, each one press away; and the way to a new one. */
function AddLine({ event, edits }: { event: FavorEvent; edits: EventEdits }) {
  const words = usePageWords().event;
  const recipes = useWorkbook((state) => state.rows.recipes);
  const count = event.lines[0]?.count ?? FIRST_COUNT;
  const known = event.example ? [...recipes.values()] : ownOf(recipes);
  const free = known.filter(({ id }) => event.lines.every(({ recipeId }) => recipeId !== id));
  return (
    <div className="add-line">
      {free.map((recipe) => (
        <Button
          key={recipe.id}
          icon={<Plus aria-hidden="true" />}
          onClick={() => edits.addLine(recipe, count)}
        >
          {recipe.name}
        </Button>
      ))}
      <Link className="button button-quiet" to={`${START}?event=${event.id}`}>
        <Plus aria-hidden="true" />
        {words.newBox}
      </Link>
    </div>
  );
}
