import { SelectField } from '../../ui/fields/text-field';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { EdgeForm } from './edge-form';
import { PanelForm } from './panel-form';
import { usePanelNames } from './panel-names';
import { Refusals } from './refusals';
import { sidesOf } from './sides-of';
import type { EditorProps } from './style-editor';

const WHOLE = '';

/** What is selected, as two lists that say the same as the net, and everything that can be done with it. */
export function InHand(props: EditorProps) {
  const { box, open, edits } = props;
  const words = useDraftingWords();
  const names = usePanelNames();
  const { place, select } = edits;
  const panels = Object.keys(open.draft.pieces?.[place.piece]?.panels ?? {});
  const edges = [
    ...new Set(
      sidesOf(box, open.draft, place.piece).flatMap(({ panel, edge }) =>
        panel === place.panel ? [edge] : [],
      ),
    ),
  ];
  return (
    <div className="style-form">
      <div className="style-picks">
        <SelectField
          label={words.panel}
          value={place.panel}
          choices={panels.map((id) => ({ id, label: names.panel(id) }))}
          onChange={(panel) => select({ piece: place.piece, panel })}
        />
        <SelectField
          label={words.edge}
          value={place.edge ?? WHOLE}
          choices={[
            { id: WHOLE, label: words.wholePanel },
            ...edges.map((id) => ({ id, label: names.sideOf(id) })),
          ]}
          onChange={(edge) =>
            select({ piece: place.piece, panel: place.panel, ...(edge === WHOLE ? {} : { edge }) })
          }
        />
      </div>
      <Refusals of={edits.refusals} title={words.refused} />
      {place.edge === undefined ? (
        <PanelForm key={place.panel} {...props} />
      ) : (
        <EdgeForm key={`${place.panel}.${place.edge}`} {...props} edge={place.edge} />
      )}
    </div>
  );
}
