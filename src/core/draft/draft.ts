import type { PieceData } from '../style-file/piece-schema';
import type { StyleData } from '../style-file/schema';
import { refusalOf, type StyleRefusal } from '../style-file/style-refusal';

/** A style being drawn: the declaration of a style file. Never changed in place; an edit gives a new one. */
export type Draft = StyleData;
export type PieceDraft = PieceData;
export type PanelDraft = PieceData['panels'][string];
export type RectangleDraft = Extract<PanelDraft, { readonly size: unknown }>;
export type StepDraft = PieceData['closing'][number];
export type SymbolDraft = StyleData['symbols'][string];

/** A panel of a piece, or one of its edges: what a maker has in hand. */
export interface Place {
  readonly piece: string;
  readonly panel: string;
  readonly edge?: string;
}

/** The draft after an edit and what to take in hand next; or why nothing was changed. */
export type Edited =
  | { readonly ok: true; readonly draft: Draft; readonly next?: Place }
  | { readonly ok: false; readonly refusal: StyleRefusal };

/** One change a maker makes, ready for any draft. */
export type Edit = (draft: Draft) => Edited;

export const taken = (draft: Draft, next?: Place): Edited => ({
  ok: true,
  draft,
  ...(next === undefined ? {} : { next }),
});

/** Nothing is changed: value and reason, then what to do. */
export const refused = (
  code: string,
  says: string,
  remedy: string,
  texts: Readonly<Record<string, string>> = {},
): Edited => ({ ok: false, refusal: refusalOf(code, '', says, texts, remedy) });

/** The draft with one of its pieces changed; as it is where there is no such piece. */
export function withPiece(draft: Draft, id: string, change: (piece: PieceDraft) => PieceDraft): Draft {
  const piece = draft.pieces?.[id];
  return piece === undefined ? draft : { ...draft, pieces: { ...draft.pieces, [id]: change(piece) } };
}

export const panelOf = (draft: Draft, { piece, panel }: Place): PanelDraft | undefined =>
  draft.pieces?.[piece]?.panels[panel];

/** The draft with one of its panels changed. */
export const withPanel = (
  draft: Draft,
  { piece, panel }: Place,
  change: (panel: PanelDraft) => PanelDraft,
): Draft =>
  withPiece(draft, piece, (of) => {
    const spec = of.panels[panel];
    return spec === undefined ? of : { ...of, panels: { ...of.panels, [panel]: change(spec) } };
  });

export const NO_SUCH_PANEL: Edited = refused(
  'no-such-panel',
  'That panel is no longer there.',
  'Choose another panel in the net.',
);

/** An edit of a panel that is there. */
export const onPanel =
  (place: Place, edit: (draft: Draft, panel: PanelDraft, piece: PieceDraft) => Edited): Edit =>
  (draft) => {
    const piece = draft.pieces?.[place.piece];
    const panel = piece?.panels[place.panel];
    return piece === undefined || panel === undefined ? NO_SUCH_PANEL : edit(draft, panel, piece);
  };

/** A record without one of its entries. */
export function without<Value>(record: Readonly<Record<string, Value>>, name: string): Record<string, Value> {
  return Object.fromEntries(Object.entries(record).filter(([key]) => key !== name));
}
