import type { Ticks } from '../core/units';
import type { Layout, Nest, OutlinePart, SheetPaper } from '../core/yield';

/** One outline to be laid as often as it will go on one sheet, starting from the trimmer's own layout. */
export interface NestQuestion {
  readonly part: OutlinePart;
  readonly paper: SheetPaper;
  readonly boxed: Layout | null;
  readonly gap: Ticks;
}

/** Every better nest on the way; `done` with the last. */
export interface NestAnswer {
  readonly nest: Nest;
  readonly done: boolean;
}
