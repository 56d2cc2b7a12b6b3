import type { FavorEvent, LabelSheet, NameCards } from '../../../shared/workbook';
import { usualCards } from '../../core/plan';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { inches, ticks } from '../../core/units';
import { namesTooLong, PAPER_MM, placesOn } from '../../print';
import { ownOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { CountStepper } from '../../ui/fields/count-stepper';
import { LengthField } from '../../ui/fields/length-field';
import { useRuler } from '../../ui/fields/measure';
import { SelectField, TextField } from '../../ui/fields/text-field';
import { PrintActs } from '../../ui/frame/print-acts';
import { usePrinter, usualPaper } from '../../ui/frame/printer';
import { usePageWords } from '../../ui/words';
import type { EventEdits } from './event-edits';

/** What the names are printed on, at which size; names that do not fit are told of before anything is printed. */
export function NameCardsForm({ event, edits }: { event: FavorEvent; edits: EventEdits }) {
  const words = usePageWords().guests;
  const printer = usePrinter();
  const { unit } = useRuler();
  const papers = useWorkbook((state) => state.rows.papers);
  const cards = event.nameCards ?? usualCards(unit);
  const set = (label: string, to: Partial<NameCards>) => void edits.setNameCards(label, { ...cards, ...to });
  const own = papers.get(cards.paperId ?? '');
  const sheet = own ? { widthMm: own.acrossMm, heightMm: own.upMm } : PAPER_MM[usualPaper(unit)];
  const fits = placesOn(cards, sheet).length > 0;
  const tooLong = namesTooLong(event.guests ?? [], cards);
  return (
    <div className="name-cards">
      <h3>{words.cardsHead}</h3>
      <ChoiceStrip
        label={words.printOn}
        value={cards.kind}
        choices={(['tag', 'place-card', 'label'] as const).map((id) => ({ id, label: words.kinds[id] }))}
        onChange={(kind) =>
          void edits.setNameCards(words.printOn, {
            ...usualCards(unit, kind),
            below: cards.below,
            showTable: cards.showTable,
          })
        }
      />
      <div className="event-fields event-fields-narrow">
        <Size label={words.width} of={cards.widthMm} set={(widthMm) => set(words.width, { widthMm })} />
        <Size label={words.height} of={cards.heightMm} set={(heightMm) => set(words.height, { heightMm })} />
        <Size label={words.mostName} of={cards.nameMm} set={(nameMm) => set(words.mostName, { nameMm })} />
        <TextField
          label={words.below}
          value={cards.below}
          most={80}
          onChange={(below) => set(words.below, { below })}
        />
        <SelectField
          label={words.paper}
          value={cards.paperId ?? ''}
          choices={[
            { id: '', label: words.printerPaper },
            ...ownOf(papers, cards.paperId).map(({ id, name }) => ({ id, label: name })),
          ]}
          onChange={(id) => set(words.paper, { paperId: id === '' ? null : id })}
        />
      </div>
      <label className="guest-tick">
        <input
          type="checkbox"
          checked={cards.showTable}
          onChange={({ target }) => set(words.showTable, { showTable: target.checked })}
        />
        {words.showTable}
      </label>
      {cards.labels && (
        <LabelFields labels={cards.labels} onChange={(label, labels) => set(label, { labels })} />
      )}
      {!fits && <p role="alert">{words.noneFits}</p>}
      {tooLong.length > 0 && <p role="status">{words.tooLong(tooLong.join(', '))}</p>}
      <PrintActs
        acts={[
          ...(fits
            ? [{ label: words.printNames, make: (paper: 'letter' | 'a4') => printer.nameCards(event, paper) }]
            : []),
          { label: words.printTables, make: (paper) => printer.tableList(event, paper) },
        ]}
      />
    </div>
  );
}

interface SizeProps {
  readonly label: string;
  readonly of: number;
  readonly set: (mm: number) => void;
  /** A distance that may be nothing. */
  readonly mayBeNone?: boolean;
}

function Size({ label, of, set, mayBeNone = false }: SizeProps) {
  return (
    <LengthField
      label={label}
      value={ticksOfMm(of)}
      least={mayBeNone ? ticks(0) : inches(0, 1, 8)}
      most={inches(24)}
      onChange={(length) => set(mmOfTicks(length))}
    />
  );
}

function LabelFields({
  labels,
  onChange,
}: {
  labels: LabelSheet;
  onChange: (label: string, labels: LabelSheet) => void;
}) {
  const words = usePageWords().guests;
  const set = (label: string, to: Partial<LabelSheet>) => onChange(label, { ...labels, ...to });
  const count = (label: string, value: number, most: number, to: (next: number) => Partial<LabelSheet>) => (
    <div className="field">
      <span className="field-name">{label}</span>
      <CountStepper
        label={label}
        value={value}
        least={1}
        most={most}
        onChange={(next) => set(label, to(next))}
      />
    </div>
  );
  return (
    <>
      <p className="soft">{words.labelsWhy}</p>
      <div className="event-fields event-fields-narrow">
        {count(words.across, labels.across, 20, (across) => ({ across }))}
        {count(words.down, labels.down, 40, (down) => ({ down }))}
        <Size mayBeNone label={words.left} of={labels.leftMm} set={(leftMm) => set(words.left, { leftMm })} />
        <Size mayBeNone label={words.top} of={labels.topMm} set={(topMm) => set(words.top, { topMm })} />
        <Size
          label={words.stepAcross}
          of={labels.stepAcrossMm}
          set={(stepAcrossMm) => set(words.stepAcross, { stepAcrossMm })}
        />
        <Size
          label={words.stepDown}
          of={labels.stepDownMm}
          set={(stepDownMm) => set(words.stepDown, { stepDownMm })}
        />
      </div>
    </>
  );
}
