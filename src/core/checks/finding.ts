import { panelWords } from '../net/panel-words';
import type { PieceNet } from '../net/types';
import type { Reason } from '../units/reason';
import { roundToTick, TICKS_PER_MM, type Ticks } from '../units/ticks';

export { panelWords };

/**
 * Something a maker should know about their box: `stop` means it cannot be folded as asked, `warn` that it will disappoint, `note` a tip.
 * `says` and `remedy` are templates; `{name}` stands for one of the `facts`: a length is printed on their own marks, words in their language.
 */
export interface Finding extends Reason {
  readonly code: string;
  readonly severity: 'stop' | 'warn' | 'note';
  /** A symbol of the style, a panel, or a piece: what to light up. */
  readonly where: string;
  readonly remedy: string;
  /** The one-tap mend, where there is one. */
  readonly fix?: { readonly symbol: string; readonly value: Ticks };
}

/** Longer than any card. source: our choice, ten meters */
const BEYOND_ANY_CARD = 10_000; // mm

/** Millimeters off a folded box as a length for a finding. Panels shrunk to nothing have no distances: those come as 0 or ten meters. */
export const asTicks = (mm: number): Ticks =>
  roundToTick(
    (Number.isNaN(mm) ? 0 : Math.max(-BEYOND_ANY_CARD, Math.min(BEYOND_ANY_CARD, mm))) * TICKS_PER_MM,
  );

export const wordsOf = (piece: PieceNet, face: number): string => panelWords(piece.faces[face]?.panel ?? '');
