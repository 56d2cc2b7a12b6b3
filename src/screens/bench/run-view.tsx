import { type ReactNode, useMemo, useState } from 'react';
import { Link } from 'react-router';
import type { Settings } from '../../../shared/settings';
import type { FavorEvent, Recipe, Tool } from '../../../shared/workbook';
import {
  batchProgress,
  type EventPlan,
  type FirstBox,
  followRun,
  listRunSheet,
  type StepProgress,
  sayRunStep,
} from '../../core/plan';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { useWorkbook } from '../../state/use-workbook';
import { pageAddress } from '../../ui/frame/addresses';
import { useWording } from '../../ui/frame/wording';
import { usePageWords } from '../../ui/words';
import { FirstBoxView } from './first-box';
import { ReadAloud } from './read-aloud';
import { RunStepView } from './run-step-view';
import { useStageClock } from './stage-clock';
import { isOpen, StageList } from './stage-list';
import { useBenchKeys } from './use-bench-keys';
import { type Tap, useRun } from './use-run';
import { useStepInSight } from './use-step-in-sight';
import './run.css';

/** One screen of the run: a first box to measure, or a step to count. */
export type RunScreen =
  | { readonly first: FirstBox; readonly right: boolean }
  | { readonly first: null; readonly progress: StepProgress };

interface RunViewProps {
  readonly event: FavorEvent;
  readonly plan: EventPlan;
  readonly recipes: readonly Recipe[];
  readonly onCard: (recipeId: string) => void;
  /**
   * Seen by a helper, who counts, and how their counts stand: whatever leads to another page, and the measuring of first boxes, is the maker's.
   */
  readonly standing?: ReactNode;
}

/** The batch, one step a screen, counted at every tap. */
export function RunView({ event, plan, recipes, onCard, standing }: RunViewProps) {
  const visiting = standing !== undefined;
  const page = usePageWords();
  const tools = useWorkbook((state) => state.rows.tools);
  const inHand = useToolInHand();
  const tool = tools.get(event.toolId ?? '') ?? inHand;
  const screens = useScreens(event, plan, tool, visiting);
  const { place, screen, step, run, clock, go, tap } = useSteps(event, screens);
  const [aloud, setAloud] = useState(false);
  const section = useStepInSight<HTMLDivElement>(place);
  const wording = useWording();
  if (!screen) return null;
  const again = plan.lines.reduce((sum, line) => sum + line.again, 0);
  const turn = {
    onBack: place > 0 ? () => go(place - 1) : null,
    onNext: place < screens.length - 1 ? () => go(place + 1) : null,
  };
  const words = page.run;
  const said = step && sayRunStep(step, wording);
  const batch = batchProgress(
    screens.flatMap((each) => (each.first === null ? [each.progress] : [])),
    plan.hours.stages,
  );
  const percent = Math.floor(100 * batch.share);
  return (
    <div className="run-view">
      <Remarks again={again} open={screens.some(isOpen)} event={event} visiting={visiting} />
      <div ref={section} className="run-in-sight">
        <p className="run-batch screen-only">
          <progress aria-label={words.batch} max={100} value={percent} />
          <span className="soft">{words.batchLeft(percent, page.hours.time(batch.secondsLeft))}</span>
        </p>
        {screen.first ? (
          <FirstBoxView
            key={screen.first.lineId}
            first={screen.first}
            recipe={recipes.find(({ id }) => id === screen.first.recipeId)}
            right={screen.right}
            step={words.stepOf(place + 1, screens.length)}
            run={run}
            onCard={onCard}
            {...turn}
          />
        ) : (
          <RunStepView
            key={screen.progress.step.id}
            progress={screen.progress}
            before={screens[place - 1] ?? null}
            step={words.stepOf(place + 1, screens.length)}
            plan={plan}
            recipes={recipes}
            tool={tool}
            standing={standing}
            confirmed={screen.progress.step.lineId === null || isRight(event, screen.progress.step.lineId)}
            stageSeconds={secondsOf(screens, screen.progress)}
            run={run}
            clock={clock}
            aloud={
              <ReadAloud
                text={said ? [said.headline, ...said.details].join(' ') : ''}
                wanted={aloud}
                onWanted={setAloud}
              />
            }
            onTap={tap}
            {...turn}
          />
        )}
      </div>
      <StageList screens={screens} place={place} onPlace={go} />
    </div>
  );
}

/** The first boxes that are to be measured, then every step of the run sheet. */
function useScreens(event: FavorEvent, plan: EventPlan, tool: Tool | undefined, visiting: boolean) {
  const rows = useWorkbook((state) => state.rows);
  const sheet = useMemo(() => {
    const stock = {
      recipes: [...rows.recipes.values()],
      papers: [...rows.papers.values()],
      supplies: [...rows.supplies.values()],
      tools: [],
    };
    return listRunSheet(plan, stock, tool);
  }, [plan, rows.recipes, rows.papers, rows.supplies, tool]);
  return useMemo((): RunScreen[] => {
    const firsts = (visiting ? [] : sheet.firsts).map((first): RunScreen => {
      return { first, right: event.run?.firstRight.includes(first.lineId) ?? false };
    });
    const steps = followRun(sheet, event.run);
    return [...firsts, ...steps.map((progress): RunScreen => ({ first: null, progress }))];
  }, [sheet, event.run, visiting]);
}

/** The screen one is at, its timer, and what moves on and counts; by keys too. */
function useSteps(event: FavorEvent, screens: readonly RunScreen[]) {
  const clockAt = useWorkbook(({ settings }) => timedStep(settings.clocks, event.id));
  const [chosen, setChosen] = useState<number>(() => whereLeftOff(screens, event, clockAt));
  const run = useRun(event);
  const place = Math.min(chosen, screens.length - 1);
  const screen = screens[place];
  const step = screen && screen.first === null ? screen.progress.step : null;
  const clock = useStageClock(event.id, step?.id ?? clockAt ?? '');
  const go = (to: number) => {
    const next = Math.max(0, Math.min(screens.length - 1, to));
    const coming = screens[next];
    if (clock.running && step) {
      const seconds = clock.take(coming?.first === null ? coming.progress.step.id : step.id);
      if (seconds > 0) run.tap(step, { seconds });
    }
    setChosen(next);
  };
  const tap = (more: Tap) => step && run.tap(step, { ...more, seconds: clock.take() });
  useBenchKeys('batch', (act, nth) => {
    if (act === 'step') go(place + (nth === 1 ? 1 : -1));
    else if (screen?.first === null && screen.progress.left > 0) tap({ done: 1 });
  });
  return { place, screen, step, run, clock, go, tap };
}

interface RemarksProps {
  readonly again: number;
  readonly open: boolean;
  readonly event: FavorEvent;
  readonly visiting: boolean;
}

/** What is to be made again, and that the batch is finished. */
function Remarks({ again, open, event, visiting }: RemarksProps) {
  const words = usePageWords().run;
  return (
    <>
      {again > 0 && (
        <p className="run-again" role="status">
          {words.again(again)}{' '}
          {!visiting && (
            <Link to={pageAddress({ kind: 'event', id: event.id }, 'shopping')}>{words.toShopping}</Link>
          )}
        </p>
      )}
      {!open && (
        <p className="run-again" role="status">
          <strong>{words.finished}.</strong> {words.finishedWhy}
        </p>
      )}
    </>
  );
}

/** The step whose timer runs on from before the page was loaded. */
const timedStep = (clocks: Settings['clocks'], event: string): string | null =>
  clocks?.find(({ eventId, step }) => eventId === event && step !== null)?.step ?? null;

const isRight = (event: FavorEvent, lineId: string): boolean =>
  event.run?.firstRight.includes(lineId) ?? false;

const secondsOf = (screens: readonly RunScreen[], { step }: StepProgress): number =>
  screens.reduce(
    (sum, screen) =>
      sum + (screen.first === null && screen.progress.step.act === step.act ? screen.progress.seconds : 0),
    0,
  );

/** The step that is being timed; else that of the last tap while anything is left of it, or the first unfinished one after it; at the start, the first box. */
function whereLeftOff(screens: readonly RunScreen[], event: FavorEvent, timed: string | null): number {
  const timedAt = screens.findIndex(
    ({ ...screen }) => screen.first === null && screen.progress.step.id === timed,
  );
  if (timedAt >= 0) return timedAt;
  const last = event.run?.stages.at(-1)?.stage;
  const at = screens.findIndex(({ ...screen }) => screen.first === null && screen.progress.step.id === last);
  if (at < 0) return Math.max(0, screens.findIndex(isOpen));
  const next = screens.findIndex((screen, i) => i >= at && isOpen(screen));
  if (next >= 0) return next;
  const any = screens.findIndex(isOpen);
  return any < 0 ? at : any;
}
