import { Trash2 } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Counted, Tie } from '../../../shared/workbook';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/button';
import { Opening } from '../../ui/opening';
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
