import { useDeferredValue, useMemo } from 'react';
import type { Dressing, Recipe } from '../../../shared/workbook';
import { dressSteps } from '../../core/dress';
import type { BoxNet } from '../../core/net';
import type { Ticks } from '../../core/units';
import { sayReason } from '../../core/units/reason';
import { useLookColours } from '../../state/results/look-colours';
import { useWorkbook } from '../../state/use-workbook';
import { FoldedPicture } from '../../ui/folded/folded-picture';
import { useWording } from '../../ui/frame/wording';
import { usePageWords } from '../../ui/words';

interface LookPictureProps {
  readonly recipe: Recipe;
  readonly net: BoxNet;
  readonly dressing: Dressing;
  readonly mark: Ticks;
}

/** The closed box with its look on, and how each thing is put on. */
export function LookPicture({ recipe, mark, ...newest }: LookPictureProps) {
  const words = usePageWords().dressing;
  const wording = useWording();
  // Typing goes first; the picture follows when there is time.
  const net = useDeferredValue(newest.net);
  const dressing = useDeferredValue(newest.dressing);
  const { papers, supplies } = useWorkbook((state) => state.rows);
  const colours = useLookColours(dressing, recipe.paperId);
  const steps = useMemo(() => {
    const widthOf = (id: string | null) => {
      const supply = supplies.get(id ?? '');
      return supply && 'rollMm' in supply ? supply.widthMm : null;
    };
    return dressSteps(net, dressing, mark, widthOf);
  }, [net, dressing, mark, supplies]);
  if (steps.length === 0) return null;
  const colour = papers.get(recipe.paperId ?? '')?.colour;
  return (
    <section className="look-picture" aria-labelledby="look-head">
      <h2 id="look-head">{words.lookHead}</h2>
      <FoldedPicture
        net={net}
        worn={steps.at(-1)?.worn ?? []}
        colours={colours}
        {...(colour === undefined ? {} : { colour })}
      />
      <ol>
        {steps.map((step) => (
          <li key={step.id}>{sayReason(step, wording)}</li>
        ))}
      </ol>
    </section>
  );
}
