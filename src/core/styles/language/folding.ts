import type { ClosingStep, PanelSpec } from './types';

/** Does a panel turn at all when the box is closed? */
export const turns = ({ on, fold, flush }: Pick<PanelSpec, 'on' | 'fold' | 'flush'>): boolean =>
  on !== undefined && flush === undefined && fold !== undefined && fold !== 0;

/** Panels that the steps fold or tuck, in their order. */
export const panelsFolded = (closing: readonly ClosingStep[]): readonly string[] =>
  closing.flatMap((step) => (step.do === 'glue' ? [] : step.panels));
