import { useCallback, useMemo } from 'react';
import { Link } from 'react-router';
import type { Recipe, Tool } from '../../../shared/workbook';
import { drawInsidePiece } from '../../core/draw/net/inside-drawing';
import { setFractions } from '../../core/draw/strokes/set-fractions';
import { dressSteps } from '../../core/dress';
import { type EventPlan, netOfRecipe, oneSetting, type PlannedPaper, type RunStep } from '../../core/plan';
import { USUAL_FINEST } from '../../core/units';
import { letterParts } from '../../print';
import { benchOfRecipe } from '../../state/results/bench-result';
import { useLookColours } from '../../state/results/look-colours';
import { useWorkbook } from '../../state/use-workbook';
import { DrawingView, type FittedDrawing, type Space } from '../../ui/drawing/drawing-view';
import { SheetView } from '../../ui/drawing/sheet-view';
import { useRuler } from '../../ui/fields/measure';
import { FoldedPicture } from '../../ui/folded/folded-picture';
import { pageAddress } from '../../ui/frame/addresses';
import { usePageWords, useSay } from '../../ui/words';
import { StepView } from './bench-net';

interface RunPictureProps {
  readonly step: RunStep;
  readonly plan: EventPlan;
  readonly recipes: readonly Recipe[];
  /** The event's own tool, or the one in hand. */
  readonly tool: Tool | undefined;
  readonly visiting: boolean;
}

/** What the step is done to: the sheets and how they are cut, the card against the fence, or the box as it closes, a picture an act. */
export function RunPicture({ step, plan, recipes, tool, visiting }: RunPictureProps) {
  const ruler = useRuler();
  const say = useSay();
  const { work } = step;
  const recipe = recipes.find(({ id }) => id === step.recipeId);
  // A tap changes the count, and no picture is drawn anew for it.
  const cards = useMemo(() => recipe && benchOfRecipe(recipe, tool, ruler)?.cards, [recipe, tool, ruler]);
  const card =
    work.do === 'fence' || work.do === 'card'
      ? cards?.find(({ piece }) => piece.id === work.pieceId)
      : undefined;
  const single = useMemo(
    () => (card && work.do === 'fence' ? oneSetting(card, work.at, work.lie) : null),
    [card, work],
  );
  if (recipe && (work.do === 'place' || work.do === 'tie'))
    return <PutOnPicture {...{ step, plan, recipe }} />;
  if (work.do === 'sheets') {
    const planned = plan.papers.find(({ paperId }) => step.id === `cut/${paperId}`);
    return planned ? <SheetPictures planned={planned} eventId={visiting ? null : plan.eventId} /> : null;
  }
  if (single) return <StepView {...single} />;
  if (!card || work.do !== 'card') return null;
  const [only, ...others] = work.steps;
  if (only && others.length === 0) return <StepView card={card} step={only} />;
  return (
    <ol className="run-series">
      {work.steps.map((each) => (
        <li key={each.id}>
          <StepView card={card} step={each} />
          <p>{setFractions(say(each.headline))}</p>
        </li>
      ))}
    </ol>
  );
}

const NOTHING_DRAWN = { widthMm: 1, heightMm: 1, title: '', description: '', marks: [] };

/** The closed box with everything on it up to this step; the flat piece for what lies inside. */
function PutOnPicture({ step, plan, recipe }: { step: RunStep; plan: EventPlan; recipe: Recipe }) {
  const line = plan.lines.find(({ lineId }) => lineId === step.lineId);
  const dressing = recipe.dressings.find(({ id }) => id === line?.dressingId);
  const colours = useLookColours(dressing, line?.paperId ?? recipe.paperId);
  const net = useMemo(() => netOfRecipe(recipe), [recipe]);
  const steps = useMemo(
    () => (net && dressing ? dressSteps(net, dressing, USUAL_FINEST.in) : []),
    [net, dressing],
  );
  const colour = useWorkbook((state) => state.rows.papers.get(line?.paperId ?? '')?.colour);
  const at = steps.findIndex(({ id }) => id === step.id.split('/').at(-1));
  const worn = steps[at]?.worn ?? [];
  const inside = steps[at]?.inside;
  const name = dressing?.pieces.find(({ id }) => id === steps[at]?.id)?.name ?? '';
  const drawInside = useCallback(
    (space: Space): FittedDrawing => {
      const drawn = net && inside && drawInsidePiece(net, inside, name, space);
      return { ...(drawn ?? NOTHING_DRAWN), scale: 1, origin: [0, 0] };
    },
    [net, inside, name],
  );
  if (net && inside) return <DrawingView draw={drawInside} still />;
  if (!net || worn.length === (steps[at - 1]?.worn ?? []).length) return null;
  return (
    <span className="style-picture">
      <FoldedPicture net={net} worn={worn} colours={colours} {...(colour === undefined ? {} : { colour })} />
    </span>
  );
}

function SheetPictures({ planned, eventId }: { planned: PlannedPaper; eventId: string | null }) {
  const words = usePageWords();
  const lettered = useMemo(() => letterParts(planned), [planned]);
  return (
    <div className="run-sheets">
      {eventId !== null && (
        <Link className="button button-quiet" to={pageAddress({ kind: 'event', id: eventId }, 'sheets')}>
          {words.run.toSheets}
        </Link>
      )}
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
