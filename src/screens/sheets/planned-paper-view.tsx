import { useMemo } from 'react';
import type { PlannedPaper } from '../../core/plan';
import type { CuttingTool } from '../../core/yield/types';
import { letterParts } from '../../print';
import { useWorkbook } from '../../state/use-workbook';
import { sizeWords, useRuler } from '../../ui/measure';
import { Swatch } from '../../ui/swatch';
import { usePageWords } from '../../ui/words';
import { LayoutView } from './layout-view';
import { NestPanel } from './nest-panel';
import { OffcutList } from './offcut-list';
import { ProofBadge } from './proof-badge';

/** Everything cut from one paper: how many sheets, whether fewer could do, and each way of cutting. */
export function PlannedPaperView({
  planned,
  tool,
  eventId,
}: {
  planned: PlannedPaper;
  tool: CuttingTool;
  eventId: string;
}) {
  const words = usePageWords().sheets;
  const paper = useWorkbook((state) => state.rows.papers.get(planned.paperId));
  const { plan, parts } = planned;
  const lettered = useMemo(() => letterParts(planned), [planned]);
  return (
    <section className="planned-paper" aria-labelledby={`paper-${planned.paperId}`}>
      <header className="planned-paper-head">
        {paper && <Swatch colour={paper.colour} large />}
        <div>
          <h2 id={`paper-${planned.paperId}`}>{words.sheetsOf(plan.sheets, planned.name)}</h2>
          <ProofBadge planned={planned} parts={lettered} />
        </div>
      </header>
      <table className="parts-table">
        <caption className="said-only">{words.partsFrom(planned.name)}</caption>
        <thead>
          <tr>
            <th scope="col">{words.letter}</th>
            <th scope="col">{words.part}</th>
            <th scope="col">{words.size}</th>
            <th scope="col">{words.count}</th>
          </tr>
        </thead>
        <tbody>
          {parts.map((part, place) => (
            <PartRow key={part.id} mark={lettered[place]?.mark ?? ''} part={part} />
          ))}
        </tbody>
      </table>
      <div className="layouts">
        {plan.layouts.map((layout, place) => (
          <LayoutView
            // biome-ignore lint/suspicious/noArrayIndexKey: a plan is replaced whole, its layouts have no other name
            key={place}
            layout={layout}
            sheet={planned.sheet}
            tool={tool}
            parts={lettered}
            number={place + 1}
            of={plan.layouts.length}
          />
        ))}
      </div>
      <OffcutList planned={planned} />
      <NestPanel planned={planned} tool={tool} eventId={eventId} />
    </section>
  );
}

function PartRow({ mark, part }: { mark: string; part: PlannedPaper['parts'][number] }) {
  const ruler = useRuler();
  return (
    <tr>
      <th scope="row">{mark}</th>
      <td>{part.name}</td>
      <td>{sizeWords([part.across, part.up], ruler)}</td>
      <td>{part.count}</td>
    </tr>
  );
}
