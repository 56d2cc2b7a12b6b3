import { ArrowDown, ArrowUp } from 'lucide-react';
import { useState } from 'react';
import type { Draft } from '../../core/draft/draft';
import { proposeClosing } from '../../core/draft/edit-style';
import { addStep, moveStep, removeStep } from '../../core/draft/steps';
import { Button, IconButton } from '../../ui/fields/button';
import { SelectField } from '../../ui/fields/text-field';
import { Opening } from '../../ui/frame/opening';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { among } from './among';
import { keyed } from './keyed';
import { ListRow } from './list-row';
import { usePanelNames } from './panel-names';
import { useStepWords } from './step-words';
import type { DraftEdits } from './use-draft';

interface ClosingListProps {
  readonly draft: Draft;
  readonly edits: DraftEdits;
}

/** The steps that close the piece, first to last; each may be moved or taken out, and others added. */
export function ClosingList({ draft, edits }: ClosingListProps) {
  const words = useDraftingWords();
  const names = usePanelNames();
  const said = useStepWords();
  const { place, make, remake } = edits;
  const id = place.piece;
  const piece = draft.pieces?.[id];
  const folding = Object.entries(piece?.panels ?? {}).flatMap(([name, { on }]) =>
    on === undefined ? [] : [name],
  );
  const [panel, setPanel] = useState('');
  const [kind, setKind] = useState<'fold' | 'tuck'>('fold');
  if (piece === undefined) return null;
  const chosen = among(panel, folding);
  return (
    <Opening head={words.order}>
      <p className="soft">{words.orderWhy}</p>
      <ol className="style-rows style-steps">
        {keyed(piece.closing, said).map(({ key, value: step, at }) => {
          const text = said(step);
          return (
            <ListRow key={key} text={text} onRemove={() => make(words.changes.order, removeStep(id, at))}>
              <IconButton
                label={words.earlier(text)}
                icon={<ArrowUp />}
                disabled={at === 0}
                onClick={() => make(words.changes.order, moveStep(id, at, -1))}
              />
              <IconButton
                label={words.later(text)}
                icon={<ArrowDown />}
                disabled={at === piece.closing.length - 1}
                onClick={() => make(words.changes.order, moveStep(id, at, 1))}
              />
            </ListRow>
          );
        })}
      </ol>
      <div className="style-three">
        <SelectField
          label={words.stepKind}
          value={kind}
          choices={(['fold', 'tuck'] as const).map((each) => ({ id: each, label: words.stepKinds[each] }))}
          onChange={(each) => setKind(each === 'tuck' ? each : 'fold')}
        />
        <SelectField
          label={words.stepPanel}
          value={chosen}
          choices={folding.map((each) => ({ id: each, label: names.panel(each) }))}
          onChange={setPanel}
        />
        <Button onClick={() => make(words.changes.order, addStep(id, kind, [chosen]))}>
          {words.addStep}
        </Button>
      </div>
      <div className="style-acts">
        <Button onClick={() => remake(words.changes.order, (text) => proposeClosing(text, id))}>
          {words.workOut}
        </Button>
      </div>
    </Opening>
  );
}
