import { useEffect, useState } from 'react';
import type { StyleProof } from '../../core/proof';
import { hearWorker } from '../../worker/hear-worker';
import type { ProofAnswer } from '../../worker/proof-messages';
import { noteUnanswered } from './unanswered';

/** At how many sizes a style is tried before it is used. source: our own, as the published proof does */
export const SIZES_TRIED = 50;

/** How a proof stands: not asked, on its way, or done. */
type ProofInSight =
  | { readonly is: 'away' }
  | { readonly is: 'busy'; readonly done: number; readonly of: number }
  | { readonly is: 'done'; readonly proof: StyleProof };

/** A style's proof, made in a worker of its own as soon as there is a text; `stop` ends it. */
export function useStyleProof(text: string | null): ProofInSight & { readonly stop: () => void } {
  const [sight, setSight] = useState<ProofInSight>({ is: 'away' });
  const [stopped, setStopped] = useState<string | null>(null);
  useEffect(() => {
    if (text === null || stopped === text || typeof Worker === 'undefined') {
      setSight({ is: 'away' });
      return;
    }
    setSight({ is: 'busy', done: 0, of: SIZES_TRIED });
    const worker = new Worker(new URL('../../worker/proof-worker.ts', import.meta.url), { type: 'module' });
    hearWorker(
      worker,
      (said: ProofAnswer) =>
        setSight('proof' in said ? { is: 'done', proof: said.proof } : { is: 'busy', ...said }),
      () => {
        noteUnanswered();
        setSight({ is: 'away' });
      },
    );
    worker.postMessage({ text, boxes: SIZES_TRIED });
    return () => worker.terminate();
  }, [text, stopped]);
  return { ...sight, stop: () => setStopped(text) };
}
