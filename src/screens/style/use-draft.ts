import { useCallback, useMemo, useState } from 'react';
import type { Recipe } from '../../../shared/workbook';
import type { Edit, Place } from '../../core/draft/draft';
import { type EditedStyle, editStyle, openDraft } from '../../core/draft/edit-style';
import type { StyleRefusal } from '../../core/style-file/style-refusal';
import { type Renamed, withDraft } from '../../state/intents/draft-intents';
import { useWorkbook } from '../../state/use-workbook';

export type Refused = readonly StyleRefusal[];

/** What else an edit does to the box itself. */
export interface AlsoChanges {
  readonly renamed?: Renamed;
  readonly usual?: string;
}

export interface DraftEdits {
  /** Makes an edit under the name that undo shows; why not, where it was not made. */
  readonly make: (label: string, edit: Edit, also?: AlsoChanges) => Refused;
  /** The same out of a field, which says itself why not. */
  readonly take: (label: string, edit: Edit, also?: AlsoChanges) => Refused;
  /** The same for what changes the text in another way. */
  readonly remake: (label: string, change: (text: string) => EditedStyle, also?: AlsoChanges) => Refused;
  readonly place: Place;
  readonly select: (place: Place) => void;
  /** Why the last edit was not made. */
  readonly refusals: Refused;
}

const NONE: Refused = [];

/** The style of a box opened for drawing, what is selected in it, and every change as one undo step of that box. */
export function useDraft({ id, ownStyle = '' }: Recipe) {
  const edit = useWorkbook((state) => state.edit);
  const opened = useMemo(() => openDraft(ownStyle), [ownStyle]);
  const [refusals, setRefusals] = useState(NONE);
  const [wanted, setWanted] = useState<Place | null>(null);
  const remake = useCallback(
    (label: string, change: (text: string) => EditedStyle, also: AlsoChanges = {}, quietly = false) => {
      let edited: EditedStyle | undefined;
      edit('recipes', id, label, (recipe) => {
        edited = change(recipe.ownStyle ?? '');
        return edited.ok ? withDraft(recipe, edited, also) : recipe;
      });
      if (edited === undefined) return NONE;
      const refused = edited.ok ? NONE : edited.refusals;
      setRefusals(quietly ? NONE : refused);
      if (edited.ok && edited.next) setWanted(edited.next);
      return refused;
    },
    [edit, id],
  );
  const make = useCallback(
    (label: string, change: Edit, also?: AlsoChanges) =>
      remake(label, (text) => editStyle(text, change), also),
    [remake],
  );
  const take = useCallback(
    (label: string, change: Edit, also?: AlsoChanges) =>
      remake(label, (text) => editStyle(text, change), also, true),
    [remake],
  );
  const select = useCallback((place: Place) => {
    setRefusals(NONE);
    setWanted(place);
  }, []);
  const pieces = opened.ok ? opened.draft.pieces : undefined;
  const place = useMemo(() => placeIn(pieces, wanted), [pieces, wanted]);
  const edits = useMemo(
    (): DraftEdits => ({ make, take, remake, place, select, refusals }),
    [make, take, remake, place, select, refusals],
  );
  return { opened, edits };
}

type Pieces = NonNullable<Extract<ReturnType<typeof openDraft>, { ok: true }>['draft']['pieces']>;

/** What is selected, or the first panel where that is gone: an undo may take it away. */
function placeIn(pieces: Pieces | undefined, wanted: Place | null): Place {
  const piece = wanted && pieces?.[wanted.piece];
  if (wanted && piece?.panels[wanted.panel]) return wanted;
  const there = piece ? wanted.piece : (Object.keys(pieces ?? {})[0] ?? '');
  const [first, ...others] = Object.entries(pieces?.[there]?.panels ?? {});
  // with one panel there is one thing to do next: add another at its edge
  const edge =
    first === undefined || others.length > 0 ? {} : { edge: first[1].role === 'base' ? 'left' : 'right' };
  return { piece: there, panel: first?.[0] ?? '', ...edge };
}
