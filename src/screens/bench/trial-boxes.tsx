import { Timer, TimerOff, Trash2 } from 'lucide-react';
import type { FavorEvent, Pace } from '../../../shared/workbook';
import { USUAL_PACE } from '../../core/plan';
import { useWorkbook } from '../../state/use-workbook';
import { Button, IconButton } from '../../ui/fields/button';
import { usePageWords } from '../../ui/words';
import { useStageClock } from './stage-clock';

/** Boxes timed are enough to go by. source: common practice, no source. */
const TRIALS = 3;

/** The maker times whole boxes, and the hours become the maker’s. */
export function TrialBoxes({ event }: { event: FavorEvent }) {
  const words = usePageWords();
  const edit = useWorkbook((state) => state.edit);
  const clock = useStageClock(event.id, null);
  const pace = event.pace ?? USUAL_PACE;
  const times = pace.trialSeconds;
  const put = (trialSeconds: Pace['trialSeconds'], label: string) =>
    void edit('events', event.id, label, (old) => ({ ...old, pace: { ...pace, trialSeconds } }));
  const stop = () => {
    const seconds = Math.max(1, clock.stop());
    put([...times, seconds], words.hours.boxTime(times.length + 1, words.hours.time(seconds)));
  };
  return (
    <section className="trials" aria-labelledby="trials-head">
      <h2 id="trials-head">{words.hours.trials}</h2>
      <p>{words.hours.trialsWhy}</p>
      <ol>
        {times.map((seconds, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: times have no names, and keep their order
          <li key={place}>
            <span>{words.hours.boxTime(place + 1, words.hours.time(seconds))}</span>
            <IconButton
              label={`${words.hours.trialDrop}, ${words.hours.boxTime(place + 1, '')}`}
              icon={<Trash2 />}
              onClick={() =>
                put(
                  times.filter((_, at) => at !== place),
                  words.hours.trialDrop,
                )
              }
            />
          </li>
        ))}
      </ol>
      {times.length > 0 && <p className="soft">{words.hours.trialsUsed}</p>}
      {(times.length < TRIALS || clock.running) && (
        <div className="trial-clock screen-only">
          <Button
            tone="act"
            className="bench-button"
            icon={clock.running ? <TimerOff aria-hidden="true" /> : <Timer aria-hidden="true" />}
            onClick={clock.running ? stop : clock.start}
          >
            {clock.running ? words.hours.trialStop : words.hours.trialStart}
          </Button>
          <span className="run-clock-face" role="timer">
            {words.run.clock(clock.seconds)}
          </span>
        </div>
      )}
    </section>
  );
}
