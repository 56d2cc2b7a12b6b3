import { createContext, use, useCallback, useEffect, useRef, useState } from 'react';
import type { EventMix } from '../../core/plan';
import type { MixQuestion } from '../../worker/mix-messages';
import { useWorkbook } from '../use-workbook';
import { rowsForPlan } from './event-plan';
import { noteUnanswered } from './unanswered';

/** Finds the cheapest mixes of papers for an event; tells every better one on the way, and ends when there are no more, or it is called off. */
export type Mixer = (
  question: MixQuestion,
  tell: (mix: EventMix) => void,
  signal: AbortSignal,
) => Promise<void>;

/** Without a worker: here and now, without the general solver. */
export const mixHere: Mixer = async ({ rows, eventId }, tell) => {
  const { mixEvent } = await import('../../core/plan');
  const event = rows.events.find(({ id }) => id === eventId);
  if (event) for (const mix of mixEvent(rows, event, {})) tell(mix);
};

export const MixerContext = createContext<Mixer>(mixHere);

export interface MixesInSight {
  /** One for each way that was looked at, the best found so far. */
  readonly mixes: readonly EventMix[];
  readonly busy: boolean;
  /** The event or its papers have changed since. */
  readonly stale: boolean;
  readonly start: () => void;
  readonly cancel: () => void;
}

/** Mixes that are asked for by a press; what is found stays in sight while it is bettered, and after it is called off. */
export function useMixes(eventId: string): MixesInSight {
  const mixer = use(MixerContext);
  const shelf = useWorkbook((state) => state.rows);
  const [mixes, setMixes] = useState<readonly EventMix[]>([]);
  const [of, setOf] = useState<typeof shelf | null>(null);
  const [busy, setBusy] = useState(false);
  const running = useRef<AbortController | null>(null);

  const cancel = useCallback(() => {
    running.current?.abort();
    running.current = null;
    setBusy(false);
  }, []);
  const start = useCallback(() => {
    running.current?.abort();
    const asking = new AbortController();
    running.current = asking;
    setMixes([]);
    setOf(shelf);
    setBusy(true);
    const tell = (mix: EventMix) => {
      if (running.current === asking)
        setMixes((before) => [...before.filter(({ way }) => way !== mix.way), mix]);
    };
    void mixer({ rows: rowsForPlan(shelf, eventId), eventId }, tell, asking.signal)
      .catch(noteUnanswered)
      .then(() => {
        if (running.current === asking) setBusy(false);
      });
  }, [mixer, shelf, eventId]);
  useEffect(() => () => running.current?.abort(), []);
  return { mixes, busy, stale: of !== null && of !== shelf, start, cancel };
}
