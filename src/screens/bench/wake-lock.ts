import { useEffect, useState } from 'react';

/** `off`: not asked for. `no`: this browser, or its battery saver, does not keep the screen on. */
export type Awake = 'off' | 'on' | 'no';

/** Keeps the screen on while wanted; the lock is lost whenever the page is hidden, and asked for again when it comes back. */
export function useWakeLock(wanted: boolean): Awake {
  const [awake, setAwake] = useState<Awake>('off');
  useEffect(() => {
    if (!wanted) return;
    let lock: WakeLockSentinel | null = null;
    let over = false;
    const ask = async () => {
      if (document.visibilityState !== 'visible') return;
      try {
        // Older browsers have none.
        const kept = 'wakeLock' in navigator ? await navigator.wakeLock.request('screen') : null;
        if (over) void kept?.release();
        else {
          lock = kept;
          setAwake(kept ? 'on' : 'no');
        }
      } catch {
        if (!over) setAwake('no');
      }
    };
    void ask();
    const askAgain = () => void ask();
    document.addEventListener('visibilitychange', askAgain);
    return () => {
      over = true;
      document.removeEventListener('visibilitychange', askAgain);
      void lock?.release();
      setAwake('off');
    };
  }, [wanted]);
  return awake;
}
