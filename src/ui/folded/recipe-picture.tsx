import { useMemo } from 'react';
import type { Dressing, Recipe } from '../../../shared/workbook';
import { wornOf } from '../../core/dress';
import { netOfRecipe } from '../../core/plan/event/event-boxes';
import { USUAL_FINEST } from '../../core/units';
import { FoldedPicture } from './folded-picture';
import './style-tiles.css';

interface RecipePictureProps {
  readonly recipe: Recipe;
  readonly colour?: string | undefined;
  /** The look it wears; bare if left out. */
  readonly dressing?: Dressing | null | undefined;
  /** Colors of what it wears, by the id of the piece. */
  readonly colours?: ReadonlyMap<string, string>;
}

/** A recipe's own box, folded, in the color of its paper. */
export function RecipePicture({ recipe, colour, dressing, colours }: RecipePictureProps) {
  const net = useMemo(() => netOfRecipe(recipe), [recipe]);
  const worn = useMemo(
    () => (net && dressing ? wornOf(net, dressing, USUAL_FINEST.in) : []),
    [net, dressing],
  );
  return (
    <span className="style-picture">
      {net && (
        <FoldedPicture
          net={net}
          worn={worn}
          {...(colours && { colours })}
          {...(colour === undefined ? {} : { colour })}
        />
      )}
    </span>
  );
}
