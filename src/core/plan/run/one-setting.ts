import type { BenchOp, BoxCard, CardStep, Lie } from '../../bench';
import type { Ticks } from '../../units';

/** A card cut down to what one step does, and that step. */
export interface SingleStep {
  readonly card: BoxCard;
  readonly step: CardStep;
}

const isMove = ({ op }: BenchOp): boolean => op === 'turn' || op === 'flip';

/**
 * A batch scores one setting of the fence on every piece: the blank, the moves that bring it to lie so, and the scores at this distance alone.
 * `at` in ticks from the fence. Null where the card scores nothing there.
 */
export function oneSetting(card: BoxCard, at: Ticks, lie: Lie): SingleStep | null {
  const { steps, program } = card;
  const mine = steps.filter(
    (step) =>
      step.kind === 'score' && step.lie.quarters === lie.quarters && step.lie.mirrored === lie.mirrored,
  );
  const scores = mine.flatMap(({ ops }) =>
    program.ops.slice(ops.from, ops.to).filter((op) => op.op === 'score' && op.at === at),
  );
  const first = mine.find(({ marks }) => marks.some((mark) => mark.at === at));
  if (!first || scores.length === 0) return null;
  const before = program.ops.slice(0, first.ops.to).filter((op) => op.op === 'blank' || isMove(op));
  const ops = [...before, ...scores];
  return {
    card: { ...card, program: { ...program, ops } },
    step: {
      ...first,
      headline: first.alone,
      marks: first.marks.filter((mark) => mark.at === at),
      ops: { from: before.length, to: ops.length },
    },
  };
}
