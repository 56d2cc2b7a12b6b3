import { cleanNote } from '../rows/text';
import { readStyle } from '../style-file/read-style';
import { STYLE_FORMAT, type StyleFile, schemaFor } from '../style-file/schema';
import type { StyleRefusal } from '../style-file/style-refusal';
import { type BoxStyle, StyleError } from '../styles';
import { panelsFolded, turns } from '../styles/language/folding';
import { type Draft, type Edit, type PieceDraft, type Place, refused, withPiece } from './draft';
import { usualClosing } from './usual-closing';
import { whatMeets } from './what-meets';

const FIELDS = ['joints', 'seams', 'overlaps', 'closing', 'shell', 'roomFormula'] as const;

/** A style text that the editor has open: the declaration and the style it reads as. */
interface OpenDraft {
  readonly text: string;
  readonly draft: Draft;
  readonly style: BoxStyle;
}

export type Opened =
  | ({ readonly ok: true } & OpenDraft)
  | { readonly ok: false; readonly refusals: readonly StyleRefusal[] };

export type EditedStyle =
  | ({ readonly ok: true; readonly next?: Place } & OpenDraft)
  | { readonly ok: false; readonly refusals: readonly StyleRefusal[] };

/** Texts opened lately: an edit starts from the text that the one before it made. */
const opened = new Map<string, Opened>();
const MOST_OPEN = 8;

/** A style text for the editor. Never throws; a text that is no style is refused as any file is. */
export function openDraft(text: string): Opened {
  const known = opened.get(text);
  if (known !== undefined) return known;
  const made = read(text);
  opened.set(text, made);
  for (const [oldest] of opened) {
    if (opened.size <= MOST_OPEN) break;
    opened.delete(oldest);
  }
  return made;
}

function read(text: string): Opened {
  const reading = readStyle(text);
  return reading.ok ? { ok: true, text, draft: reading.data, style: reading.style } : reading;
}

/** The text of a draft, as a box keeps it. */
export const textOf = (draft: Draft): string =>
  cleanNote(
    JSON.stringify({ format: STYLE_FORMAT, schema: schemaFor(draft), style: draft } satisfies StyleFile),
  );

/**
 * A style text after an edit. What is written is read again through the gates of any file, so an edit never leaves a text that can’t be read; and
 * as long as a piece is closed the way that is proposed for it, the proposal follows the edit.
 */
export function editStyle(text: string, edit: Edit): EditedStyle {
  const from = openDraft(text);
  if (!from.ok) return from;
  const edited = edit(from.draft);
  if (!edited.ok) return { ok: false, refusals: [edited.refusal] };
  const next = edited.next === undefined ? {} : { next: edited.next };
  if (edited.draft === from.draft) return { ...from, ...next };
  const plain = openDraft(textOf(edited.draft));
  if (!plain.ok) return plain;
  const settled = settle(from, plain);
  if (settled === plain.draft) return { ...plain, ...next };
  const made = openDraft(textOf(settled));
  return made.ok ? { ...made, ...next } : { ...plain, ...next };
}

function settle(from: OpenDraft, to: OpenDraft): Draft {
  let draft = to.draft;
  for (const [id, piece] of Object.entries(to.draft.pieces ?? {})) {
    const before = from.draft.pieces?.[id];
    const byHand =
      JSON.stringify(closingOf(before)) !== JSON.stringify(closingOf(piece)) && samePanels(before, piece);
    if (byHand) continue;
    const follows = before === undefined || isAsProposed(before, proposalFor(from.draft, from.style, id));
    const proposal = follows ? proposalFor(to.draft, to.style, id) : null;
    const settled = proposal ?? withNewSteps(before, piece);
    if (settled !== piece) draft = withPiece(draft, id, () => settled);
  }
  return draft;
}

type Piece = NonNullable<Draft['pieces']>[string];
const closingOf = (piece: Piece | undefined) =>
  piece && [piece.joints, piece.seams, piece.overlaps, piece.closing];
const samePanels = (before: Piece | undefined, after: Piece): boolean =>
  JSON.stringify(before?.panels) === JSON.stringify(after.panels);

/** Closes a piece as is usually done: joints, seams, layers and steps worked out again from how it folds. */
export function proposeClosing(text: string, id: string): EditedStyle {
  const from = openDraft(text);
  if (!from.ok) return from;
  const proposal = proposalFor(from.draft, from.style, id);
  if (proposal === null) {
    const edited = refused(
      'not-foldable-yet',
      'We couldn’t work out how this piece closes.',
      'Give every panel a size above nothing, then try again.',
    );
    return { ok: false, refusals: edited.ok ? [] : [edited.refusal] };
  }
  return openDraft(textOf(withPiece(from.draft, id, () => proposal)));
}

/** Joints, seams, layers and steps of a piece as they would be proposed; null where its net can’t be folded yet. */
function proposalFor(draft: Draft, style: BoxStyle, id: string): PieceDraft | null {
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
const isAsProposed = (piece: PieceDraft, proposal: PieceDraft | null): boolean =>
  proposal !== null &&
  FIELDS.every((field) => JSON.stringify(piece[field]) === JSON.stringify(proposal[field]));

/** A piece closed by hand, with a step for each panel that has come since. */
function withNewSteps(before: PieceDraft | undefined, after: PieceDraft): PieceDraft {
  const fresh = Object.entries(after.panels).filter(
    ([name, panel]) => before?.panels[name] === undefined && turns(panel),
  );
  const named = new Set(panelsFolded(after.closing));
  const steps = fresh.flatMap(([name]) => (named.has(name) ? [] : [{ do: 'fold' as const, panels: [name] }]));
  return steps.length === 0 ? after : { ...after, closing: [...after.closing, ...steps] };
}
