import { useCallback, useMemo, useState } from 'react';
import type { Paper } from '../../../shared/workbook';
import { benchToolOf, cuttingToolOf, sheetOfPaper } from '../../core/plan';
import { factsOfStyle, LETTER, type StyleFacts } from '../../core/plan/event/style-facts';
import { ticksOfMm } from '../../core/rows/lengths';
import type { BoxStyle } from '../../core/styles';
import type { Ticks } from '../../core/units';
import { useStylesAtHand } from '../../state/results/styles-at-hand';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { ownOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { useIdleSlices } from '../../ui/frame/idle-slices';

/** Light cardstock. source: common practice, no source */
const CALIPER_UM = 300;
export interface KnownFacts {
  readonly of: (id: string) => StyleFacts | undefined;
  readonly looking: boolean;
  readonly sizes: Readonly<Record<string, Ticks>> | null;
  readonly setSizes: (sizes: Readonly<Record<string, Ticks>> | null) => void;
  readonly papers: readonly Paper[];
  readonly paperId: string | null;
  readonly setPaperId: (id: string | null) => void;
}

/** What each style comes to on their tool and their sheet, at its own size or at the maker’s; looked up a style at a time. */
export function useStyleFacts(): KnownFacts {
  const rows = useWorkbook((state) => state.rows.papers);
  const tool = useToolInHand();
  const { styles } = useStylesAtHand();
  const [sizes, setSizes] = useState<Readonly<Record<string, Ticks>> | null>(null);
  const [chosen, setPaperId] = useState<string | null>(null);
  const papers = useMemo(() => ownOf(rows), [rows]);
  const paper = papers.find(({ id }) => id === chosen) ?? null;
  const work = useCallback(
    (style: BoxStyle) =>
      factsOfStyle(style, {
        sizes: sizes ?? {},
        caliperUm: paper?.caliperUm ?? CALIPER_UM,
        sheet: paper ? sheetOfPaper(paper) : LETTER,
        cutting: cuttingToolOf(tool),
        bench: benchToolOf(tool),
      }),
    [sizes, paper, tool],
  );
  const facts = useIdleSlices(styles, work);
  const known = useMemo(() => new Map(facts.map((fact) => [fact.id, fact])), [facts]);
  return {
    of: (id) => known.get(id),
    looking: facts.length < styles.length,
    sizes,
    setSizes,
    papers,
    paperId: paper?.id ?? null,
    setPaperId,
  };
}

/** A first size to change. source: common practice, no source; the trade's usual favor box */
export const FIRST_SIZES = {
  width: ticksOfMm(88.9),
  depth: ticksOfMm(38.1),
  height: ticksOfMm(76.2),
} as const;
