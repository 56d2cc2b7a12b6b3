import { outsideSize, threadedIn, tieLength } from '../../dress';
import type { Supply, Tie } from '../../rows';
import { markAbove, type Ticks, ticks } from '../../units';
import { isRolled } from '../buying/stock-rows';
import type { EventBox } from '../event/event-boxes';
import { remark } from '../event/remarks';
import type { EventFinding, PlannedRolls } from '../event/types';
import { type RolledOut, rollOut } from './plan-rolls';

/** One ribbon or twine of one line's boxes, cut on the maker's marks. */
export interface BoxTie {
  readonly box: EventBox;
  readonly tie: Tie;
  readonly length: Ticks;
}

/** Every tie of every line; a length is taken up to the next mark. */
export const tiesOfBoxes = (boxes: readonly EventBox[], mark: Ticks): readonly BoxTie[] =>
  boxes.flatMap((box) =>
    (box.dressing?.ties ?? []).map((tie) => ({
      box,
      tie,
      length: markAbove(tieLength(outsideSize(box.net), tie), mark),
    })),
  );

/** Ribbon and twine for all boxes, supply by supply. Ties without a supply are told of, and ribbon pulls without a tie. */
export function planTies(
  boxes: readonly EventBox[],
  ties: readonly BoxTie[],
  supplies: readonly Supply[],
): { readonly rolls: readonly PlannedRolls[]; readonly findings: readonly EventFinding[] } {
  const known = supplies.filter(isRolled);
  const findings = ties
    .filter(({ tie }) => !known.some(({ id }) => id === tie.supplyId))
    .map(({ box, tie, length }) => remark('tie-missing', box.line.id, tie.name, { length }));
  const unthreaded = boxes.flatMap((box) => {
    const length = threadedIn(box.net);
    const isSupplied = ties.some((one) => one.box === box && one.tie.wrap === 'pull');
    return length === 0 || isSupplied
      ? []
      : [remark('pull-missing', box.line.id, box.recipe.name, { length })];
  });
  const rolled = known.flatMap((supply): RolledOut[] => {
    const mine = ties.filter(({ tie }) => tie.supplyId === supply.id);
    if (mine.length === 0) return [];
    const pieces = mine.map(({ box, tie, length }) => ({ length, count: tie.perBox * box.making }));
    return [rollOut(supply, pieces, mostPerBox(mine))];
  });
  return {
    rolls: rolled.map(({ rolls }) => rolls),
    findings: [...findings, ...unthreaded, ...rolled.flatMap((each) => each.findings)],
  };
}

function mostPerBox(ties: readonly BoxTie[]): Ticks {
  const perLine = new Map<string, number>();
  for (const { box, tie, length } of ties)
    perLine.set(box.line.id, (perLine.get(box.line.id) ?? 0) + tie.perBox * length);
  return ticks(Math.max(0, ...perLine.values()));
}
