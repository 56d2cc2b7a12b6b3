import { createContext, use, useCallback, useEffect, useRef, useState } from 'react';
import type { Nest } from '../../core/yield';
import type { NestQuestion } from '../../worker/nest-messages';
import { noteUnanswered } from './unanswered';

/** Nests one outline on one sheet; tells every better nest on the way. Null: it was called off. */
export type Nester = (
  question: NestQuestion,
  tell: (nest: Nest) => void,
  signal: AbortSignal,
) => Promise<Nest | null>;

/** Without a worker: here and now, with few tries. */
export const nestHere: Nester = async ({ part, paper, boxed, gap }, tell, signal) => {
  const { nestOnSheet } = await import('../../core/yield');
  return nestOnSheet(part, paper, boxed, {
    gap,
    rounds: 4,
    onProgress: tell,
    shouldStop: () => signal.aborted,
  });
};

export const NesterContext = createContext<Nester>(nestHere);

export interface NestInSight {
  readonly nest: Nest | null;
  readonly busy: boolean;
  readonly start: (question: NestQuestion) => void;
  readonly cancel: () => void;
}

/** A nest that is asked for by a press; the best so far stays in sight while it is bettered, and after it is called off. */
export function useNest(): NestInSight {
  const nester = use(NesterContext);
  const [nest, setNest] = useState<Nest | null>(null);
  const [busy, setBusy] = useState(false);
  const running = useRef<AbortController | null>(null);

  const cancel = useCallback(() => {
    running.current?.abort();
    running.current = null;
    setBusy(false);
  }, []);
  const start = useCallback(
    (question: NestQuestion) => {
      running.current?.abort();
      const asking = new AbortController();
      running.current = asking;
      setNest(null);
      setBusy(true);
      const tell = (better: Nest) => running.current === asking && setNest(better);
      void nester(question, tell, asking.signal)
        .catch(() => {
          noteUnanswered();
          return null;
        })
        .then((found) => {
          if (running.current !== asking) return;
          if (found) setNest(found);
          setBusy(false);
        });
    },
    [nester],
  );
  useEffect(() => () => running.current?.abort(), []);
  return { nest, busy, start, cancel };
}
