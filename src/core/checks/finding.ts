import type { Ticks } from '../units/ticks';

/**
 * Something a maker should know about her box: `stop` means it cannot be folded as asked, `warn` that it will disappoint, `note` a tip.
 * `says` and `remedy` are templates; `{name}` stands for a length in `facts` and is printed on her own marks.
 */
export interface Finding {
  readonly code: string;
  readonly severity: 'stop' | 'warn' | 'note';
  /** A symbol of the style, a panel, or a piece: what to light up. */
  readonly where: string;
  readonly facts: Readonly<Record<string, Ticks>>;
  readonly says: string;
  readonly remedy: string;
  /** The one-tap mend, where there is one. */
  readonly fix?: { readonly symbol: string; readonly value: Ticks };
}
