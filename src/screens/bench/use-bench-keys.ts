import { useEffect, useRef } from 'react';
import { type KeyAct, keyIn } from '../../ui/frame/keys';

type BenchPlace = 'card' | 'batch';

/** Hears the keys of the bench wherever the focus is, for hands that hold a card and not the page; not while something is typed into or picked. */
export function useBenchKeys<P extends BenchPlace>(place: P, onKey: (act: KeyAct<P>, nth: number) => void) {
  const latest = useRef(onKey);
  useEffect(() => {
    latest.current = onKey;
  });
  useEffect(() => {
    const hear = (event: KeyboardEvent) => {
      if (event.defaultPrevented) return;
      if (event.target instanceof HTMLElement && event.target.closest('input, textarea, select, dialog'))
        return;
      const [act, nth] = keyIn(place, event) ?? [];
      if (act === undefined || nth === undefined) return;
      event.preventDefault();
      latest.current(act, nth);
    };
    window.addEventListener('keydown', hear);
    return () => window.removeEventListener('keydown', hear);
  }, [place]);
}
