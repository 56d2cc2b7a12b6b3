import { setPanelFold } from '../../core/draft/change-panel';
import type { Draft, Place } from '../../core/draft/draft';
import { SelectField } from '../../ui/fields/text-field';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { usePanelNames } from './panel-names';
import type { DraftEdits } from './use-draft';

const USUAL = ['90', '180', '-90', '-180', '0', 'flush'] as const;

interface FoldFieldProps {
  readonly place: Place;
  readonly draft: Draft;
  readonly edits: DraftEdits;
}

/** How a panel meets the one it hangs on: a score folded one way or the other, or none. */
export function FoldField({ place, draft, edits }: FoldFieldProps) {
  const words = useDraftingWords();
  const names = usePanelNames();
  const spec = draft.pieces?.[place.piece]?.panels[place.panel];
  if (spec?.on === undefined) return null;
  const now = spec.flush ? 'flush' : String(spec.fold ?? 0);
  const said = (id: string) =>
    words.folds[id] ?? (Number.isNaN(Number(id)) ? id : words.otherFold(Number(id)));
  const known = (USUAL as readonly string[]).includes(now) ? USUAL : [now, ...USUAL];
  return (
    <SelectField
      label={words.fold}
      value={now}
      choices={known.map((id) => ({ id, label: said(id) }))}
      onChange={(id) => {
        if (id !== now)
          edits.make(
            words.changes.change(names.panel(place.panel)),
            setPanelFold(place, id === 'flush' ? id : Number(id)),
          );
      }}
    />
  );
}
