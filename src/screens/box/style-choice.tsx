import { memo, useId, useState } from 'react';
import { Link, useOutletContext } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { type BoxStyle, OWN_NET } from '../../core/styles';
import { useStylesAtHand } from '../../state/results/styles-at-hand';
import { Button } from '../../ui/fields/button';
import { RecipePicture } from '../../ui/folded/recipe-picture';
import { StylePicture } from '../../ui/folded/style-picture';
import { StyleTiles } from '../../ui/folded/style-tiles';
import { drawingAddress } from '../../ui/frame/addresses';
import type { OpenWorkbook } from '../../ui/frame/open-workbook';
import { usePageWords, useSay } from '../../ui/words';

interface StyleChoiceProps {
  readonly current: BoxStyle;
  readonly recipe: Recipe;
  readonly onChoose: (id: string) => void;
}

/** The style as its picture; opens to the pictures of all the others. */
export const StyleChoice = memo(function StyleChoice({ current, recipe, onChoose }: StyleChoiceProps) {
  const words = usePageWords().box;
  const say = useSay();
  const [open, setOpen] = useState(false);
  const { styles } = useStylesAtHand();
  const id = useId();
  const { workbook } = useOutletContext<OpenWorkbook>();
  return (
    <div className="style-choice">
      <div className="style-choice-now">
        {current === OWN_NET ? <RecipePicture recipe={recipe} /> : <StylePicture style={current} />}
        <div>
          <strong>{say(current.name)}</strong>
          {recipe.ownStyle !== undefined && (
            <Link className="button button-plain" to={drawingAddress(workbook, recipe.id)}>
              {words.drawStyle}
            </Link>
          )}
          <Button tone="quiet" aria-expanded={open} aria-controls={id} onClick={() => setOpen(!open)}>
            {open ? words.keepStyle : words.otherStyle}
          </Button>
        </div>
      </div>
      <div id={id} hidden={!open}>
        {open && (
          <StyleTiles
            styles={styles}
            current={current.id}
            onChoose={(style) => {
              setOpen(false);
              onChoose(style);
            }}
          />
        )}
      </div>
    </div>
  );
});
