import { useMemo, useState } from 'react';
import type { FavorEvent } from '../../../shared/workbook';
import type { PlannedPaper } from '../../core/plan';
import { type CuttingTool, type HandWay, waysByHand } from '../../core/yield';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { sizeWords, useRuler } from '../../ui/fields/measure';
import { Opening } from '../../ui/frame/opening';
import { usePageWords } from '../../ui/words';

/** The same sheets cut with fewer strokes, fewer fence settings or a larger piece left over, as far as found: what each would trade, and a button to change over. */
export function HandPanel({
  planned,
  tool,
  event,
}: {
  planned: PlannedPaper;
  tool: CuttingTool;
  event: FavorEvent;
}) {
  const words = usePageWords().sheets;
  const edit = useWorkbook((state) => state.edit);
  const [open, setOpen] = useState(false);
  // Looked for when it is opened: it takes some hundredths of a second.
  const ways = useMemo(
    () =>
      open ? waysByHand(planned.fewestStrokes ?? planned.plan, planned.demand, planned.sheet, tool) : [],
    [open, planned, tool],
  );
  const use = (aim: HandWay['aim']) =>
    edit('events', event.id, words.handUse[aim], ({ cutFor: _, ...old }) =>
      aim === 'strokes' ? old : { ...old, cutFor: aim },
    );
  return (
    <div className="hand-ways screen-only">
      <Opening head={words.handWays(planned.plan.sheets)} open={open} onToggle={setOpen}>
        <p className="soft">{ways.length === 1 ? words.handOnlyWay : words.handWhy}</p>
        {ways.length > 1 && (
          <ul>
            {ways.map((way) => (
              <li key={way.aim}>
                <WayFigures way={way} />
                {way.aim === (event.cutFor ?? 'strokes') ? (
                  <span className="soft">{words.inUse}</span>
                ) : (
                  <Button onClick={() => use(way.aim)}>{words.handUse[way.aim]}</Button>
                )}
              </li>
            ))}
          </ul>
        )}
      </Opening>
    </div>
  );
}

function WayFigures({ way: { aim, work } }: { way: HandWay }) {
  const words = usePageWords().sheets;
  const ruler = useRuler();
  const left = work.offcut && sizeWords([work.offcut.across, work.offcut.up], ruler);
  return (
    <p>
      <strong>{words.handAims[aim]}</strong>
      <span>{words.handFigures(work.layouts, work.strokes, work.fences)}</span>
      <span>{left === null ? words.handNothingLeft : words.handLargest(left)}</span>
    </p>
  );
}
