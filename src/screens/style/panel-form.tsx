import { setPanelRole, setPanelSize, setPanelStart, setPanelTaper } from '../../core/draft/change-panel';
import type { Edit, Place, RectangleDraft } from '../../core/draft/draft';
import { hangingOn, removePanel } from '../../core/draft/remove-panel';
import { renamePanel } from '../../core/draft/rename';
import { evaluateForm, formOf, type Role } from '../../core/styles';
import { Button } from '../../ui/fields/button';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import { SelectField } from '../../ui/fields/text-field';
import { Opening } from '../../ui/frame/opening';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { FoldField } from './fold-field';
import { FormField } from './form-field';
import { OpeningList } from './opening-list';
import { usePanelNames } from './panel-names';
import { StepOfPanel } from './step-of-panel';
import type { EditorProps } from './style-editor';

/** One panel: its name and kind, its two sizes, how it folds, its openings. */
export function PanelForm({ box, open, edits }: EditorProps) {
  const words = useDraftingWords();
  const names = usePanelNames();
  const ruler = useRuler();
  const { place, make, take } = edits;
  const { piece, panel } = place;
  const of = open.draft.pieces?.[piece];
  const spec = of?.panels[panel];
  if (of === undefined || spec === undefined) return null;
  const named = names.panel(panel);
  const change = words.changes.change(named);
  const now = (form: string) => words.isNow(lengthWords(evaluateForm(formOf(form), box.net.values), ruler));
  return (
    <>
      <FormField
        label={words.name}
        value={named}
        most={32}
        onTake={(text) => take(change, renamePanel(piece, panel, text))}
      />
      {'size' in spec ? (
        <div className="style-pair">
          <FormField
            label={words.across}
            steps
            help={now(spec.size[0])}
            value={spec.size[0]}
            onTake={(text) => take(change, setPanelSize(place, 0, text))}
          />
          <FormField
            label={words.up}
            steps
            help={now(spec.size[1])}
            value={spec.size[1]}
            onTake={(text) => take(change, setPanelSize(place, 1, text))}
          />
          <p className="caption soft">{words.formHelp}</p>
        </div>
      ) : (
        <p className="soft">{words.notRectangle}</p>
      )}
      <div className="style-pair">
        <SelectField
          label={words.role}
          value={spec.role}
          choices={Object.entries(words.roles).map(([id, label]) => ({ id, label }))}
          onChange={(role) => make(change, setPanelRole(place, role as Role))}
        />
        <FoldField place={place} draft={open.draft} edits={edits} />
      </div>
      <StepOfPanel place={place} draft={open.draft} edits={edits} />
      {spec.on !== undefined && 'size' in spec && (
        <ShapeFields spec={spec} take={(edit) => take(change, edit)} place={place} />
      )}
      {'size' in spec && <OpeningList place={place} panel={spec} edits={edits} label={change} />}
      {spec.on === undefined ? (
        <p className="soft">{words.firstStays}</p>
      ) : (
        <div className="style-acts">
          <Button tone="quiet" onClick={() => make(words.changes.remove(named), removePanel(piece, panel))}>
            {words.removePanel(named, hangingOn(of, panel).size - 1)}
          </Button>
        </div>
      )}
    </>
  );
}

interface ShapeFieldsProps {
  readonly spec: RectangleDraft;
  readonly place: Place;
  readonly take: (edit: Edit) => ReturnType<EditorProps['edits']['take']>;
}

/** Where a panel starts along its fold, and how far its sides slope in. */
function ShapeFields({ spec: { at, taper }, place, take }: ShapeFieldsProps) {
  const words = useDraftingWords();
  return (
    <Opening head={words.shape}>
      <div className="style-form">
        <FormField
          label={words.start}
          steps
          help={words.startHelp}
          value={at ?? ''}
          onTake={(text) => take(setPanelStart(place, text))}
        />
        <FormField
          label={words.taper}
          steps
          help={words.taperHelp}
          value={typeof taper === 'string' ? taper : (taper?.join(', ') ?? '')}
          onTake={(text) => take(setPanelTaper(place, text))}
        />
      </div>
    </Opening>
  );
}
