import type { Lesson } from '../../rows';
import type { HandAct } from '../../rows/hand-times';
import type { KitList } from '../event/kit-list';

/** Something to bring to a class: what, and how many. */
export interface BringItem {
  readonly what: string;
  readonly count: number;
  /** A word of care that goes with it; null for most. */
  readonly care: string | null;
}

/** What one act of the learners needs, and how many share one. source: common practice, no source */
const TOOLS: readonly {
  readonly act: HandAct;
  readonly what: string;
  readonly share: number;
  readonly care?: string;
}[] = [
  { act: 'score', what: 'scoring tool', share: 2 },
  {
    act: 'slit',
    what: 'craft knife, ruler and mat',
    share: 2,
    care: 'Blades cut fingers. Say so before anyone picks one up, and count the knives back in.',
  },
  { act: 'fold', what: 'bone folder', share: 1 },
  { act: 'glue', what: 'tape or glue', share: 2 },
  { act: 'tie-bow', what: 'scissors', share: 2 },
];

/** What to bring to a class, in the order it is packed. */
export function listToBring(
  { kits, packing, boxes }: KitList,
  { samples, demonstrations }: Lesson,
  acts: readonly { readonly act: HandAct | null }[],
): readonly BringItem[] {
  const item = (what: string, count: number, care: string | null = null): BringItem => ({
    what,
    count,
    care,
  });
  const tools = TOOLS.filter(({ act }) => acts.some((one) => one.act === act));
  return [
    item('packed kits', packing),
    item('step cards', kits),
    item('finished samples', samples * boxes.length),
    item('copies to make while you teach', demonstrations * boxes.length),
    // One more of each tool: the teacher's own.
    ...tools.map(({ what, share, care }) => item(what, Math.ceil(kits / share) + 1, care ?? null)),
    item('trash bag', 1),
  ].filter(({ count }) => count > 0);
}
