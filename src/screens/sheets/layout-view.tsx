import { cutOrder } from '../../core/draw/cut-order';
import type { NamedPart } from '../../core/draw/sheet-drawing';
import { ticks } from '../../core/units';
import type { Layout, SheetPaper } from '../../core/yield/types';
import { lengthWords, sizeWords, useRuler } from '../../ui/measure';
import { SheetView } from '../../ui/sheet-view';
import { usePageWords } from '../../ui/words';

interface LayoutViewProps {
  readonly layout: Layout;
  readonly sheet: SheetPaper;
  readonly parts: readonly NamedPart[];
  readonly number: number;
  readonly of: number;
}

/** One way of cutting a sheet: the drawing, how many sheets are cut so, the cuts in order, and what is left over. */
export function LayoutView({ layout, sheet, parts, number, of }: LayoutViewProps) {
  const words = usePageWords().sheets;
  const ruler = useRuler();
  const cuts = cutOrder(layout, sheet, ticks(0));
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
        <h4>{words.cuts}</h4>
        <ol className="cut-list">
          {cuts.map((cut) => (
            <li key={cut.number}>
              {words.cut[cut.way](lengthWords(cut.fence, ruler))}
              {cut.frees.length > 0 && (
                <span className="soft">
                  {' '}
                  {words.frees(
                    cut.frees.map((freed) =>
                      freed.kind === 'part'
                        ? (parts.find(({ id }) => id === freed.part)?.mark ?? '')
                        : words.offcut,
                    ),
                  )}
                </span>
              )}
            </li>
          ))}
        </ol>
        {layout.offcuts.length > 0 && (
          <p className="soft">
            {words.offcuts}{' '}
            {layout.offcuts.map(({ across, up }) => sizeWords([across, up], ruler)).join(', ')}
          </p>
        )}
      </div>
    </article>
  );
}
