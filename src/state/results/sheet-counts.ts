import { use, useEffect, useMemo, useState } from 'react';
import { type CountInSight, countAtOnce, type SheetCount, type SheetPlan } from '../../core/yield';
import type { CountAsk, CutAsk, SheetAnswer } from '../../worker/plan-messages';
import { SheetAskerContext } from './sheet-asker';
import { noteUnanswered } from './unanswered';

/** Counts that took a while, kept so that a page that is opened again has them; the oldest go first. */
const known = new Map<string, SheetCount>();
const MOST_KNOWN = 200; // our own

const keyOf = ({ part, paper, tool }: CountAsk): string => JSON.stringify([part, paper, tool]);

function keep(key: string, count: SheetCount): void {
  known.set(key, count);
  const [oldest] = known.keys();
  if (known.size > MOST_KNOWN && oldest !== undefined) known.delete(oldest);
}

/**
 * How many of each part its sheet gives, in the order asked: at once what can be said at once, and the most of a heavy one as soon as it is
 * known. Questions that are asked no more are withdrawn.
 */
export function useSheetCounts(asks: readonly CountAsk[]): readonly CountInSight[] {
  const asker = use(SheetAskerContext);
  const keys = asks.map(keyOf);
  const all = keys.join('\n');
  // The same questions in new objects are no new questions.
  // eslint-disable-next-line react-hooks/exhaustive-deps
  const first = useMemo(() => asks.map((ask) => countAtOnce(ask.part, ask.paper, ask.tool)), [all]);
  const [, setHeard] = useState(0);

  useEffect(() => {
    const asking = new AbortController();
    const heavy = asks.filter((ask, at) => first[at]?.exact === false && !known.has(keyOf(ask)));
    for (const ask of heavy)
      asker({ count: ask }, asking.signal)
        .then((answer) => {
          if (answer === null || !('count' in answer)) return;
          keep(keyOf(ask), answer.count);
          if (!asking.signal.aborted) setHeard((times) => times + 1);
        })
        .catch(noteUnanswered);
    return () => asking.abort();
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [asker, all, first]);
  return first.map((count, at) => {
    const most = count.exact ? undefined : known.get(keys[at] ?? '');
    return most ? { ...most, exact: true } : count;
  });
}

export interface CutInSight {
  /** The newest there is; null before the first. */
  readonly plan: SheetPlan | null;
  /** It belongs to parts asked about before. */
  readonly stale: boolean;
}

/** How these parts are cut from one paper: a plan soon, a better one if there is one; the one before stays in sight meanwhile. */
export function useSheetCut(ask: CutAsk): CutInSight {
  const asker = use(SheetAskerContext);
  const key = JSON.stringify(ask);
  const [found, setFound] = useState<{ readonly key: string; readonly plan: SheetPlan } | null>(null);
  useEffect(() => {
    const asking = new AbortController();
    const hear = (answer: SheetAnswer | null) => {
      if (answer && 'cut' in answer && !asking.signal.aborted) setFound({ key, plan: answer.cut });
    };
    asker({ cut: ask }, asking.signal, hear).then(hear).catch(noteUnanswered);
    return () => asking.abort();
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [asker, key]);
  return { plan: found?.plan ?? null, stale: found?.key !== key };
}
