import { useId, useMemo, useState } from 'react';
import type { FavorEvent } from '../../../shared/workbook';
import type { NamedPart } from '../../core/draw/sheet/sheet-drawing';
import { demandOf, type PlannedLine, type PlannedPaper, whyPart } from '../../core/plan';
import type { CuttingTool, Layout, SheetPaper } from '../../core/yield/types';
import { letterParts } from '../../print';
import { useWorkbook } from '../../state/use-workbook';
import { SheetView } from '../../ui/drawing/sheet-view';
import { sizeWords, useRuler } from '../../ui/fields/measure';
import { Swatch } from '../../ui/frame/swatch';
import { WhyRow, WhyTurn } from '../../ui/frame/why-row';
import { usePageWords } from '../../ui/words';
import { CutStepper } from './cut-stepper';
import { HandPanel } from './hand-panel';
import { NestPanel } from './nest-panel';
import { OffcutList } from './offcut-list';
import { ProofBadge } from './proof-badge';

/** Everything cut from one paper: how many sheets, whether fewer could do, and each way of cutting. */
export function PlannedPaperView({
  planned,
  tool,
  event,
  lines,
}: {
  planned: PlannedPaper;
  tool: CuttingTool;
  event: FavorEvent;
  lines: readonly PlannedLine[];
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
          <h2 id={`paper-${planned.paperId}`}>
            {words.sheetsOf(plan.sheets + planned.spoiled, planned.name)}
          </h2>
          {planned.spoiled > 0 && <p>{words.spoiledSheets(plan.sheets, planned.spoiled)}</p>}
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
          {parts.map((part) => (
            <PartRow
              key={part.id}
              mark={lettered[demandOf(part, planned.demand)]?.mark ?? ''}
              part={part}
              line={lines.find(({ lineId }) => lineId === part.lineId)}
              event={event}
            />
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
      <HandPanel planned={planned} tool={tool} event={event} />
      <OffcutList planned={planned} />
      <NestPanel planned={planned} tool={tool} eventId={event.id} />
    </section>
  );
}

interface PartRowProps {
  readonly mark: string;
  readonly part: PlannedPaper['parts'][number];
  readonly line: PlannedLine | undefined;
  readonly event: FavorEvent;
}

/** A part, and behind its count how that comes about. */
function PartRow({ mark, part, line, event }: PartRowProps) {
  const ruler = useRuler();
  const words = usePageWords();
  const id = useId();
  const [open, setOpen] = useState(false);
  return (
    <>
      <tr>
        <th scope="row">{mark}</th>
        <td>{part.name}</td>
        <td>{sizeWords([part.across, part.up], ruler)}</td>
        <td>
          {line ? (
            <button
              type="button"
              className="why-button"
              aria-expanded={open}
              aria-controls={open ? id : undefined}
              onClick={() => setOpen(!open)}
            >
              <WhyTurn />
              {part.count}
              <span className="said-only">, {words.working.how}</span>
            </button>
          ) : (
            part.count
          )}
        </td>
      </tr>
      {open && line && <WhyRow id={id} columns={4} why={whyPart(part, line, event.spares)} />}
    </>
  );
}

interface LayoutViewProps {
  readonly layout: Layout;
  readonly sheet: SheetPaper;
  readonly tool: CuttingTool;
  readonly parts: readonly NamedPart[];
  readonly number: number;
  readonly of: number;
}

/** One way of cutting a sheet: the drawing, how many sheets are cut so, and the cuts one by one. */
function LayoutView({ layout, sheet, tool, parts, number, of }: LayoutViewProps) {
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
