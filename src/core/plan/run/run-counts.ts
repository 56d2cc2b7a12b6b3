import type { Run } from '../../rows';

/** What was tapped at one step of the run sheet. */
export interface RunCount {
  readonly done: number;
  readonly spoiled: number;
  readonly seconds: number;
}

const NOTHING: RunCount = { done: 0, spoiled: 0, seconds: 0 };
const NO_RUN: Run = { stages: [], firstRight: [] };

/** Work on one piece of a box; what is done after these is done to whole boxes. */
const ON_A_PIECE: ReadonlySet<string> = new Set(['score', 'slit', 'fold', 'glue', 'close-bottom', 'tuck']);

export const isOnPiece = (act: string): boolean => ON_A_PIECE.has(act);

/** What was counted at one step so far, on every device. */
export const countAt = (run: Run | undefined, step: string): RunCount =>
  (run?.stages ?? []).filter(({ stage }) => stage === step).reduce(sumOf, NOTHING);

const sumOf = (a: RunCount, b: RunCount): RunCount => ({
  done: a.done + b.done,
  spoiled: a.spoiled + b.spoiled,
  seconds: a.seconds + b.seconds,
});

/** The run with so much more counted at one step by the device `by`; what one device counted never falls below zero. */
export function addCount(run: Run | undefined, step: string, more: Partial<RunCount>, by?: string): Run {
  const { stages, firstRight } = run ?? NO_RUN;
  const isOwn = (entry: Run['stages'][number]) => entry.stage === step && entry.by === by;
  const before = stages.find(isOwn) ?? NOTHING;
  const sum = (key: keyof RunCount) => Math.max(0, before[key] + (more[key] ?? 0));
  const after = { stage: step, done: sum('done'), spoiled: sum('spoiled'), seconds: sum('seconds') };
  const others = stages.filter((entry) => !isOwn(entry));
  return { stages: [...others, by === undefined ? after : { ...after, by }], firstRight };
}

/** The run with the first box of a line found right, or not any more. */
export function setFirstRight(run: Run | undefined, lineId: string, right: boolean): Run {
  const { stages, firstRight } = run ?? NO_RUN;
  const others = firstRight.filter((id) => id !== lineId);
  return { stages, firstRight: right ? [...others, lineId] : others };
}

/** Spoiled at these steps, by the box: lost pieces of different kinds leave whole boxes, so only the most of one kind counts. */
export function boxesSpoiled(
  steps: readonly { readonly act: string; readonly piece: string | null; readonly spoiled: number }[],
): number {
  const ofPiece = new Map<string, number>();
  let boxes = 0;
  for (const { act, piece, spoiled } of steps)
    if (piece !== null && isOnPiece(act)) ofPiece.set(piece, (ofPiece.get(piece) ?? 0) + spoiled);
    else boxes += spoiled;
  return boxes + Math.max(0, ...ofPiece.values());
}

/** Boxes of one line that were spoiled at the bench so far. A step is named `lineId/act/piece/…`. */
export function spoiledOfLine(run: Run | undefined, lineId: string): number {
  const own = (run?.stages ?? []).filter(({ stage }) => stage.startsWith(`${lineId}/`));
  return boxesSpoiled(
    own.map(({ stage, spoiled }) => {
      const [, act = '', piece = ''] = stage.split('/');
      return { act, piece, spoiled };
    }),
  );
}

/** The step at which the sheets of one paper are cut. */
export const cutStep = (paperId: string): string => `cut/${paperId}`;

/** Sheets of one paper spoiled while cutting. */
export const spoiledSheets = (run: Run | undefined, paperId: string): number =>
  countAt(run, cutStep(paperId)).spoiled;
