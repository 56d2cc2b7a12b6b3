import { useCallback, useMemo } from 'react';
import type { DressingPiece } from '../../../shared/workbook';
import { drawInsert } from '../../core/draw/sheet/insert-drawing';
import { type FlatSize, insertPlan } from '../../core/dress';
import type { BoxNet } from '../../core/net';
import type { Ticks } from '../../core/units';
import { DrawingView, type Space } from '../../ui/drawing/drawing-view';
import { useRuler } from '../../ui/fields/measure';

interface InsertViewProps {
  readonly net: BoxNet;
  readonly piece: DressingPiece;
  readonly size: FlatSize;
  readonly mark: Ticks;
}

/** An insert as it is cut, with its numbers; nothing for one that is cut plain. */
export function InsertView({ net, piece, size, mark }: InsertViewProps) {
  const ruler = useRuler();
  const plan = useMemo(() => insertPlan(net, piece, size, mark), [net, piece, size, mark]);
  const draw = useCallback(
    (space: Space) =>
      plan
        ? drawInsert(plan, piece.name, ruler, space)
        : {
            widthMm: 0,
            heightMm: 0,
            title: '',
            description: '',
            marks: [],
            scale: 1,
            origin: [0, 0] as const,
          },
    [plan, piece.name, ruler],
  );
  return plan ? (
    <div className="dressing-insert">
      <DrawingView draw={draw} still />
    </div>
  ) : null;
}
