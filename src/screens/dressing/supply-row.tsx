import { Trash2 } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Counted, Supply, Tie } from '../../../shared/workbook';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { SelectField, TextField } from '../../ui/fields/text-field';
import { Opening } from '../../ui/frame/opening';
import { usePageWords } from '../../ui/words';
import type { DressingEdits } from './dressing-edits';

interface SupplyRowProps {
  readonly each: Pick<Tie | Counted, 'id' | 'name' | 'perBox' | 'supplyId'>;
  readonly among: 'ties' | 'counted';
  readonly edits: DressingEdits;
  readonly boxes: number;
  readonly size?: ReactNode;
  readonly children: ReactNode;
}

/** Something from a supply on one line: how many a box, from which, how many in all; it opens to its fields and can be taken off. */
export function SupplyRow({ each, among, edits, boxes, size, children }: SupplyRowProps) {
  const words = usePageWords().dressing;
  const supply = useWorkbook((state) =>
    each.supplyId === null ? undefined : state.rows.supplies.get(each.supplyId),
  );
  const facts = [
    words.eachBox(each.perBox),
    words.from(supply?.name ?? words.noSupply),
    ...(boxes > 0 ? [words.forAll(boxes * each.perBox, boxes)] : []),
  ];
  return (
    <li>
      <Opening
        head={
          <span>
            <strong>{each.name}</strong> {size && <span className="dressing-size">{size}</span>}{' '}
            <span className="soft">{facts.join(', ')}</span>
          </span>
        }
      >
        {children}
        <Button
          icon={<Trash2 aria-hidden="true" />}
          aria-label={words.removeOf(each.name)}
          onClick={() => edits.takeOff(words.removePiece, among, each.id)}
        >
          {words.removePiece}
        </Button>
      </Opening>
    </li>
  );
}

interface SupplyFieldsProps {
  readonly each: Pick<Tie | Counted, 'name' | 'supplyId'>;
  /** The supplies it may come from. */
  readonly from: readonly Supply[];
  readonly onChange: (label: string, change: Partial<Pick<Tie & Counted, 'name' | 'supplyId'>>) => void;
}

/** What such a thing is called, and which supply it comes from. */
export function SupplyFields({ each, from, onChange }: SupplyFieldsProps) {
  const words = usePageWords().dressing;
  return (
    <>
      <TextField
        label={words.pieceName}
        value={each.name}
        onChange={(name) => onChange(words.pieceName, { name })}
      />
      <SelectField
        label={words.supply}
        of={each.name}
        value={each.supplyId ?? ''}
        choices={[{ id: '', label: words.noSupply }, ...from.map(({ id, name }) => ({ id, label: name }))]}
        onChange={(id) => onChange(words.supply, { supplyId: id === '' ? null : id })}
        {...(from.length === 0 ? { help: words.noSupplyWhy } : {})}
      />
    </>
  );
}
