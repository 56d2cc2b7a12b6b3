import { setAbout } from '../../core/draft/about';
import type { Draft } from '../../core/draft/draft';
import { Opening } from '../../ui/frame/opening';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { FormField } from './form-field';
import type { DraftEdits } from './use-draft';

/** What the style is called, and what is said of it where styles are picked. */
export function AboutForm({ draft, edits: { take } }: { readonly draft: Draft; readonly edits: DraftEdits }) {
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
