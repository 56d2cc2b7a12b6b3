import { CAP_HEIGHT, textWidthMm } from '../core/draw/strokes/letters';

/** From one baseline to the next, over the type size: names are set tight. source: our own */
export const NAME_LEADING = 1.15;
/** Most lines a name takes. source: our own */
const MOST_LINES = 3;

/** A name as it is set: its lines and their type size, mm. */
export interface FittedName {
  readonly lines: readonly string[];
  readonly sizeMm: number;
}

interface Room {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly mostMm: number;
  readonly leastMm: number;
}

/** How high so many lines stand at a type size of 1 mm: capitals of the first to the tails of the last. */
const heightOf = (lines: number): number => CAP_HEIGHT + (lines - 1) * NAME_LEADING + 0.25;

/**
 * The largest type size at which a name fits into its room, over as few lines as that size allows. It is broken at spaces and after
 * hyphens only. Null where it does not fit at the least size.
 */
export function fitName(name: string, { widthMm, heightMm, mostMm, leastMm }: Room): FittedName | null {
  const words = name.split(/\s+|(?<=-)/).filter((word) => word !== '');
  let best: FittedName | null = null;
  for (const lines of waysToBreak(words, MOST_LINES)) {
    const widest = Math.max(...lines.map((line) => textWidthMm(line, 1, true)));
    const sizeMm = Math.min(mostMm, widthMm / widest, heightMm / heightOf(lines.length));
    if (!best || sizeMm > best.sizeMm + 1e-9) best = { lines, sizeMm };
  }
  return best && best.sizeMm >= leastMm ? best : null;
}

/** Every way to set words on at most so many lines, fewest lines first. */
function waysToBreak(words: readonly string[], most: number): readonly (readonly string[])[] {
  if (words.length === 0) return [];
  const ways: string[][] = [[lineOf(words)]];
  if (most > 1)
    for (let at = 1; at < words.length; at++)
      for (const rest of waysToBreak(words.slice(at), most - 1))
        ways.push([lineOf(words.slice(0, at)), ...rest]);
  return ways.sort((a, b) => a.length - b.length);
}

/** Words with spaces between, but for what was joined by a hyphen. */
const lineOf = (words: readonly string[]): string =>
  words.reduce((line, word) => (line === '' || line.endsWith('-') ? line + word : `${line} ${word}`), '');
