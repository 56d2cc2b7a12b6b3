import type { StepKind } from '../card-step';
import type { Lie } from '../equal/card-lie';
import { flipped, turned } from '../equal/card-lie';
import type { BenchOp, BenchProgram, BenchTool } from '../types';

type Family =
  | 'blank'
  | 'score'
  | 'ruler'
  | 'curve'
  | 'slit'
  | 'corner'
  | 'path'
  | 'window'
  | 'fold'
  | 'glue'
  | 'close';

/** Acts that belong in one step of the card: the card lies still, and the hands do one kind of thing. */
export interface ActGroup {
  readonly kind: StepKind;
  readonly family: Family;
  /** Turns and flips that come first. */
  readonly before: readonly Extract<BenchOp, { op: 'turn' | 'flip' }>[];
  readonly acts: readonly BenchOp[];
  readonly from: number;
  readonly to: number;
  readonly lie: Lie;
}

const FAMILIES: Readonly<Record<Exclude<BenchOp['op'], 'turn' | 'flip'>, readonly [Family, StepKind]>> = {
  blank: ['blank', 'blank'],
  score: ['score', 'score'],
  scoreLine: ['ruler', 'score'],
  scoreCurve: ['curve', 'score'],
  slit: ['slit', 'slit'],
  slitLine: ['slit', 'slit'],
  corner: ['corner', 'cut'],
  snip: ['corner', 'cut'],
  cutPath: ['path', 'cut'],
  window: ['window', 'cut'],
  fold: ['fold', 'fold'],
  glue: ['glue', 'glue'],
  close: ['close', 'close'],
};

/** A program cut into steps; closing acts stand alone, since hands do them one by one. */
export function groupActs(program: BenchProgram, tool: BenchTool): readonly ActGroup[] {
  const groups: ActGroup[] = [];
  let lie: Lie = { quarters: 0, mirrored: tool.fence === 'right' };
  let before: ActGroup['before'][number][] = [];
  let from = 0;
  for (const [i, op] of program.ops.entries()) {
    if (op.op === 'turn' || op.op === 'flip') {
      before.push(op);
      lie = op.op === 'turn' ? turned(lie, op.quarters) : flipped(lie);
      continue;
    }
    const [family, kind] = FAMILIES[op.op];
    const last = groups.at(-1);
    if (last?.family === family && before.length === 0 && family !== 'close')
      groups[groups.length - 1] = { ...last, acts: [...last.acts, op], to: i + 1 };
    else groups.push({ kind, family, before, acts: [op], from, to: i + 1, lie });
    before = [];
    from = i + 1;
  }
  return groups;
}
