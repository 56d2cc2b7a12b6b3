import type { Counted, Dressing } from '../../../shared/workbook';
import { ownOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { CountStepper } from '../../ui/fields/count-stepper';
import { usePageWords } from '../../ui/words';
import type { DressingEdits } from './dressing-edits';
import { SupplyFields, SupplyRow } from './supply-row';

interface CountedListProps {
  readonly dressing: Dressing;
  readonly edits: DressingEdits;
  readonly boxes: number;
}

/** Seals, clips, foam squares, bags, what is given: how many to a box, and which supply they come from. */
export function CountedList({ dressing, edits, boxes }: CountedListProps) {
  const words = usePageWords().dressing;
  const supplies = useWorkbook((state) => state.rows.supplies);
  const counted = dressing.counted ?? [];
  if (counted.length === 0) return null;
  return (
    <section aria-labelledby="counted-head">
      <h3 id="counted-head">{words.counted}</h3>
      <ul className="dressing-rows">
        {counted.map((each) => {
          const pieces = ownOf(supplies, each.supplyId).filter((supply) => 'onHandPieces' in supply);
          const set = (label: string, change: Partial<Counted>) =>
            edits.setCounted(label, { ...each, ...change });
          return (
            <SupplyRow key={each.id} each={each} among="counted" edits={edits} boxes={boxes}>
              <div className="dressing-fields">
                <SupplyFields each={each} from={pieces} onChange={set} />
                <div className="field">
                  <span className="field-name">{words.perBox}</span>
                  <CountStepper
                    label={`${words.perBox}: ${each.name}`}
                    value={each.perBox}
                    least={1}
                    most={1000}
                    onChange={(perBox) => set(words.perBox, { perBox })}
                  />
                </div>
              </div>
            </SupplyRow>
          );
        })}
      </ul>
    </section>
  );
}
