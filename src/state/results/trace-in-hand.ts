import { useCallback, useEffect, useRef, useState } from 'react';
import type { Trace, TracePicture } from '../../core/trace';
import { useWorkbook } from '../use-workbook';

/** A press of a slider is kept once the hand rests, not at every step. source: our own, milliseconds */
const RESTS = 400;
/** Changes of a picture that can be taken back; each holds its pixels once. source: our own */
const MOST_STEPS = 20;

/** The picture that lies under the net of this box, on this device alone. */
export function useTrace(id: string): Trace {
  const traces = useWorkbook((state) => state.traces);
  const [picture, setPicture] = useState<TracePicture | null>(null);
  const [unkept, setUnkept] = useState(false);
  const [earlier, setEarlier] = useState<readonly (TracePicture | null)[]>([]);
  const { isWaiting, forget, once } = useAtRest(id);

  useEffect(() => {
    let wanted = true;
    traces()
      .then((shelf) => shelf.read(id))
      .then(
        (found) => wanted && setPicture((now) => now ?? found),
        () => undefined,
      );
    return () => {
      wanted = false;
    };
  }, [traces, id]);

  const keep = useCallback(
    (next: TracePicture) =>
      void traces()
        .then((shelf) => shelf.keep(id, next))
        .then(
          () => setUnkept(false),
          () => setUnkept(true),
        ),
    [traces, id],
  );
  const remember = () => setEarlier((steps) => [...steps, picture].slice(-MOST_STEPS));
  const drop = () =>
    void traces()
      .then((shelf) => shelf.drop(id))
      .catch(() => undefined);
  const takeBack = () => {
    const before = earlier.at(-1) ?? null;
    forget();
    setEarlier(earlier.slice(0, -1));
    setPicture(before);
    if (before) keep(before);
    else drop();
  };
  return {
    picture,
    unkept,
    takeBack: earlier.length > 0 ? takeBack : null,
    add: (next) => {
      remember();
      forget();
      setPicture(next);
      keep(next);
    },
    lay: (place) => {
      if (!picture) return;
      // a drag is one change, until the hand rests
      if (!isWaiting()) remember();
      const next = { ...picture, place };
      setPicture(next);
      once(() => keep(next));
    },
    remove: () => {
      remember();
      forget();
      setPicture(null);
      setUnkept(false);
      drop();
    },
  };
}

/** Does the last of what it is given once the hand rests, and at once when the page goes or is another's. */
function useAtRest(id: string) {
  const waiting = useRef<{ readonly timer: number; readonly act: () => void } | null>(null);
  const forget = useCallback(() => {
    if (waiting.current) clearTimeout(waiting.current.timer);
    waiting.current = null;
  }, []);
  useEffect(
    () => () => {
      const act = waiting.current?.act;
      forget();
      act?.();
    },
    [id, forget],
  );
  const once = (act: () => void) => {
    forget();
    const now = () => {
      waiting.current = null;
      act();
    };
    waiting.current = { timer: window.setTimeout(now, RESTS), act };
  };
  return { isWaiting: () => waiting.current !== null, forget, once };
}
