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
  | 'crease'
  | 'stick'
  | 'glue'
  | 'close'
  | 'thread';

/** Acts that belong in one step of the card: the card lies still, and the hands do one kind of thing, or one joint from tape to press. */
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
  crease: ['crease', 'fold'],
  stick: ['stick', 'glue'],
  glue: ['glue', 'glue'],
  close: ['close', 'close'],
  thread: ['thread', 'close'],
};

/**
 * A program cut into steps. A fold that closes stands alone, but for what it is part of: adhesive, the fold that brings it to its place and
 * the press are one step, and so are the flaps that go in one after another and the lid that is tucked over them.
 */
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
    if (last && before.length === 0 && isOneStep(last, op, family))
      groups[groups.length - 1] = {
        ...last,
        ...(family === 'glue' ? { kind, family } : {}),
        acts: [...last.acts, op],
        to: i + 1,
      };
    else groups.push({ kind, family, before, acts: [op], from, to: i + 1, lie });
    before = [];
    from = i + 1;
  }
  return groups;
}

function isOneStep({ family: last, acts }: ActGroup, op: BenchOp, family: Family): boolean {
  const closes = acts.filter((act) => act.op === 'close');
  if (family === 'glue') return last === 'stick' || last === 'close' || last === 'glue';
  if (op.op !== 'close') return last === family;
  if (last === 'stick') return closes.length === 0;
  if (last !== 'close') return false;
  const isPlain = closes.every(({ by, way, tip }) => by === 'fold' && way === 'in' && tip === null);
  return isPlain && (op.by === 'tuck' || op.way === 'in');
}
