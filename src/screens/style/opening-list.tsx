import type { Place, RectangleDraft } from '../../core/draft/draft';
import { addHole, removeHole, setHole, turnSlit } from '../../core/draft/openings';
import { middleForms } from '../../core/draft/slits';
import { Button } from '../../ui/fields/button';
import { SelectField } from '../../ui/fields/text-field';
import { Opening } from '../../ui/frame/opening';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { FormField } from './form-field';
import { keyed } from './keyed';
import type { DraftEdits } from './use-draft';

const KINDS = ['window', 'round', 'slot', 'slit'] as const;

interface OpeningListProps {
  readonly place: Place;
  readonly panel: RectangleDraft;
  readonly edits: DraftEdits;
  /** What undo calls a change here. */
  readonly label: string;
}

/** What is cut out of a panel: windows, round holes, slots. */
export function OpeningList({ place, panel, edits: { make, take }, label }: OpeningListProps) {
  const words = useDraftingWords();
  const holes = panel.holes ?? [];
  return (
    <Opening head={words.openings} open={holes.length > 0}>
      <div className="style-form">
        {keyed(holes, ({ hole }) => hole).map(({ key, value: hole, at }) => (
          <div key={key} className="style-hole">
            {hole.hole === 'window' && (
              <FormField
                steps
                label={words.holeFields.margin}
                value={hole.margin}
                onTake={(text) => take(label, setHole(place, at, 'margin', text))}
              />
            )}
            {hole.hole !== 'window' && (
              <FormField
                steps
                label={hole.hole === 'slit' ? words.holeFields.long : words.holeFields.across}
                value={hole.hole === 'round' ? hole.across : hole.hole === 'slit' ? hole.long : hole.size[0]}
                onTake={(text) => take(label, setHole(place, at, 'across', text))}
              />
            )}
            {hole.hole === 'slot' && (
              <FormField
                steps
                label={words.holeFields.up}
                value={hole.size[1]}
                onTake={(text) => take(label, setHole(place, at, 'up', text))}
              />
            )}
            {hole.hole === 'slit' && (
              <SelectField
                label={words.slitRuns}
                value={hole.runs}
                choices={(['across', 'up'] as const).map((id) => ({ id, label: words.slitWays[id] }))}
                onChange={(id) => make(label, turnSlit(place, at, id === 'up' ? id : 'across'))}
              />
            )}
            {hole.hole !== 'window' &&
              (['along', 'out'] as const).map((way, nth) => (
                <FormField
                  key={way}
                  steps
                  label={(panel.on === undefined ? words.middleOfFirst : words.middle)[way]}
                  value={middleForms(panel, hole)[nth] ?? ''}
                  onTake={(text) => take(label, setHole(place, at, way, text))}
                />
              ))}
            <Button
              tone="quiet"
              onClick={() => make(words.takeOut(words.holes[hole.hole]), removeHole(place, at))}
            >
              {words.takeOut(words.holes[hole.hole])}
            </Button>
          </div>
        ))}
        <div className="style-acts">
          {KINDS.map((kind) => (
            <Button key={kind} onClick={() => make(words.addHole[kind], addHole(place, kind))}>
              {words.addHole[kind]}
            </Button>
          ))}
        </div>
      </div>
    </Opening>
  );
}
