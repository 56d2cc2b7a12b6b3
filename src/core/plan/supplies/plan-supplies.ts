import { tapeJoints } from '../../net/joint-tape';
import { asItStands } from '../../net/lay-net';
import type { FavorEvent, GlueSupply, PieceSupply, Supply } from '../../rows';
import { TICKS_PER_MM, type Ticks } from '../../units';
import { isRolled } from '../buying/stock-rows';
import type { EventBox } from '../event/event-boxes';
import { remark } from '../event/remarks';
import { ceilDiv } from '../event/spares';
import type { EventFinding, PlannedGlue, PlannedPieces, PlannedRolls } from '../event/types';
import { planTape, type TapedLine, tapeOfBox } from './plan-tape';
import { type BoxTie, planTies, tiesOfBoxes } from './plan-ties';

/** Square ticks in a square meter. */
const PER_SQUARE_METRE = (1000n * BigInt(TICKS_PER_MM)) ** 2n;

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
  const tied = planTies(boxes, ties, supplies);
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

const isCounted = (supply: Supply): supply is PieceSupply => 'onHandPieces' in supply;

/** Seals, foam squares, bags, contents: how many of each for all boxes. */
function planCounted(
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
