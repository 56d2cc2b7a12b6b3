import { useEffect, useState } from 'react';

/** Runs soon, when the page has nothing more pressing to do. Gives a way to call it off. */
function whenIdle(run: () => void): () => void {
  if ('requestIdleCallback' in window) {
    const handle = window.requestIdleCallback(run, { timeout: 400 });
    return () => window.cancelIdleCallback(handle);
  }
  const handle = setTimeout(run, 0);
  return () => clearTimeout(handle);
}

/**
 * Work on many things, one at a time while the page is idle, so that it can be read and pressed meanwhile. Results in the order of `things`,
 * those so far; while new work replaces old, the old results stay until all of the new are there.
 */
export function useIdleSlices<Thing, Result>(
  things: readonly Thing[],
  work: (thing: Thing) => Result,
): readonly Result[] {
  const [done, setDone] = useState<readonly Result[]>([]);
  useEffect(() => {
    const results: Result[] = [];
    let cancel = () => {};
    const step = () => {
      const thing = things[results.length];
      if (thing === undefined) return;
      results.push(work(thing));
      setDone((before) =>
        results.length < before.length && results.length < things.length ? before : [...results],
      );
      cancel = whenIdle(step);
    };
    cancel = whenIdle(step);
    return () => cancel();
  }, [things, work]);
  return done;
}
