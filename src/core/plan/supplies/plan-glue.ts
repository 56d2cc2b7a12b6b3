import { tapeJoints } from '../../net/joint-tape';
import { asItStands } from '../../net/lay-net';
import type { GlueSupply } from '../../rows';
import { TICKS_PER_MM } from '../../units';
import type { EventBox } from '../event/event-boxes';
import { ceilDiv } from '../event/spares';
import type { PlannedGlue } from '../event/types';

/** Square ticks in a square meter. */
const PER_SQUARE_METRE = (1000n * BigInt(TICKS_PER_MM)) ** 2n;

/** Liquid glue on every joint of every box, spread over the whole glued panel: grams, and bottles to the gram above. */
export function planGlue(boxes: readonly EventBox[], glue: GlueSupply): PlannedGlue {
  const area = boxes.reduce((sum, { net, making }) => {
    const joints = asItStands(net).flatMap((piece) => tapeJoints(piece, 1));
    const ofBox = joints.reduce((each, { length, depth }) => each + BigInt(length) * BigInt(depth), 0n);
    return sum + ofBox * BigInt(making);
  }, 0n);
  const grams = Number((area * BigInt(glue.gramsPerSquareMetre) + PER_SQUARE_METRE - 1n) / PER_SQUARE_METRE);
  const { id, name, bottleGrams, pressMinutes, dryMinutes } = glue;
  const bottles = ceilDiv(grams, bottleGrams);
  return { supplyId: id, name, kind: 'glue', grams, bottleGrams, bottles, pressMinutes, dryMinutes };
}
