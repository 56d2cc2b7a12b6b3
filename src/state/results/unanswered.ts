import { useSyncExternalStore } from 'react';

let count = 0;
const listeners = new Set<() => void>();

/** A question put to a worker has no answer and will have none: the frame says so, since the page that waits for it cannot know. */
export function noteUnanswered(): void {
  count++;
  for (const listener of listeners) listener();
}

/** How many questions were left without an answer in this tab. */
export const useUnanswered = (): number =>
  useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    () => count,
  );
