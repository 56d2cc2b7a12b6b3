import { useSyncExternalStore } from 'react';

/** Counts something that a page cannot know of by itself, so that the frame round it can say so. */
function tally() {
  let count = 0;
  const listeners = new Set<() => void>();
  const watch = (listener: () => void) => {
    listeners.add(listener);
    return () => void listeners.delete(listener);
  };
  return {
    note: (): void => {
      count++;
      for (const listener of listeners) listener();
    },
    useCount: (): number => useSyncExternalStore(watch, () => count),
  };
}

/** Questions put to a worker that have no answer and will have none in this tab. */
export const { note: noteUnanswered, useCount: useUnanswered } = tally();

/** Parts of the app that could not be fetched or drawn in this tab. */
export const { note: noteMissingPart, useCount: useMissingParts } = tally();
