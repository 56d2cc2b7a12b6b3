import { type RefObject, useEffect, useRef } from 'react';

/** Where the step needs the whole height of the screen: phones and tablets, and whatever lies on its side. */
const SMALL = '(max-width: 63.99rem), (max-height: 40rem)';

/** Brings a step to the top of a small screen whenever another one comes, so that picture and buttons stand where they stood. */
export function useStepInSight<Part extends HTMLElement>(place: number): RefObject<Part | null> {
  const step = useRef<Part>(null);
  useEffect(() => {
    if (window.matchMedia(SMALL).matches) step.current?.scrollIntoView({ block: 'start' });
  }, [place]);
  return step;
}
