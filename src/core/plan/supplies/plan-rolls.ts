import type { RollSupply } from '../../rows';
import { millimetres, type Ticks, ticks } from '../../units';
import { type CutLength, fillRolls } from '../buying/rolls';
import { remark } from '../event/remarks';
import type { EventFinding, PlannedRolls } from '../event/types';

export interface RolledOut {
  readonly rolls: PlannedRolls;
  readonly findings: readonly EventFinding[];
}

/** Less than this left over is gone with a few false starts. source: common practice, no source */
const CLOSE_PERCENT = 3;

/** Pieces of tape, ribbon or twine as rolls of one supply; `perBox` is the most any one box takes. */
export function rollOut(supply: RollSupply, pieces: readonly CutLength[], perBox: Ticks): RolledOut {
  const { id, name, kind, wastePercent = 0 } = supply;
  const rollLength = millimetres(supply.rollMm);
  const usable = ticks(Math.floor((rollLength * (100 - wastePercent)) / 100));
  const rolls = fillRolls(pieces, usable);
  const total = ticks(pieces.reduce((sum, { length, count }) => sum + length * count, 0));
  const left = ticks(rolls.fills.reduce((sum, fill) => sum + fill.left * fill.rolls, 0));
  const isClose = wastePercent === 0 && rolls.rolls > 0 && left * 100 < total * CLOSE_PERCENT;
  return {
    rolls: { supplyId: id, name, kind, perBox, total, rollLength, usable, rolls },
    findings: [
      ...rolls.tooLong.map(({ length }) => remark('longer-than-roll', id, name, { length, roll: usable })),
      ...(isClose ? [remark('rolls-almost-used-up', id, name, { left, total })] : []),
    ],
  };
}
