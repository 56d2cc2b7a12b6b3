import { type RefObject, useLayoutEffect, useState } from 'react';
import type { Pane } from './pan-zoom';

/** What is drawn before the page has been laid out. */
const UNMEASURED: Pane = { width: 640, height: 420 };

/** The size of an element in CSS pixels, kept up with the window. */
export function usePaneSize(element: RefObject<Element | null>): Pane {
  const [pane, setPane] = useState(UNMEASURED);
  useLayoutEffect(() => {
    const target = element.current;
    if (!target || typeof ResizeObserver === 'undefined') return;
    const measure = () => {
      const { width, height } = target.getBoundingClientRect();
      if (width > 0 && height > 0)
        setPane((old) => (old.width === width && old.height === height ? old : { width, height }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(target);
    return () => observer.disconnect();
  }, [element]);
  return pane;
}
