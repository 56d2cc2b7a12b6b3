import type { StyleRefusal } from '../../core/style-file/style-refusal';
import type { BoxStyle } from '../../core/styles';
import { styleReader } from '../own-styles';
import { pickedText } from './picked-text';

/** A style from a file a maker picked, and the text that a box keeps of it; or why it is no style. */
export type PickedStyle =
  | { readonly ok: true; readonly style: BoxStyle; readonly text: string }
  | { readonly ok: false; readonly refusals: readonly StyleRefusal[] };

/** Longest file read. source: `ownStyle` of the file format */
const MOST_LETTERS = 200_000;

/** Reads a style file, once what reads it is fetched, and asks whether it makes a box at all. */
export async function readPickedStyle(file: Blob): Promise<PickedStyle> {
  const text = await pickedText(file, MOST_LETTERS);
  const [{ readOwnStyle }, { notABox }] = await Promise.all([styleReader(), import('../../core/proof')]);
  const reading = readOwnStyle(text);
  if (!reading.ok) return reading;
  const refusals = notABox(reading.style);
  return refusals.length > 0 ? { ok: false, refusals } : reading;
}
