import { useEffect, useState } from 'react';
import { useWorkbook } from '../../state/use-workbook';

/** A timer of an event that the maker starts and stops. It is kept with this browser's settings, so it runs on when the page is loaded again. */
export interface StageClock {
  readonly running: boolean;
  /** The step it times; null: none of a run. */
  readonly step: string | null;
  /** What it has run since it was last taken. */
  readonly seconds: number;
  readonly start: () => void;
  /** Whole seconds since the last taking; the timer runs on from there, at another step if one is named. */
  readonly take: (next?: string) => number;
  /** The same, and stops it. */
  readonly stop: () => number;
}

/** A timer found running after so long was forgotten, not worked by. source: our own, a long day at the bench. */
const FORGOTTEN_MS = 12 * 3_600_000;

/** `step`: the step of the run in hand; null times a whole box. An event has one timer of each kind. */
export function useStageClock(eventId: string, step: string | null): StageClock {
  const clocks = useWorkbook(({ settings }) => settings.clocks) ?? [];
  const changeSettings = useWorkbook((state) => state.changeSettings);
  const [now, setNow] = useState(() => Date.now());
  const isMine = (clock: (typeof clocks)[number]) =>
    clock.eventId === eventId && (clock.step === null) === (step === null);
  const found = clocks.find(isMine);
  const began = found ? Date.parse(found.since) : 0;
  const since = found && now - began < FORGOTTEN_MS ? began : null;
  useEffect(() => {
    if (since === null) return;
    const timer = setInterval(() => setNow(Date.now()), 500);
    return () => clearInterval(timer);
  }, [since]);

  const passed = () => (since === null ? 0 : Math.max(0, Math.floor((Date.now() - since) / 1000)));
  const others = clocks.filter((clock) => !isMine(clock));
  const countFrom = (at: number, timed: string | null) =>
    changeSettings({ clocks: [...others, { eventId, step: timed, since: new Date(at).toISOString() }] });
  return {
    running: since !== null,
    step: since === null ? null : (found?.step ?? null),
    seconds: since === null ? 0 : Math.max(0, Math.floor((now - since) / 1000)),
    start: () => countFrom(Date.now(), step),
    take(next) {
      const seconds = passed();
      if (since !== null) countFrom(since + seconds * 1000, next ?? step);
      return seconds;
    },
    stop() {
      const seconds = passed();
      changeSettings({ clocks: others });
      return seconds;
    },
  };
}
