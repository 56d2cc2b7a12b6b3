import type { NamedPart } from '../../core/draw/sheet/sheet-drawing';
import type { CuttingTool, Layout, SheetPaper } from '../../core/yield/types';
import { SheetView } from '../../ui/drawing/sheet-view';
import { usePageWords } from '../../ui/words';
import { CutStepper } from './cut-stepper';

interface LayoutViewProps {
  readonly layout: Layout;
  readonly sheet: SheetPaper;
  readonly tool: CuttingTool;
  readonly parts: readonly NamedPart[];
  readonly number: number;
  readonly of: number;
}

/** One way of cutting a sheet: the drawing, how many sheets are cut so, and the cuts one by one. */
export function LayoutView({ layout, sheet, tool, parts, number, of }: LayoutViewProps) {
  const words = usePageWords().sheets;
  const counts = parts.flatMap(({ id, mark, name }) => {
    const count = layout.parts.filter(({ part }) => part === id).length;
    return count === 0 ? [] : [{ mark, name, count }];
  });
  return (
    <article className="layout">
      <h3>{of === 1 ? words.everySheet(layout.sheets) : words.layout(number, layout.sheets)}</h3>
      <SheetView layout={layout} paper={sheet} parts={parts} />
      <div className="layout-words">
        <p>{counts.map(({ mark, name, count }) => words.gives(count, mark, name)).join(', ')}</p>
        <CutStepper layout={layout} sheet={sheet} tool={tool} parts={parts} />
      </div>
    </article>
  );
}
