import { type ReactNode, useMemo } from 'react';
import { ticksOfMm } from '../../shared/lengths';
import { type Ruler, USUAL_FINEST } from '../core/units';
import { toolInHand } from '../state/tool-in-hand';
import { useWorkbook } from '../state/use-workbook';
import { RulerContext } from '../ui/measure';

/** Gives every length on the page the marks of the maker's own tool, or the usual ones of her unit while she has named none. */
export function RulerOfSettings({ children }: { children: ReactNode }) {
  const unit = useWorkbook(({ settings }) => settings.unit);
  const tools = useWorkbook(({ rows }) => rows.tools);
  const ruler = useMemo((): Ruler => {
    const own = toolInHand(tools, unit);
    return { unit, finest: own ? ticksOfMm(own.finestMarkMm) : USUAL_FINEST[unit] };
  }, [unit, tools]);
  return <RulerContext value={ruler}>{children}</RulerContext>;
}
