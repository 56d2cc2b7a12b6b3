import { useDeferredValue } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { setAbout } from '../../core/draft/about';
import type { Draft } from '../../core/draft/draft';
import type { BoxResult } from '../../state/results/box-result';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { Opening } from '../../ui/frame/opening';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { ClosingList } from './closing-list';
import { FoldedView } from './folded-view';
import { FormField } from './form-field';
import { InHand } from './in-hand';
import { JointList } from './joint-list';
import { RoomAndPaper } from './room-and-paper';
import { SizeList } from './size-list';
import { StyleFindings } from './style-findings';
import { StyleNet } from './style-net';
import type { DraftEdits } from './use-draft';

export interface EditorProps {
  readonly recipe: Recipe;
  readonly box: BoxResult;
  readonly open: { readonly text: string; readonly draft: Draft };
  readonly edits: DraftEdits;
}

/** Net, what is selected, the folded box, and everything else of the style in lists below. */
export function StyleEditor(props: EditorProps) {
  const words = useDraftingWords();
  const { recipe, box, open, edits } = props;
  const rested = useDeferredValue(box);
  const { place } = edits;
  const pieces = Object.entries(open.draft.pieces ?? {});
  const piece = box.net.pieces.find(({ id }) => id === place.piece) ?? box.net.pieces[0];
  if (piece === undefined) return null;
  return (
    <div className="style-editor">
      <section className="style-view" aria-label={words.net}>
        {pieces.length > 1 && (
          <ChoiceStrip
            label={words.piece}
            value={place.piece}
            choices={pieces.map(([id, { label }]) => ({ id, label }))}
            onChange={(id) => edits.select({ piece: id, panel: '' })}
          />
        )}
        <StyleNet recipe={recipe} box={box} piece={piece} draft={open.draft} edits={edits} />
      </section>
      <section className="style-in-hand" aria-labelledby="style-in-hand-head">
        <h3 id="style-in-hand-head">{words.inHand}</h3>
        <InHand {...props} />
      </section>
      <section className="style-beside">
        <FoldedView box={rested} piece={rested.net.pieces.find(({ id }) => id === piece.id) ?? piece} />
        <RoomAndPaper box={rested} recipe={recipe} piece={piece.id} />
      </section>
      <section className="style-findings" aria-labelledby="style-findings-head">
        <h3 id="style-findings-head">{words.findings}</h3>
        <StyleFindings recipe={recipe} box={rested} text={open.text} />
      </section>
      <section className="style-lists">
        <SizeList draft={open.draft} edits={edits} values={box.net.values} />
        <JointList draft={open.draft} edits={edits} />
        <ClosingList draft={open.draft} edits={edits} />
        <AboutForm draft={open.draft} edits={edits} />
      </section>
    </div>
  );
}

/** What the style is called, and what is said of it where styles are picked. */
function AboutForm({ draft, edits: { take } }: { readonly draft: Draft; readonly edits: DraftEdits }) {
  const words = useDraftingWords();
  const labels = { name: words.styleName, goodFor: words.goodFor, watchOut: words.watchOut };
  return (
    <Opening head={words.about}>
      <div className="style-form">
        {(['name', 'goodFor', 'watchOut'] as const).map((field) => (
          <FormField
            key={field}
            label={labels[field]}
            value={draft[field]}
            most={field === 'name' ? 80 : 300}
            onTake={(text) => take(words.changes.about, setAbout(field, text))}
          />
        ))}
      </div>
    </Opening>
  );
}
