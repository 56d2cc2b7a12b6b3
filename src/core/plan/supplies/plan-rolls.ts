import type { RollSupply } from '../../rows';
import { millimetres, type Ticks, ticks } from '../../units';
import { type CutLength, fillRolls } from '../buying/rolls';
import { remark } from '../event/remarks';
import type { EventFinding, PlannedRolls } from '../event/types';

export interface RolledOut {
  readonly rolls: PlannedRolls;
  readonly findings: readonly EventFinding[];
}

/** Pieces of tape, ribbon or twine as rolls of one supply; `perBox` is the most any one box takes. */
export function rollOut(supply: RollSupply, pieces: readonly CutLength[], perBox: Ticks): RolledOut {
  const rollLength = millimetres(supply.rollMm);
  const rolls = fillRolls(pieces, rollLength);
  const total = ticks(pieces.reduce((sum, { length, count }) => sum + length * count, 0));
  const { id, name, kind } = supply;
  return {
    rolls: { supplyId: id, name, kind, perBox, total, rollLength, rolls },
    findings: rolls.tooLong.map(({ length }) =>
      remark('longer-than-roll', id, name, { length, roll: rollLength }),
    ),
  };
}
