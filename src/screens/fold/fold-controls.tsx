import { ChevronLeft, ChevronRight, Pause, Play } from 'lucide-react';
import { useEffect, useId, useRef, useState } from 'react';
import { Button, IconButton } from '../../ui/fields/button';
import { usePageWords } from '../../ui/words';

interface FoldControlsProps {
  readonly acts: number;
  readonly done: number;
  /** The state in words. */
  readonly state: string;
  readonly onDone: (done: number) => void;
}

/** One act of closing takes so long when it plays. source: our own */
const ACT_MS = 1100;
const NOTCHES = 100;

/** The slider along the closing path, a step back and on, and folding by itself; where motion is unwelcome it goes step by step. */
export function FoldControls({ acts, done, state, onDone }: FoldControlsProps) {
  const words = usePageWords().fold;
  const slider = useId();
  const { playing, play, stop } = usePlaying(acts, done, onDone);
  return (
    <div className="fold-controls screen-only">
      <div className="fold-controls-row">
        <IconButton
          label={words.back}
          icon={<ChevronLeft />}
          disabled={done <= 0}
          onClick={() => stop(Math.ceil(done) - 1)}
        />
        <Button
          tone="act"
          icon={playing ? <Pause aria-hidden="true" /> : <Play aria-hidden="true" />}
          onClick={play}
        >
          {playing ? words.stop : words.play}
        </Button>
        <IconButton
          label={words.forward}
          icon={<ChevronRight />}
          disabled={done >= acts}
          onClick={() => stop(Math.floor(done) + 1)}
        />
        <label htmlFor={slider} className="fold-slider-name">
          {words.closing}
        </label>
      </div>
      <input
        id={slider}
        type="range"
        className="fold-slider"
        min={0}
        max={acts * NOTCHES}
        step={NOTCHES / 20}
        value={Math.round(done * NOTCHES)}
        aria-valuetext={state}
        onChange={({ target }) => stop(Number(target.value) / NOTCHES)}
      />
      <p className="fold-state" aria-hidden="true">
        {state}
      </p>
    </div>
  );
}

/** Folds on by itself while it plays. `play` goes on or stands still, from the start where all is done; `stop` goes to a place and stays. */
function usePlaying(acts: number, done: number, onDone: (done: number) => void) {
  const [playing, setPlaying] = useState(false);
  const at = useRef(done);
  useEffect(() => {
    at.current = done;
  }, [done]);

  useEffect(() => {
    if (!playing) return;
    const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
    let frame = 0;
    let last: number | null = null;
    const go = (to: number) => {
      onDone(Math.min(acts, to));
      if (to >= acts) setPlaying(false);
    };
    if (still) {
      const timer = setInterval(() => go(Math.floor(at.current) + 1), ACT_MS);
      return () => clearInterval(timer);
    }
    const step = (now: number) => {
      const passed = last === null ? 0 : now - last;
      last = now;
      go(at.current + passed / ACT_MS);
      frame = requestAnimationFrame(step);
    };
    frame = requestAnimationFrame(step);
    return () => cancelAnimationFrame(frame);
  }, [playing, acts, onDone]);

  const stop = (to: number) => {
    setPlaying(false);
    onDone(to);
  };
  const play = () => {
    if (done >= acts) {
      at.current = 0;
      onDone(0);
    }
    setPlaying(!playing);
  };
  return { playing, play, stop };
}
