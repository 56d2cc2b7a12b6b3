import { Sun } from 'lucide-react';
import { useEffect, useState } from 'react';
import { Button } from '../../ui/fields/button';
import { usePageWords } from '../../ui/words';

/** Keeps the screen on while the batch is in sight, once that is asked for. */
export function KeepAwake({ wanted }: { wanted: boolean }) {
  const words = usePageWords().run;
  const [keep, setKeep] = useState(false);
  const awake = useWakeLock(wanted && keep);
  return (
    <>
      {wanted && !keep && (
        <Button
          tone="quiet"
          className="bench-keep"
          aria-label={words.keepAwake}
          icon={<Sun aria-hidden="true" />}
          onClick={() => setKeep(true)}
        >
          <span>{words.keepAwake}</span>
        </Button>
      )}
      <p className="soft bench-awake" role="status">
        {awake === 'on' ? words.awake : awake === 'no' ? words.noAwake : ''}
      </p>
    </>
  );
}

/** `off`: not asked for. `no`: this browser, or its battery saver, does not keep the screen on. */
type Awake = 'off' | 'on' | 'no';

/** Keeps the screen on while wanted; the lock is lost whenever the page is hidden, and asked for again when it comes back. */
function useWakeLock(wanted: boolean): Awake {
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
