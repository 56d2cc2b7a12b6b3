import { Timer, TimerOff, Undo2 } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Recipe, Tool } from '../../../shared/workbook';
import type { CautionCode } from '../../core/bench';
import { setFractions } from '../../core/draw/strokes/set-fractions';
import { type EventPlan, type RunStep, type StepProgress, sayRunStep } from '../../core/plan';
import { printLength } from '../../core/units';
import { Button } from '../../ui/fields/button';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import { Care } from '../../ui/frame/step-list';
import { useWording } from '../../ui/frame/wording';
import { usePageWords, useSay } from '../../ui/words';
import { RunPicture } from './run-picture';
import type { RunScreen } from './run-view';
import type { StageClock } from './stage-clock';
import type { Tap, useRun } from './use-run';

interface RunStepViewProps {
  readonly progress: StepProgress;
  readonly before: RunScreen | null;
  readonly step: string;
  readonly plan: EventPlan;
  readonly recipes: readonly Recipe[];
  readonly standing: ReactNode;
  readonly tool: Tool | undefined;
  readonly confirmed: boolean;
  readonly stageSeconds: number;
  readonly run: ReturnType<typeof useRun>;
  readonly clock: StageClock;
  /** The button that reads the step aloud. */
  readonly aloud: ReactNode;
  readonly onTap: (more: Tap) => void;
  readonly onBack: (() => void) | null;
  readonly onNext: (() => void) | null;
}

const MORE = [1, 5, 10] as const;

/** One step: what to do, how many are done, and the counters under the thumb. */
export function RunStepView(props: RunStepViewProps) {
  const {
    progress,
    before,
    step: place,
    plan,
    recipes,
    standing,
    tool,
    confirmed,
    stageSeconds,
    run,
    clock,
    aloud,
    onTap,
    onBack,
    onNext,
  } = props;
  const visiting = standing !== undefined;
  const words = usePageWords();
  const say = useSay();
  const { step, of, done, spoiled, left } = progress;
  const said = sayRunStep(step, useWording());
  // Where a stage is several acts, each stands below its own picture.
  const inSeries = step.work.do === 'card' && step.work.steps.length > 1;
  // A helper sees the cuts below, and has no page of sheets.
  const details = inSeries || (visiting && step.work.do === 'sheets') ? [] : said.details;
  return (
    <section className="bench-step run-step" aria-label={place}>
      <StepHead {...{ place, progress, before, headline: said.headline }} />
      <div className="bench-step-picture">
        <RunPicture {...{ step, plan, recipes, tool, visiting }} />
      </div>
      <div className="bench-step-words">
        {cautionsAt(step).map((code) => (
          <Care key={code} code={code} />
        ))}
        {details.map((detail) => (
          <p key={detail}>{setFractions(detail)}</p>
        ))}
        {step.lineId !== null && (
          <p className="soft">
            {step.name}
            {step.paper === null ? '' : `, ${step.paper}`}
            {step.work.do === 'fence' && step.work.pieceLabel !== step.name
              ? `: ${say(step.work.pieceLabel)}`
              : ''}
          </p>
        )}
        {!confirmed && <p className="run-unconfirmed">{words.run.noneConfirmed}</p>}
        <StepClock {...{ plan, step, stageSeconds, run, clock, aloud }} />
      </div>
      <div className="bench-acts screen-only">
        {standing}
        <p className="bench-act-all run-count" role="status">
          <strong>{words.run.counted(done, of, step.unit)}</strong>{' '}
          {left > 0 ? words.run.left(left) : words.run.done}
          {spoiled > 0 && <span className="run-spoiled"> {words.run.spoiled(spoiled, step.unit)}</span>}
        </p>
        <Counters {...{ left, run, onTap, onBack, onNext }} />
      </div>
    </section>
  );
}

type StepHeadProps = Pick<RunStepViewProps, 'progress' | 'before'> & {
  readonly place: string;
  readonly headline: string;
};

/** Where in the batch one is, the mark of the fence, and what to do. */
function StepHead({ place, progress, before, headline }: StepHeadProps) {
  const words = usePageWords();
  const ruler = useRuler();
  const { step } = progress;
  return (
    <header className="bench-step-head">
      <p className="one-step-count">
        {place} <span className="soft">{words.run.acts[step.act]}</span>
      </p>
      {step.work.do === 'fence' && (
        <p className="step-mark" aria-hidden="true">
          {lengthWords(step.work.at, ruler)} <small>{printLength(step.work.at, ruler).other}</small>
        </p>
      )}
      <h2>{setFractions(headline)}</h2>
      {sameFence(progress, before) && <p className="run-same">{words.run.sameSetting}</p>}
    </header>
  );
}

type StepClockProps = Pick<RunStepViewProps, 'plan' | 'stageSeconds' | 'run' | 'clock' | 'aloud'> & {
  readonly step: RunStep;
};

/** The timer of a step, and the time of its stage beside what was planned. */
function StepClock({ plan, step, stageSeconds, run, clock, aloud }: StepClockProps) {
  const words = usePageWords();
  const stage = plan.hours.stages.find(({ act }) => act === step.act);
  const stop = () => {
    const seconds = clock.stop();
    if (seconds > 0) run.tap(step, { seconds });
  };
  return (
    <div className="bench-tools screen-only">
      <Button
        icon={clock.running ? <TimerOff aria-hidden="true" /> : <Timer aria-hidden="true" />}
        onClick={clock.running ? stop : clock.start}
      >
        {clock.running ? words.run.stopClock : words.run.startClock}
      </Button>
      {aloud}
      <p className="soft run-clock">
        <span className="run-clock-face" role="timer">
          {words.run.clock(stageSeconds + clock.seconds)}
        </span>{' '}
        {stage &&
          words.run.stageTime(
            words.hours.time(stageSeconds + clock.seconds),
            words.hours.time(stage.fullSeconds),
          )}
      </p>
    </div>
  );
}

type CountersProps = Pick<RunStepViewProps, 'run' | 'onTap' | 'onBack' | 'onNext'> & {
  readonly left: number;
};

/** The buttons that count, take back and move on. */
function Counters({ left, run, onTap: tap, onBack, onNext }: CountersProps) {
  const words = usePageWords();
  return (
    <>
      {MORE.map((more) => (
        <Button
          key={more}
          tone={more === 1 ? 'act' : 'plain'}
          className={more === 1 ? 'bench-act-main' : undefined}
          aria-keyshortcuts={more === 1 ? '+' : undefined}
          disabled={left === 0}
          onClick={() => tap({ done: Math.min(more, left) })}
        >
          {words.run.more(more)}
        </Button>
      ))}
      <Button disabled={!onBack} onClick={() => onBack?.()}>
        {words.run.back}
      </Button>
      <Button disabled={left === 0} onClick={() => tap({ spoiled: 1 })}>
        {words.run.spoil}
      </Button>
      <Button
        icon={<Undo2 aria-hidden="true" />}
        disabled={!run.undo}
        aria-label={words.run.undo}
        onClick={() => run.undo?.()}
      />
      <Button tone={left === 0 ? 'act' : 'plain'} disabled={!onNext} onClick={() => onNext?.()}>
        {words.run.next}
      </Button>
    </>
  );
}

/** Where hands meet blades or heat at this step. */
const cautionsAt = ({ act, work }: RunStep): readonly CautionCode[] => [
  ...new Set([
    ...(act === 'cut' ? (['blade'] as const) : []),
    ...(work.do === 'card' ? work.steps.flatMap(({ cautions }) => cautions) : []),
  ]),
];

/** The step before was scored at the same mark. */
function sameFence({ step: { work } }: StepProgress, before: RunScreen | null): boolean {
  const last = before?.first === null ? before.progress.step.work : null;
  return work.do === 'fence' && last?.do === 'fence' && last.at === work.at;
}
