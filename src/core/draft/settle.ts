import { type BoxStyle, StyleError } from '../styles';
import { panelsFolded, turns } from '../styles/language/folding';
import type { Draft, PieceDraft } from './draft';
import { usualClosing } from './usual-closing';
import { whatMeets } from './what-meets';

const FIELDS = ['joints', 'seams', 'overlaps', 'closing', 'shell', 'roomFormula'] as const;

/** Joints, seams, layers and steps of a piece as they would be proposed; null where its net can’t be folded yet. */
export function proposalFor(draft: Draft, style: BoxStyle, id: string): PieceDraft | null {
  const piece = draft.pieces?.[id];
  if (piece === undefined) return null;
  try {
    const { seams: _, overlaps: __, ...rest } = piece;
    return { ...rest, ...usualClosing(draft, piece, whatMeets(style, id)) };
  } catch (error) {
    if (error instanceof StyleError || error instanceof RangeError) return null;
    throw error;
  }
}

/** Is a piece closed just as it would be proposed: has the maker changed nothing of it by hand? */
export const isAsProposed = (piece: PieceDraft, proposal: PieceDraft | null): boolean =>
  proposal !== null &&
  FIELDS.every((field) => JSON.stringify(piece[field]) === JSON.stringify(proposal[field]));

/** A piece closed by hand, with a step for each panel that has come since. */
export function withNewSteps(before: PieceDraft | undefined, after: PieceDraft): PieceDraft {
  const fresh = Object.entries(after.panels).filter(
    ([name, panel]) => before?.panels[name] === undefined && turns(panel),
  );
  const named = new Set(panelsFolded(after.closing));
  const steps = fresh.flatMap(([name]) => (named.has(name) ? [] : [{ do: 'fold' as const, panels: [name] }]));
  return steps.length === 0 ? after : { ...after, closing: [...after.closing, ...steps] };
}
