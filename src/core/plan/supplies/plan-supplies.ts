import type { FavorEvent, GlueSupply, Supply } from '../../rows';
import type { Ticks } from '../../units';
import { isRolled } from '../buying/stock-rows';
import type { EventBox } from '../event/event-boxes';
import { remark } from '../event/remarks';
import type { EventFinding, PlannedGlue, PlannedPieces, PlannedRolls } from '../event/types';
import { planCounted } from './plan-counted';
import { planGlue } from './plan-glue';
import { planTape, type TapedLine, tapeOfBox } from './plan-tape';
import { type BoxTie, planTies, tiesOfBoxes } from './plan-ties';

/** Everything beside paper that the boxes of an event take. */
export interface PlannedSupplies {
  readonly taped: readonly TapedLine[];
  readonly ties: readonly BoxTie[];
  readonly rolls: readonly PlannedRolls[];
  readonly pieces: readonly PlannedPieces[];
  readonly glue: PlannedGlue | null;
  readonly findings: readonly EventFinding[];
}

const isGlue = (supply: Supply): supply is GlueSupply => supply.kind === 'glue';

/** Tape or glue for the joints, tape for the dressing, ribbon and twine, and whatever is counted. Lengths are cut on these marks. */
export function planSupplies(
  event: FavorEvent,
  boxes: readonly EventBox[],
  supplies: readonly Supply[],
  mark: Ticks,
): PlannedSupplies {
  const glue = supplies.filter(isGlue).find(({ id }) => id === event.glueId);
  const tape = supplies.filter(isRolled).find(({ id, kind }) => id === event.tapeId && kind === 'tape');
  const taped = boxes.map((box) => ({ box, strips: tapeOfBox(box, glue !== undefined) }));
  const ties = tiesOfBoxes(boxes, mark);
  const onTape = planTape(taped, tape);
  const tied = planTies(ties, supplies);
  const counted = planCounted(boxes, supplies);
  const glueGone = (event.glueId ?? null) !== null && !glue;
  return {
    taped,
    ties,
    rolls: [...(onTape.rolls ? [onTape.rolls] : []), ...tied.rolls],
    pieces: counted.pieces,
    glue: glue && boxes.length > 0 ? planGlue(boxes, glue) : null,
    findings: [
      ...(glueGone ? [remark('glue-missing', event.id, event.name)] : []),
      ...onTape.findings,
      ...tied.findings,
      ...counted.findings,
    ],
  };
}
