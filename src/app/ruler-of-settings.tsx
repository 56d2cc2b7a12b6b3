import { type ReactNode, useMemo } from 'react';
import { rulerOf } from '../state/results/ruler-of';
import { useWorkbook } from '../state/use-workbook';
import { RulerContext } from '../ui/fields/measure';
import { useSay } from '../ui/words';
import { leansIn } from '../ui/words/spoken';

/** Gives every length on the page the marks of the maker's own tool. */
export function RulerOfSettings({ children }: { children: ReactNode }) {
  const settings = useWorkbook((state) => state.settings);
  const rows = useWorkbook((state) => state.rows);
  const { unit, finest } = rulerOf({ settings, rows });
  const say = useSay();
  const ruler = useMemo(() => ({ unit, finest, leans: leansIn(say) }), [unit, finest, say]);
  return <RulerContext value={ruler}>{children}</RulerContext>;
}
