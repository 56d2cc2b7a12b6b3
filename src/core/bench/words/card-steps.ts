import type { BoxNet, PieceNet } from '../../net/types';
import { printLength, type Ruler, type Ticks } from '../../units';
import type { CardMark, CardStep, CautionCode, StepKind } from '../card-step';
import type { BenchOp, BenchProgram, BenchTool } from '../types';
import { groupActs } from './group-acts';
import { speechFor } from './say-act';
import { sayGroups } from './say-group';
import { tipsFor } from './tips';

/**
 * A program as the maker's card, step by step, in their tool's unit and on its marks. `box` is the box the piece belongs to.
 * Headlines, details and template rows read back into the program (`tests/core/bench/card-reader`); tips and cautions are for people alone.
 */
export function cardSteps(
  program: BenchProgram,
  piece: PieceNet,
  box: BoxNet,
  tool: BenchTool,
): readonly CardStep[] {
  const speech = speechFor(tool, piece);
  const groups = groupActs(program, tool);
  const said = sayGroups(groups, piece.blank, speech);
  const counts = new Map<StepKind, number>();
  return groups.map((group, i): CardStep => {
    const count = (counts.get(group.kind) ?? 0) + 1;
    counts.set(group.kind, count);
    return {
      id: `${group.kind}-${count}`,
      kind: group.kind,
      headline: said[i]?.headline.join(' ') ?? '',
      alone: said[i]?.alone ?? '',
      marks: bigMarks(group.acts, speech.ruler),
      details: said[i]?.details ?? [],
      template: said[i]?.template ?? [],
      tips: tipsFor(
        group,
        { piece, box, tool, groups, speech },
        [said[i]?.headline ?? [], said[i]?.details ?? []].flat().join(' '),
      ),
      cautions: CAUTIONS_FOR[group.kind],
      ops: { from: group.from, to: group.to },
      lie: group.lie,
    };
  });
}

const CAUTIONS_FOR: Readonly<Record<StepKind, readonly CautionCode[]>> = {
  blank: ['blade'],
  score: [],
  slit: ['blade'],
  cut: ['blade'],
  fold: [],
  glue: ['hot-glue'],
  close: [],
};

/** The numbers to find on the tool, each once. */
function bigMarks(acts: readonly BenchOp[], ruler: Ruler): readonly CardMark[] {
  const marks = new Map<string, CardMark>();
  const add = (reads: CardMark['reads'], ...lengths: readonly Ticks[]): void => {
    for (const at of lengths)
      if (at > 0) marks.set(`${reads} ${at}`, { at, reads, printed: printLength(at, ruler) });
  };
  for (const op of acts) {
    if (op.op === 'blank' || op.op === 'corner') {
      add('across', op.across);
      add('up', op.up);
    }
    if (op.op === 'score' || op.op === 'slit') add('from the fence', op.at);
    if (op.op === 'score' && op.span) add('off the near edge', op.span.from, op.span.to);
    if (op.op === 'slit') add('off the near edge', op.from, op.to);
  }
  return [...marks.values()];
}
