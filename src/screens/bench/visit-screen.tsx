import { useEffect, useState } from 'react';
import type { FavorEvent, Recipe } from '../../../shared/workbook';
import { useEventPlan } from '../../state/results/event-plan';
import { useWorkbook } from '../../state/use-workbook';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { BlankState } from '../../ui/frame/blank-state';
import { classNames } from '../../ui/frame/class-names';
import { PlanWait } from '../../ui/frame/plan-wait';
import { usePageWords, useSay } from '../../ui/words';
import { BenchOfRecipe } from './bench-of-recipe';
import { KeepAwake } from './keep-awake';
import { RunView } from './run-view';
import './visit.css';

/** Somebody else's event by a link: its batch to count in, or its boxes to look at; and how it stands with whoever gave the link. */
export function VisitScreen({ kind }: { kind: 'bench' | 'class' }) {
  const words = usePageWords();
  const sharing = useWorkbook((state) => state.sharing);
  const unit = useWorkbook((state) => state.settings.unit);
  const change = useWorkbook((state) => state.changeSettings);
  const events = useWorkbook((state) => state.rows.events);
  const recipesHere = useWorkbook((state) => state.rows.recipes);
  const [event] = [...events.values()];
  const recipes = [...new Set(event?.lines.map(({ recipeId }) => recipeId))].flatMap(
    (id) => recipesHere.get(id) ?? [],
  );
  const line = sharing?.line ?? 'joining';
  const isOver = line === 'removed';
  return (
    <div className="frame visit">
      <header className="frame-bar visit-bar screen-only">
        <div className="visit-name">
          <h1>{event?.name ?? words.visit.titles[kind]}</h1>
          {event && <p className="soft">{words.visit.titles[kind]}</p>}
        </div>
        <ChoiceStrip
          label={words.frame.unit}
          value={unit}
          choices={[
            { id: 'in', label: words.frame.inches, face: 'in' },
            { id: 'mm', label: words.frame.millimetres, face: 'mm' },
          ]}
          onChange={(next) => change({ unit: next })}
        />
      </header>
      <main id="page" className="page page-sheet page-bench" tabIndex={-1}>
        {event && !isOver && kind === 'class' && <Standing kind={kind} />}
        {isOver && (
          <BlankState title={words.visit.over}>
            <p>{kind === 'class' ? words.visit.overWhy : words.visit.overCounts(sharing?.unsent ?? 0)}</p>
          </BlankState>
        )}
        {!event && !isOver && (
          <BlankState title={words.visit.waits[line === 'off' || line === 'asks' ? 'joining' : line]}>
            {line === 'off' && <OtherTab />}
          </BlankState>
        )}
        {event && !isOver && kind === 'bench' && <Helper event={event} recipes={recipes} />}
        {event && !isOver && kind === 'class' && <Learner recipes={recipes} />}
      </main>
    </div>
  );
}

/** A tab asks at its start whether another one has the link; only one that still waits is told so. source of the time: our own */
function OtherTab() {
  const words = usePageWords().visit;
  const [waited, setWaited] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setWaited(true), 2000);
    return () => clearTimeout(timer);
  }, []);
  return waited && <p>{words.otherTab}</p>;
}

/** Counted here, sent, received: no more is said than what is known. */
function Standing({ kind }: { kind: 'bench' | 'class' }) {
  const words = usePageWords().visit;
  const sharing = useWorkbook((state) => state.sharing);
  if (!sharing) return null;
  const { line, unsent, devices } = sharing;
  const up = line === 'joined';
  const received = devices.every(({ hasAll }) => hasAll);
  const said =
    kind === 'class'
      ? up
        ? words.newest
        : words.lastSeen
      : unsent > 0
        ? words.unsent(unsent, up)
        : received
          ? words.received
          : words.sent;
  return (
    <p
      className={classNames('bench-act-all visit-standing', (!up || unsent > 0) && 'visit-standing-open')}
      role="status"
    >
      <strong>{up ? words.connected : words.offline}</strong> {said}
    </p>
  );
}

function Helper({ event, recipes }: { event: FavorEvent; recipes: readonly Recipe[] }) {
  const words = usePageWords();
  const say = useSay();
  const { plan, failed, again } = useEventPlan(event.id);
  if (event.lines.length === 0) return <BlankState title={words.run.noRun} />;
  if (!plan) return <PlanWait failed={failed} again={again} working={words.run.working} />;
  return (
    <>
      <div className="bench-views screen-only">
        <p className="soft">{words.visit.how}</p>
        <KeepAwake wanted />
      </div>
      <RunView
        event={event}
        plan={plan}
        recipes={recipes}
        onCard={() => undefined}
        standing={<Standing kind="bench" />}
      />
      {plan.cautions.length > 0 && (
        <section aria-labelledby="visit-care" className="visit-care">
          <h2 id="visit-care">{words.visit.care}</h2>
          <ul>
            {plan.cautions.map(({ hazard, says }) => (
              <li key={hazard}>{say(says)}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

function Learner({ recipes }: { recipes: readonly Recipe[] }) {
  const words = usePageWords();
  const [chosen, setChosen] = useState<string | null>(null);
  const recipe = recipes.find(({ id }) => id === chosen) ?? recipes[0];
  if (!recipe) return <BlankState title={words.run.noRun} />;
  return (
    <>
      {recipes.length > 1 && (
        <ChoiceStrip
          label={words.frame.boxesOfEvent}
          value={recipe.id}
          choices={recipes.map(({ id, name }) => ({ id, label: name }))}
          onChange={setChosen}
        />
      )}
      <BenchOfRecipe key={recipe.id} recipe={recipe} making={null} visiting />
    </>
  );
}
