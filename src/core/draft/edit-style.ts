import { cleanNote } from '../rows/text';
import { readStyle } from '../style-file/read-style';
import { STYLE_FORMAT, type StyleFile, schemaFor } from '../style-file/schema';
import type { StyleRefusal } from '../style-file/style-refusal';
import type { BoxStyle } from '../styles';
import { type Draft, type Edit, type Place, refused, withPiece } from './draft';
import { isAsProposed, proposalFor, withNewSteps } from './settle';

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
