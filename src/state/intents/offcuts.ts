import type { Paper } from '../../../shared/workbook';
import type { PlannedPaper } from '../../core/plan';
import { mmOfTicks } from '../../core/rows/lengths';
import type { Ticks } from '../../core/units';
import { useWorkbook } from '../use-workbook';
import type { Refusals } from '../workbook-state';

/** Offcuts of one size from all sheets of one paper. */
export interface OffcutLot {
  readonly across: Ticks;
  readonly up: Ticks;
  readonly count: number;
}

/** What a plan leaves of one paper, size by size, the largest first; smaller than `least` on their shorter side they are waste. */
export function offcutsOf({ plan }: Pick<PlannedPaper, 'plan'>, least: Ticks): readonly OffcutLot[] {
  const lots = new Map<string, OffcutLot>();
  for (const { sheets, offcuts } of plan.layouts)
    for (const { across, up } of offcuts) {
      if (Math.min(across, up) < least) continue;
      const key = `${across} ${up}`;
      lots.set(key, { across, up, count: (lots.get(key)?.count ?? 0) + sheets });
    }
  return [...lots.values()].sort((a, b) => b.across * b.up - a.across * a.up);
}

/** The row on the shelf that holds offcuts of this size of this paper. */
export const shelvedOffcut = (
  papers: ReadonlyMap<string, Paper>,
  paperId: string,
  { across, up }: Pick<OffcutLot, 'across' | 'up'>,
): Paper | undefined =>
  [...papers.values()].find(
    ({ offcutOfId, acrossMm, upMm }) =>
      offcutOfId === paperId && acrossMm === mmOfTicks(across) && upMm === mmOfTicks(up),
  );

/** Puts offcuts on the shelf as a paper of their own, or adds them to those of the same size; one undo step. */
export function useShelveOffcuts() {
  const { create, edit } = useWorkbook((state) => state);
  const papers = useWorkbook((state) => state.rows.papers);
  return (paperId: string, lot: OffcutLot, name: string, label: string): Refusals => {
    const paper = papers.get(paperId);
    if (!paper) return [];
    const shelved = shelvedOffcut(papers, paperId, lot);
    if (shelved)
      return edit('papers', shelved.id, label, (row) => ({ ...row, onHandSheets: row.onHandSheets + lot.count })); // biome-ignore format: one row
    const { colour, grain, oneWay, gsm, caliperUm } = paper;
    const made = create(
      'papers',
      {
        name,
        colour,
        grain,
        ...(oneWay && { oneWay }),
        gsm,
        caliperUm,
        acrossMm: mmOfTicks(lot.across),
        upMm: mmOfTicks(lot.up),
        squaringMm: { left: 0, right: 0, near: 0, far: 0 },
        packs: [],
        onHandSheets: lot.count,
        offcutOfId: paperId,
      },
      label,
    );
    return made.ok ? [] : made.refusals;
  };
}
