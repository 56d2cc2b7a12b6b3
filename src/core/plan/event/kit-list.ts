import type { FlatSize } from '../../dress';
import type { Paper } from '../../rows';
import { type Ticks, ticks } from '../../units';
import type { TapedLine } from '../supplies/plan-tape';
import type { BoxTie } from '../supplies/plan-ties';
import type { EventBox } from './event-boxes';
import type { PartOnPaper } from './event-parts';

/** What one pupil's kit holds, to be picked and ticked. */
export interface KitList {
  readonly kits: number;
  /** Kits made up, the spare ones included. */
  readonly packing: number;
  readonly boxes: readonly { readonly name: string; readonly count: number }[];
  /** Card to pick: what it is, the paper it is cut from, how many. */
  readonly cards: readonly (FlatSize & {
    readonly name: string;
    readonly paper: string | null;
    readonly count: number;
  })[];
  /** Tape and ribbon by the kit, each cut off in one go. */
  readonly lengths: readonly { readonly name: string; readonly length: Ticks }[];
  readonly counted: readonly { readonly name: string; readonly count: number }[];
}

/** One kit of a class: so many boxes of each line, and all that they are made from. Null when no line is counted by the kit. */
export function listKit(
  boxes: readonly EventBox[],
  parts: readonly PartOnPaper[],
  papers: readonly Paper[],
  taped: readonly TapedLine[],
  ties: readonly BoxTie[],
): KitList | null {
  const [first] = boxes;
  if (!first?.perKit) return null;
  const perKit = new Map(boxes.map(({ line, perKit: count }) => [line.id, count ?? 0]));
  const inKit = (lineId: string, perBox: number): number => (perKit.get(lineId) ?? 0) * perBox;
  const tape = taped.reduce(
    (sum, { box, strips }) =>
      sum + strips.reduce((each, strip) => each + strip.length * inKit(box.line.id, strip.strips), 0),
    0,
  );
  return {
    kits: first.ordered / first.perKit,
    packing: (first.making - first.practice) / first.perKit,
    boxes: boxes.map(({ line, recipe }) => ({ name: recipe.name, count: inKit(line.id, 1) })),
    cards: parts.map(({ part: { name, lineId, across, up, perBox }, paperId }) => ({
      name,
      paper: papers.find(({ id }) => id === paperId)?.name ?? null,
      across,
      up,
      count: inKit(lineId, perBox),
    })),
    lengths: [
      ...(tape > 0 ? [{ name: 'Tape', length: ticks(tape) }] : []),
      ...ties.map(({ box, tie, length }) => ({
        name: tie.name,
        length: ticks(length * inKit(box.line.id, tie.perBox)),
      })),
    ],
    counted: boxes.flatMap(({ line, dressing }) =>
      (dressing?.counted ?? []).map(({ name, perBox }) => ({ name, count: inKit(line.id, perBox) })),
    ),
  };
}
