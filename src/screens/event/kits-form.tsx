import type { FavorEvent } from '../../../shared/workbook';
import type { EventPlan, KitList } from '../../core/plan';
import { WideBox } from '../../ui/drawing/wide-box';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { CountStepper } from '../../ui/fields/count-stepper';
import { Length, sizeWords, useRuler } from '../../ui/fields/measure';
import { Opening } from '../../ui/frame/opening';
import { PrintActs } from '../../ui/frame/print-acts';
import { usePrinter } from '../../ui/frame/printer';
import { usePageWords } from '../../ui/words';
import type { EventEdits } from './event-edits';
import { LessonForm } from './lesson-form';

/** Twelve round a table. source: common practice, no source */
const USUAL_KITS = 12;

interface KitsFormProps {
  readonly event: FavorEvent;
  readonly edits: EventEdits;
  readonly plan: EventPlan | null;
}

/** An order of kits: how many, what one holds, and the labels to print. */
export function KitsForm({ event, edits, plan }: KitsFormProps) {
  const words = usePageWords().event;
  const printer = usePrinter();
  const kits = event.kits ?? null;
  const kit = kits === null ? null : (plan?.kit ?? null);
  return (
    <Opening head={<strong>{words.kitsHead}</strong>} open={kits !== null}>
      <p className="soft">{words.kitsWhy}</p>
      <div className="event-fields">
        <ChoiceStrip
          label={words.kitsHead}
          value={kits === null ? 'favors' : 'kits'}
          choices={[
            { id: 'favors', label: words.notForKits },
            { id: 'kits', label: words.forKits },
          ]}
          onChange={(id) => edits.setKits(id === 'kits' ? USUAL_KITS : null)}
        />
        {kits !== null && (
          <div className="field">
            <span className="field-name">{words.kits}</span>
            <CountStepper label={words.kits} value={kits} least={1} most={10_000} onChange={edits.setKits} />
          </div>
        )}
      </div>
      {kit && plan && (
        <>
          <KitTable kit={kit} />
          <LessonForm event={event} edits={edits} plan={plan} />
          <PrintActs
            acts={[
              { label: words.printKits, make: (paper) => printer.kitLabels(plan, paper) },
              { label: words.printLesson, make: (paper) => printer.lessonPlan(plan, paper) },
            ]}
          />
        </>
      )}
    </Opening>
  );
}

function KitTable({ kit }: { kit: KitList }) {
  const words = usePageWords().event;
  const ruler = useRuler();
  const rows = [
    ...kit.cards.map(({ name, paper, across, up, count }) => ({
      name: paper === null ? name : `${name}, ${paper}`,
      size: sizeWords([across, up], ruler),
      count,
    })),
    ...kit.lengths.map(({ name, length }) => ({ name, size: <Length of={length} />, count: 1 })),
    ...kit.counted.map(({ name, count }) => ({ name, size: '', count })),
  ].filter(({ count }) => count > 0);
  return (
    <WideBox label={words.kitHolds}>
      <table className="event-table">
        <caption>
          {words.kitHolds} <span className="soft">{words.kitsOf(kit.kits, kit.packing)}</span>
        </caption>
        <thead>
          <tr>
            <th scope="col">{words.kitWhat}</th>
            <th scope="col">{words.kitSize}</th>
            <th scope="col">{words.kitOne}</th>
            <th scope="col">{words.kitAll}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, size, count }, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two lines may give cards of the same name
            <tr key={`${name} ${at}`}>
              <th scope="row">{name}</th>
              <td>{size}</td>
              <td>{count}</td>
              <td>{count * kit.packing}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </WideBox>
  );
}
