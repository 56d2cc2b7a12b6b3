import type { Drawing } from '../core/draw/strokes/types';
import type { At } from '../core/plane';

/** The paper in the printer. */
export type PaperName = 'letter' | 'a4';

/** source: letter 8 1/2 × 11 in by definition; A4 210 × 297 mm, ISO 216. */
export const PAPER_MM: Readonly<Record<PaperName, { readonly widthMm: number; readonly heightMm: number }>> =
  {
    letter: { widthMm: 215.9, heightMm: 279.4 },
    a4: { widthMm: 210, heightMm: 297 },
  };

/** Left free on every side. source: printers leave 4 to 6 mm unprinted, common practice, no source; the rest is for thumbs. */
export const MARGIN_MM = 10;

/** Type sizes on paper, mm. Numbers a hand works by are at least 14 pt, everything else at least 9 pt. source: our own, read at arm's length. */
export const TYPE_MM = {
  title: 8.5,
  heading: 5.6,
  number: 5.2,
  step: 4.6,
  lead: 4.2,
  body: 3.9,
  small: 3.2,
} as const;

/** Numbers may take so much of the room of a printed net, and no more; else they are fewer, or left to the steps. */
export const LEAST_NET_SHARE = 0.5;

/** A photograph on a page: its lower left corner and its size, mm; JPEG in base64. */
export interface PlacedPhoto {
  readonly at: At;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly jpeg: string;
}

/** One printed page: a drawing as large as the paper, at true size. Photographs are the one thing on it that is no drawing. */
export interface Page extends Drawing {
  readonly photos?: readonly PlacedPhoto[];
}

/** Something to print: pages, a name for the file, and what makes the same pages the same bytes. */
export interface PrintDocument {
  /** File name without its ending. */
  readonly name: string;
  readonly title: string;
  readonly pages: readonly Page[];
  readonly stamp: PrintStamp;
}

/** Passed in, since nothing here reads a clock. */
export interface PrintStamp {
  /** ISO 8601, UTC. */
  readonly madeAt: string;
  /** Short code of the recipe or event, printed in the foot of every page. */
  readonly code: string;
}

/** A random id: 32 figures of sixteen, with or without the hyphens of RFC 9562 (from memory). */
const RANDOM = /^[0-9a-f]{8}(-?[0-9a-f]{4}){3}-?[0-9a-f]{12}$/;

/** What tells one row from another on paper and in file names: the end of a random id, else the whole id. */
export const shortId = (id: string): string => (RANDOM.test(id) ? id.slice(-8) : id);
