import { useState } from 'react';
import {
  type CornerCut,
  canCut,
  cornersOfEdge,
  cutAt,
  type EdgeCurve,
  isCutEdge,
  setCut,
} from '../../core/draft/cuts';
import type { PieceDraft, Place } from '../../core/draft/draft';
import type { EdgeName } from '../../core/styles';
import { SelectField } from '../../ui/fields/text-field';
import { Opening } from '../../ui/frame/opening';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { FormField } from './form-field';
import { usePanelNames } from './panel-names';
import type { DraftEdits } from './use-draft';

interface EdgeShapeProps {
  readonly of: PieceDraft;
  readonly place: Place;
  readonly edge: EdgeName;
  readonly edits: DraftEdits;
}

/** How a free edge and its two corners are cut. Only what can be cut there is asked. Whether it starts open is settled once, so that it does not close while in use. */
export function EdgeShape({ of, place, edge, edits }: EdgeShapeProps) {
  const words = useDraftingWords();
  const names = usePanelNames();
  const panel = of.panels[place.panel];
  const [wasCut] = useState(panel !== undefined && isCutEdge(of, `${place.panel}.${edge}`));
  if (panel === undefined) return null;
  const curve = cutAt(panel, edge, 'edge');
  const curves = (['arch', 'scoop'] as const).filter((cut) => canCut(of, place.panel, edge, cut));
  const corners = cornersOfEdge(panel, edge).filter(({ at }) => canCut(of, place.panel, at, 'round'));
  if (curves.length + corners.length === 0) return null;
  const change = words.changes.change(names.panel(place.panel));
  return (
    <Opening head={words.edgeShape} open={wasCut}>
      <div className="style-form">
        {curves.length > 0 && (
          <div className="style-pair">
            <SelectField
              label={words.curve}
              value={curve?.cut ?? 'straight'}
              choices={['straight', ...curves].map((id) => ({ id, label: words.curves[id] ?? id }))}
              onChange={(id) =>
                edits.make(change, setCut(place, edge, id === 'straight' ? null : (id as EdgeCurve), 'edge'))
              }
            />
            {curve && (
              <FormField
                steps
                label={words.curveSize}
                value={curve.size}
                onTake={(text) => edits.take(change, setCut(place, curve.at, curve.cut, 'edge', text))}
              />
            )}
          </div>
        )}
        {corners.map(({ at, beside }) => {
          const cut = cutAt(panel, at, 'corner');
          return (
            <div key={at} className="style-pair">
              <SelectField
                label={words.cornerAt(names.sideOf(beside))}
                value={cut?.cut ?? 'square'}
                choices={['square', 'round', 'slant'].map((id) => ({ id, label: words.corners[id] ?? id }))}
                onChange={(id) =>
                  edits.make(change, setCut(place, at, id === 'square' ? null : (id as CornerCut), 'corner'))
                }
              />
              {cut && (
                <FormField
                  steps
                  label={cut.cut === 'round' ? words.radius : words.slantSize}
                  value={cut.size}
                  onTake={(text) => edits.take(change, setCut(place, at, cut.cut, 'corner', text))}
                />
              )}
            </div>
          );
        })}
      </div>
    </Opening>
  );
}
