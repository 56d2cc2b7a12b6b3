import { useState } from 'react';
import type { Draft } from '../../core/draft/draft';
import { addSeam, removeJoint, removeSeam, setJoint } from '../../core/draft/joints';
import { SIDES } from '../../core/draft/sides';
import { Button } from '../../ui/fields/button';
import { SelectField } from '../../ui/fields/text-field';
import { Opening } from '../../ui/frame/opening';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { among } from './among';
import { ListRow } from './list-row';
import { usePanelNames } from './panel-names';
import type { DraftEdits } from './use-draft';

interface JointListProps {
  readonly draft: Draft;
  readonly edits: DraftEdits;
}

/** What is glued to what, and which edges meet when the box is closed. */
export function JointList({ draft, edits }: JointListProps) {
  const words = useDraftingWords();
  const names = usePanelNames();
  const { place, make } = edits;
  const id = place.piece;
  const piece = draft.pieces?.[id];
  if (piece === undefined) return null;
  const edge = (where: string) => {
    const [panel = '', side = ''] = where.split('.');
    return names.edge(panel, side);
  };
  return (
    <Opening head={words.joints}>
      <p className="soft">{words.jointsWhy}</p>
      <ul className="style-rows">
        {piece.joints.map(({ panel, onto }) => {
          const text = words.gluedOnto(names.panel(panel), names.panel(onto));
          return (
            <ListRow
              key={`${panel} ${onto}`}
              text={text}
              onRemove={() => make(words.changes.joint, removeJoint(id, panel, onto))}
            />
          );
        })}
        {(piece.seams ?? []).map(([one, other]) => (
          <ListRow
            key={`${one} ${other}`}
            text={words.edgesMeet(edge(one), edge(other))}
            onRemove={() => make(words.changes.joint, removeSeam(id, one, other))}
          />
        ))}
      </ul>
      <NewJoint draft={draft} edits={edits} />
      <NewSeam draft={draft} edits={edits} />
    </Opening>
  );
}

function NewJoint({ draft, edits: { place, make } }: JointListProps) {
  const words = useDraftingWords();
  const names = usePanelNames();
  const panels = Object.keys(draft.pieces?.[place.piece]?.panels ?? {});
  const [panel, setPanel] = useState('');
  const [onto, setOnto] = useState('');
  const [lap, setLap] = useState<'inside' | 'outside'>('inside');
  const choices = panels.map((each) => ({ id: each, label: names.panel(each) }));
  return (
    <div className="style-three">
      <SelectField
        label={words.glueThis}
        value={among(panel || place.panel, panels)}
        choices={choices}
        onChange={setPanel}
      />
      <SelectField label={words.ontoThis} value={among(onto, panels)} choices={choices} onChange={setOnto} />
      <SelectField
        label={words.lap}
        value={lap}
        choices={(['inside', 'outside'] as const).map((each) => ({ id: each, label: words.laps[each] }))}
        onChange={(each) => setLap(each === 'outside' ? each : 'inside')}
      />
      <Button
        onClick={() =>
          make(
            words.changes.joint,
            setJoint(place.piece, among(panel || place.panel, panels), among(onto, panels), lap),
          )
        }
      >
        {words.addJoint}
      </Button>
    </div>
  );
}

function NewSeam({ draft, edits: { place, make } }: JointListProps) {
  const words = useDraftingWords();
  const names = usePanelNames();
  const [one, setOne] = useState('');
  const [other, setOther] = useState('');
  const edges = Object.entries(draft.pieces?.[place.piece]?.panels ?? {}).flatMap(([panel, spec]) =>
    'size' in spec ? SIDES.map((side) => `${panel}.${side}`) : [],
  );
  const first = one || `${place.panel}.${place.edge ?? 'left'}`;
  const choices = edges.map((id) => {
    const [panel = '', side = ''] = id.split('.');
    return { id, label: names.edge(panel, side) };
  });
  return (
    <div className="style-three">
      <SelectField label={words.firstEdge} value={among(first, edges)} choices={choices} onChange={setOne} />
      <SelectField
        label={words.otherEdge}
        value={among(other, edges)}
        choices={choices}
        onChange={setOther}
      />
      <Button
        onClick={() =>
          make(words.changes.joint, addSeam(place.piece, among(first, edges), among(other, edges)))
        }
      >
        {words.addSeam}
      </Button>
    </div>
  );
}
