import { noteMissingPart } from '../state/results/unanswered';

/** Hears of every script that is fetched later and does not come, and of a style sheet that did not. */
export function tellOfMissingParts(): void {
  addEventListener('vite:preloadError', noteMissingPart);
  addEventListener('load', () => {
    if (getComputedStyle(document.documentElement).getPropertyValue('--ink') === '') noteMissingPart();
  });
}
