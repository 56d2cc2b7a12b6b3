import { useEffect, useState } from 'react';

/** A clock the maker starts and stops. What it has run since it was last taken is `seconds`. */
export interface StageClock {
  readonly running: boolean;
  readonly seconds: number;
  readonly start: () => void;
  /** Whole seconds since the last taking; the clock runs on from there. */
  readonly take: () => number;
  /** The same, and stops it. */
  readonly stop: () => number;
}

export function useStageClock(): StageClock {
  const [since, setSince] = useState<number | null>(null);
  const [now, setNow] = useState(0);
  useEffect(() => {
    if (since === null) return;
    const timer = setInterval(() => setNow(Date.now()), 500);
    return () => clearInterval(timer);
  }, [since]);
  const passed = () => (since === null ? 0 : Math.floor((Date.now() - since) / 1000));
  return {
    running: since !== null,
    seconds: since === null ? 0 : Math.max(0, Math.floor((now - since) / 1000)),
    start() {
      const begun = Date.now();
      setNow(begun);
      setSince(begun);
    },
    take() {
      const seconds = passed();
      if (since !== null) setSince(since + seconds * 1000);
      return seconds;
    },
    stop() {
      const seconds = passed();
      setSince(null);
      return seconds;
    },
  };
}
