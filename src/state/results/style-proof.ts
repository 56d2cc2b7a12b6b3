import { useEffect, useState } from 'react';
import { hearWorker } from '../../worker/hear-worker';
import type { ProofAnswer, ProofQuestion, Proven } from '../../worker/proof-messages';
import { noteUnanswered } from './unanswered';

/** At how many sizes a style is tried before it is used. source: our own, as the published proof does */
const SIZES_TRIED = 50;

/** How a proof is: stopped by its maker, not to be had, on its way, or done. */
type ProofInSight =
  | { readonly is: 'stopped' }
  | { readonly is: 'away' }
  | { readonly is: 'busy'; readonly done: number; readonly of: number }
  | ({ readonly is: 'done' } & Proven);

/** A style's proof, made in a worker of its own as soon as there is a text; `stop` ends it. */
export function useStyleProof(text: string): ProofInSight & { readonly stop: () => void } {
  const [told, setTold] = useState<{ readonly of: string; readonly sight: ProofInSight } | null>(null);
  const [stopped, setStopped] = useState<string | null>(null);
  const isStopped = stopped === text;
  const runs = !isStopped && typeof Worker !== 'undefined';
  useEffect(() => {
    if (!runs) return undefined;
    const tell = (sight: ProofInSight) => setTold({ of: text, sight });
    const worker = new Worker(new URL('../../worker/proof-worker.ts', import.meta.url), { type: 'module' });
    const end = hearWorker(
      worker,
      (said: ProofAnswer) => tell('proof' in said ? { is: 'done', ...said } : { is: 'busy', ...said }),
      () => {
        noteUnanswered();
        tell({ is: 'away' });
      },
    );
    worker.postMessage({ text, boxes: SIZES_TRIED } satisfies ProofQuestion);
    return end;
  }, [text, runs]);
  const begun: ProofInSight = { is: 'busy', done: 0, of: SIZES_TRIED };
  const sight = isStopped ? STOPPED : !runs ? AWAY : told?.of === text ? told.sight : begun;
  return { ...sight, stop: () => setStopped(text) };
}

const STOPPED: ProofInSight = { is: 'stopped' };
const AWAY: ProofInSight = { is: 'away' };
