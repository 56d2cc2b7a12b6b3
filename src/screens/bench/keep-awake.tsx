import { Sun } from 'lucide-react';
import { useState } from 'react';
import { Button } from '../../ui/fields/button';
import { usePageWords } from '../../ui/words';
import { useWakeLock } from './wake-lock';

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
