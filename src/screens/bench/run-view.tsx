import { useMemo, useState } from 'react';
import { Link } from 'react-router';
import type { FavorEvent } from '../../../shared/workbook';
import { type EventPlan, type FirstBox, followRun, listRunSheet, type StepProgress } from '../../core/plan';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { useWorkbook } from '../../state/use-workbook';
import { pageAddress } from '../../ui/frame/addresses';
import { usePageWords } from '../../ui/words';
import { FirstBoxView } from './first-box';
import { RunStepView } from './run-step-view';
import { useStageClock } from './stage-clock';
import { isOpen, StageList } from './stage-list';
import { useRun } from './use-run';
import './run.css';

/** One screen of the run: a first box to measure, or a step to count. */
export type RunScreen =
  | { readonly first: FirstBox; readonly right: boolean }
  | { readonly first: null; readonly progress: StepProgress };

interface RunViewProps {
  readonly event: FavorEvent;
  readonly plan: EventPlan;
  readonly onCard: (recipeId: string) => void;
}

/** The batch, one step a screen, counted at every tap. */
export function RunView({ event, plan, onCard }: RunViewProps) {
  const words = usePageWords().run;
  const rows = useWorkbook((state) => state.rows);
  const inHand = useToolInHand();
  const tool = rows.tools.get(event.toolId ?? '') ?? inHand;
  const sheet = useMemo(() => {
    const stock = {
      recipes: [...rows.recipes.values()],
      papers: [...rows.papers.values()],
      supplies: [...rows.supplies.values()],
      tools: [],
    };
    return listRunSheet(plan, stock, tool);
  }, [plan, rows.recipes, rows.papers, rows.supplies, tool]);
  const screens = useMemo((): RunScreen[] => {
    const firsts = sheet.firsts.map((first): RunScreen => {
      return { first, right: event.run?.firstRight.includes(first.lineId) ?? false };
    });
    const steps = followRun(sheet, event.run);
    return [...firsts, ...steps.map((progress): RunScreen => ({ first: null, progress }))];
  }, [sheet, event.run]);
  const [chosen, setChosen] = useState<number | null>(() => whereLeftOff(screens, event));
  const run = useRun(event);
  const clock = useStageClock();
  const place = Math.min(chosen ?? 0, screens.length - 1);
  const screen = screens[place];
  if (!screen) return null;
  const again = plan.lines.reduce((sum, line) => sum + line.again, 0);

  const go = (to: number) => {
    if (clock.running && screen.first === null) {
      const seconds = clock.take();
      if (seconds > 0) run.tap(screen.progress.step, { seconds });
    }
    setChosen(Math.max(0, Math.min(screens.length - 1, to)));
  };
  const turn = {
    onBack: place > 0 ? () => go(place - 1) : null,
    onNext: place < screens.length - 1 ? () => go(place + 1) : null,
  };
  return (
    <div className="run-view">
      {again > 0 && (
        <p className="run-again" role="status">
          {words.again(again)}{' '}
          <Link to={pageAddress({ kind: 'event', id: event.id }, 'shopping')}>{words.toShopping}</Link>
        </p>
      )}
      {!screens.some(isOpen) && (
        <p className="run-again" role="status">
          <strong>{words.finished}.</strong> {words.finishedWhy}
        </p>
      )}
      <StageList screens={screens} place={place} onPlace={go} />
      {screen.first ? (
        <FirstBoxView
          key={screen.first.lineId}
          first={screen.first}
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
          tool={tool}
          confirmed={screen.progress.step.lineId === null || isRight(event, screen.progress.step.lineId)}
          stageSeconds={secondsOf(screens, screen.progress)}
          run={run}
          clock={clock}
          {...turn}
        />
      )}
    </div>
  );
}

const isRight = (event: FavorEvent, lineId: string): boolean =>
  event.run?.firstRight.includes(lineId) ?? false;

const secondsOf = (screens: readonly RunScreen[], { step }: StepProgress): number =>
  screens.reduce(
    (sum, screen) =>
      sum + (screen.first === null && screen.progress.step.act === step.act ? screen.progress.seconds : 0),
    0,
  );

/** The step of the last tap while anything is left of it, else the first unfinished one after it; at the start, the first box. */
function whereLeftOff(screens: readonly RunScreen[], event: FavorEvent): number {
  const last = event.run?.stages.at(-1)?.stage;
  const at = screens.findIndex(({ ...screen }) => screen.first === null && screen.progress.step.id === last);
  if (at < 0) return Math.max(0, screens.findIndex(isOpen));
  const next = screens.findIndex((screen, i) => i >= at && isOpen(screen));
  if (next >= 0) return next;
  const any = screens.findIndex(isOpen);
  return any < 0 ? at : any;
}
