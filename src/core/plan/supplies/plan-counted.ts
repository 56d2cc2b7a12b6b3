import type { PieceSupply, Supply } from '../../rows';
import type { EventBox } from '../event/event-boxes';
import { remark } from '../event/remarks';
import type { EventFinding, PlannedPieces } from '../event/types';

const isCounted = (supply: Supply): supply is PieceSupply => 'onHandPieces' in supply;

/** Seals, foam squares, bags, contents: how many of each for all boxes. */
export function planCounted(
  boxes: readonly EventBox[],
  supplies: readonly Supply[],
): { readonly pieces: readonly PlannedPieces[]; readonly findings: readonly EventFinding[] } {
  const wanted = boxes.flatMap((box) => (box.dressing?.counted ?? []).map((counted) => ({ box, counted })));
  const known = supplies.filter(isCounted);
  const findings = wanted
    .filter(({ counted }) => !known.some(({ id }) => id === counted.supplyId))
    .map(({ box, counted }) => remark('supply-missing', box.line.id, counted.name));
  const pieces = known.flatMap((supply): PlannedPieces[] => {
    const mine = wanted.filter(({ counted }) => counted.supplyId === supply.id);
    if (mine.length === 0) return [];
    const need = mine.reduce((sum, { box, counted }) => sum + counted.perBox * box.making, 0);
    return [{ supplyId: supply.id, name: supply.name, kind: supply.kind, need }];
  });
  return { pieces, findings };
}
