import type { Reason } from '../units/reason';
import type { Ticks } from '../units/ticks';

/**
 * Something a maker should know about her box: `stop` means it cannot be folded as asked, `warn` that it will disappoint, `note` a tip.
 * `says` and `remedy` are templates; `{name}` stands for one of the `facts`: a length is printed on her own marks, words in her language.
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
