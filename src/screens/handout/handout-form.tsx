import { Plus, Trash2 } from 'lucide-react';
import { useId } from 'react';
import type { Handout, Recipe } from '../../../shared/workbook';
import { type BoxCard, subjectOf } from '../../core/bench';
import { placeTips } from '../../print';
import { useWorkbook } from '../../state/use-workbook';
import { Button, IconButton } from '../../ui/fields/button';
import { SelectField, TextField } from '../../ui/fields/text-field';
import { usePageWords, useWords } from '../../ui/words';

const NOTHING: Handout = { tips: [], credits: '' };
const WHOLE = 'whole';
const KEPT = 'kept';

/** Tips under steps, how hard it is, whom to thank: each an undo step of its own. */
export function HandoutForm({ recipe, cards }: { recipe: Recipe; cards: readonly BoxCard[] }) {
  const words = usePageWords().handout;
  const edit = useWorkbook((state) => state.edit);
  const { tips, credits, difficulty } = recipe.handout ?? NOTHING;
  const change = (label: string, of: (old: Handout) => Handout) =>
    void edit('recipes', recipe.id, label, (old) => ({ ...old, handout: of(old.handout ?? NOTHING) }));
  return (
    <>
      <h3>{words.tips}</h3>
      <p className="soft">{words.tipsWhy}</p>
      <Tips tips={tips} cards={cards} change={change} />
      <SelectField
        label={words.difficulty}
        value={difficulty ?? ''}
        choices={[
          { id: '', label: words.workedOut },
          { id: 'first-box', label: words.firstBox },
          { id: 'some-practice', label: words.somePractice },
          { id: 'patience', label: words.patience },
        ]}
        onChange={(id) =>
          change(words.difficulty, ({ difficulty: _, ...old }) =>
            id === '' ? old : { ...old, difficulty: id as NonNullable<Handout['difficulty']> },
          )
        }
      />
      <TextField
        label={words.credits}
        help={words.creditsHelp}
        value={credits}
        most={4000}
        onChange={(text) => change(words.credits, (old) => ({ ...old, credits: text }))}
      />
    </>
  );
}

interface TipsProps {
  readonly tips: Handout['tips'];
  readonly cards: readonly BoxCard[];
  readonly change: (label: string, of: (old: Handout) => Handout) => void;
}

/** Every tip with the step it stands at. */
function Tips({ tips, cards, change }: TipsProps) {
  const words = usePageWords().handout;
  const changeTip = (id: string, given: Partial<Handout['tips'][number]>) =>
    change(words.tip, (old) => ({
      ...old,
      tips: old.tips.map((tip) => (tip.id === id ? { ...tip, ...given } : tip)),
    }));
  const places = placeTips(tips, cards);
  const steps = cards.flatMap((card, at) =>
    card.steps.map((step, number) => ({
      id: `${at} ${step.id}`,
      label: words.stepAt(number + 1, step.headline.slice(0, 60), cards.length > 1 ? card.piece.label : null),
      of: { step: step.id, about: subjectOf(card, step) },
      tips: places.at(card, step),
    })),
  );
  const whole = { id: WHOLE, label: words.wholeBox };
  const kept = { id: KEPT, label: words.keptTip };
  const placeOf = (tip: Handout['tips'][number]): string =>
    places.kept.includes(tip) ? KEPT : (steps.find((place) => place.tips.includes(tip))?.id ?? WHOLE);
  const hang = ({ id }: Handout['tips'][number], at: string) => {
    if (at === KEPT) return;
    change(words.tip, (old) => ({
      ...old,
      tips: old.tips.map((tip) =>
        tip.id === id
          ? { id, says: tip.says, ...(steps.find((place) => place.id === at)?.of ?? { step: null }) }
          : tip,
      ),
    }));
  };
  return (
    <>
      {tips.map((tip) => (
        <div key={tip.id} className="handout-tip">
          <NoteField label={words.tip} value={tip.says} onChange={(says) => changeTip(tip.id, { says })} />
          <SelectField
            label={words.tipAt}
            value={placeOf(tip)}
            choices={[whole, ...steps, ...(places.kept.includes(tip) ? [kept] : [])]}
            onChange={(at) => hang(tip, at)}
          />
          <IconButton
            label={words.removeTip}
            icon={<Trash2 />}
            onClick={() =>
              change(words.removeTip, (old) => ({ ...old, tips: old.tips.filter(({ id }) => id !== tip.id) }))
            }
          />
        </div>
      ))}
      <Button
        icon={<Plus aria-hidden="true" />}
        onClick={() =>
          change(words.addTip, (old) => ({
            ...old,
            tips: [...old.tips, { id: freeId(old.tips), step: null, says: '' }],
          }))
        }
      >
        {words.addTip}
      </Button>
    </>
  );
}

/** The first `tip-n` that is not taken. */
function freeId(tips: Handout['tips']): string {
  let number = tips.length + 1;
  while (tips.some(({ id }) => id === `tip-${number}`)) number++;
  return `tip-${number}`;
}

interface NoteFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
}

/** Most letters of a note. source: `note` of the file format */
const MOST_LETTERS = 4000;

function NoteField({ label, value, onChange }: NoteFieldProps) {
  const { field: words, locale } = useWords();
  const id = useId();
  // A browser cuts a paste that is too long without a word.
  const full = value.length >= MOST_LETTERS;
  return (
    <div className="field">
      <div className="field-head">
        <label htmlFor={id}>{label}</label>
      </div>
      <textarea
        id={id}
        className="handout-note"
        rows={3}
        maxLength={MOST_LETTERS}
        value={value}
        aria-describedby={full ? `${id}-full` : undefined}
        onChange={(event) => onChange(event.target.value)}
      />
      {full && (
        <p id={`${id}-full`} className="field-refused" role="status">
          {words.full(MOST_LETTERS.toLocaleString(locale))}
        </p>
      )}
    </div>
  );
}
