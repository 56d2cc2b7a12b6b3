import { ITEMS } from '../../../shared/catalogue/items';
import type { Paper, Tool } from '../../../shared/workbook';
import { readSizes } from '../../core/units';
import { useRuler } from '../../ui/fields/measure';
import { NumberField } from '../../ui/fields/number-field';
import { PaperLabelField } from '../../ui/fields/paper-label-field';
import { SelectField, TextField } from '../../ui/fields/text-field';
import { useSay } from '../../ui/words';
import { useFrontDoorWords } from '../../ui/words/front-door-words';
import { type DoorDraft, MEASURED, NO_TOOL, soldPapers, TYPED, toolIdOf } from './door-draft';

interface QuestionsFormProps {
  readonly draft: DoorDraft;
  readonly put: (change: Partial<DoorDraft>) => void;
  readonly papers: readonly Paper[];
  readonly tools: readonly Tool[];
  readonly currency: string;
}

/** The four questions. */
export function QuestionsForm({ draft, put, papers, tools, currency }: QuestionsFormProps) {
  const words = useFrontDoorWords();
  const say = useSay();
  const { unit } = useRuler();
  const measured = draft.item === MEASURED;
  const sizeUnread = draft.size.trim() !== '' && readSizes(draft.size, unit) === null;
  return (
    <form className="door-questions" onSubmit={(event) => event.preventDefault()}>
      <div className="door-question">
        <SelectField
          label={words.item}
          help={<p>{words.itemHelp}</p>}
          value={draft.item}
          choices={[
            { id: MEASURED, label: words.measured },
            ...ITEMS.map(({ id, name }) => ({ id, label: say(name) })),
          ]}
          onChange={(item) => put({ item })}
        />
        {measured && (
          <TextField
            label={words.size}
            help={
              <p className={sizeUnread ? 'field-refused' : undefined}>
                {sizeUnread ? words.sizeUnread : words.sizeHelp}
              </p>
            }
            value={draft.size}
            most={60}
            onChange={(size) => put({ size })}
          />
        )}
        <NumberField
          label={words.each}
          help={<p>{words.eachHelp}</p>}
          value={draft.each}
          least={1}
          most={500}
          onChange={(each) => put({ each })}
        />
      </div>
      <div className="door-question">
        <NumberField
          label={words.favors}
          help={<p>{words.favorsHelp}</p>}
          value={draft.favors}
          least={1}
          most={100_000}
          onChange={(favors) => put({ favors })}
        />
      </div>
      <PaperQuestion draft={draft} put={put} papers={papers} currency={currency} />
      <div className="door-question">
        <SelectField
          label={words.tool}
          help={<p>{words.toolHelp}</p>}
          value={toolIdOf(draft.tool, tools, unit)}
          choices={[
            ...tools.map(({ id, name }) => ({ id, label: name })),
            ...(['trimmer', 'board', 'metric'] as const).map((id) => ({ id, label: words.tools[id] })),
            { id: NO_TOOL, label: words.noTool },
          ]}
          onChange={(tool) => put({ tool })}
        />
      </div>
    </form>
  );
}

/** The sheet: on the shelf, typed, or as sold. */
function PaperQuestion({ draft, put, papers, currency }: Omit<QuestionsFormProps, 'tools'>) {
  const words = useFrontDoorWords();
  const { unit } = useRuler();
  const paperId = draft.paper ?? papers[0]?.id ?? TYPED;
  return (
    <div className="door-question">
      <SelectField
        label={words.paper}
        help={<p>{words.paperHelp}</p>}
        value={paperId}
        choices={[
          ...papers.map(({ id, name }) => ({ id, label: name })),
          { id: TYPED, label: words.typed },
          ...soldPapers(unit).map((sold) => ({
            id: sold.sheet.id,
            label: words.sold(sold.sheet.name, sold.gsm),
          })),
        ]}
        onChange={(paper) => put({ paper })}
      />
      {paperId === TYPED && (
        <PaperLabelField
          label={words.typedPaper}
          words={words.label}
          currency={currency}
          text={draft.paperText}
          onText={(paperText) => put({ paperText })}
        />
      )}
    </div>
  );
}
