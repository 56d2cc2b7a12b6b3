import { useMemo } from 'react';
import { Link } from 'react-router';
import type { Recipe, Tool } from '../../../shared/workbook';
import type { BoxCard, CardStep, Lie } from '../../core/bench';
import type { EventPlan, PlannedPaper, RunStep } from '../../core/plan';
import { letterParts } from '../../print';
import { benchOfRecipe } from '../../state/results/bench-result';
import { SheetView } from '../../ui/drawing/sheet-view';
import { useRuler } from '../../ui/fields/measure';
import { pageAddress } from '../../ui/frame/addresses';
import { usePageWords } from '../../ui/words';
import { BenchNet, StepView } from './bench-net';

interface RunPictureProps {
  readonly step: RunStep;
  readonly plan: EventPlan;
  readonly recipes: readonly Recipe[];
  /** The event's own tool, or the one in hand. */
  readonly tool: Tool | undefined;
}

/** What the step is done to: the sheets and how they are cut, or the net with the numbers of this step lit. */
export function RunPicture({ step, plan, recipes, tool }: RunPictureProps) {
  const ruler = useRuler();
  const { work } = step;
  if (work.do === 'sheets') {
    const planned = plan.papers.find(({ paperId }) => step.id === `cut/${paperId}`);
    return planned ? <SheetPictures planned={planned} eventId={plan.eventId} /> : null;
  }
  const recipe = recipes.find(({ id }) => id === step.recipeId);
  if (!recipe || (work.do !== 'fence' && work.do !== 'card')) return null;
  const card = benchOfRecipe(recipe, tool, ruler)?.cards.find(({ piece }) => piece.id === work.pieceId);
  if (!card) return null;
  if (work.do === 'card' && work.steps[0]) return <StepView card={card} step={work.steps[0]} />;
  const lit = work.do === 'fence' ? stepAt(card, work.at, work.lie) : undefined;
  return <BenchNet card={card} step={lit} recipe={recipe} />;
}

/** The card's own scoring step at this mark, the card lying as it does here, with this mark alone. */
export function stepAt({ steps }: BoxCard, at: number, { quarters, mirrored }: Lie): CardStep | undefined {
  const step = steps.find(
    ({ kind, marks, lie }) =>
      kind === 'score' &&
      lie.quarters === quarters &&
      lie.mirrored === mirrored &&
      marks.some((mark) => mark.at === at),
  );
  return step && { ...step, marks: step.marks.filter((mark) => mark.at === at) };
}

function SheetPictures({ planned, eventId }: { planned: PlannedPaper; eventId: string }) {
  const words = usePageWords();
  const lettered = useMemo(() => letterParts(planned), [planned]);
  return (
    <div className="run-sheets">
      <Link className="button button-quiet" to={pageAddress({ kind: 'event', id: eventId }, 'sheets')}>
        {words.run.toSheets}
      </Link>
      <ul>
        {planned.plan.layouts.map((layout, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a plan is replaced whole, its layouts have no other name
          <li key={place}>
            <p>{words.sheets.layout(place + 1, layout.sheets)}</p>
            <SheetView layout={layout} paper={planned.sheet} parts={lettered} />
          </li>
        ))}
      </ul>
    </div>
  );
}
