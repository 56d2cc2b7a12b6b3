import { useMemo } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { netOfRecipe } from '../../core/plan/event/event-boxes';
import { FoldedPicture } from './folded-picture';
import './style-tiles.css';

/** A recipe's own box, folded, in the color of its paper. */
export function RecipePicture({ recipe, colour }: { recipe: Recipe; colour?: string | undefined }) {
  const net = useMemo(() => netOfRecipe(recipe), [recipe]);
  return (
    <span className="style-picture">
      {net && <FoldedPicture net={net} {...(colour === undefined ? {} : { colour })} />}
    </span>
  );
}
