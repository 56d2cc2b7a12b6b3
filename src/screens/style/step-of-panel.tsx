import { ArrowDown, ArrowUp } from 'lucide-react';
import type { Draft, Place } from '../../core/draft/draft';
import { foldWith, moveStep, stepOf } from '../../core/draft/steps';
import { turns } from '../../core/styles/language/folding';
import { IconButton } from '../../ui/fields/button';
import { SelectField } from '../../ui/fields/text-field';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { useStepWords } from './step-words';
import type { DraftEdits } from './use-draft';

const ALONE = 'alone';
const NEVER = 'never';

interface StepOfPanelProps {
  readonly place: Place;
  readonly draft: Draft;
  readonly edits: DraftEdits;
}

/** The step that folds a panel: which panels fold with it, and when it comes. */
export function StepOfPanel({ place: { piece, panel }, draft, edits: { make } }: StepOfPanelProps) {
  const words = useDraftingWords();
  const said = useStepWords();
  const of = draft.pieces?.[piece];
  const spec = of?.panels[panel];
  if (of === undefined || spec === undefined || !turns(spec)) return null;
  const { closing } = of;
  const now = stepOf(closing, panel);
  const own = closing[now];
  const text = own === undefined ? '' : said(own);
  const isShared = own !== undefined && own.do !== 'glue' && own.panels.length > 1;
  const steps = closing.flatMap((step, at) => {
    const closes = step.do !== 'glue' && !('to' in step);
    return closes || at === now ? [{ id: String(at), label: words.inStep(at + 1, said(step)) }] : [];
  });
  const choices = [
    ...(now < 0 ? [{ id: NEVER, label: words.neverFolds }] : []),
    ...steps,
    ...(isShared || now < 0 ? [{ id: ALONE, label: words.foldsAlone }] : []),
  ];
  return (
    <div className="style-step">
      <SelectField
        label={words.foldsIn}
        value={now < 0 ? NEVER : String(now)}
        choices={choices}
        onChange={(id) => {
          if (id !== NEVER)
            make(words.changes.order, foldWith(piece, panel, id === ALONE ? null : Number(id)));
        }}
      />
      {own !== undefined && (
        <>
          <IconButton
            label={words.earlier(text)}
            icon={<ArrowUp />}
            disabled={now === 0}
            onClick={() => make(words.changes.order, moveStep(piece, now, -1))}
          />
          <IconButton
            label={words.later(text)}
            icon={<ArrowDown />}
            disabled={now === closing.length - 1}
            onClick={() => make(words.changes.order, moveStep(piece, now, 1))}
          />
        </>
      )}
    </div>
  );
}
