import { Link, useOutletContext } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { useNeededRooms } from '../../state/results/fit-result';
import { START } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import type { OpenWorkbook } from '../../ui/frame/open-workbook';
import { usePageWords } from '../../ui/words';
import { BottomView } from './bottom-view';
import { useContentsEdits } from './contents-edits';
import { InThisBox } from './in-this-box';
import { ThingsForm } from './things-form';
import { WaysToLie } from './ways-to-lie';
import './contents.css';

/** What goes inside? Things on the left; the ways they can lie, whether they go into this box, and what to take care of beside them. */
export function ContentsScreen() {
  const open = useOutletContext<OpenWorkbook>();
  const words = usePageWords().contents;
  const { recipe } = open;
  if (!recipe)
    return (
      <BlankState
        title={words.noRecipe}
        act={
          <Link className="button button-act" to={START}>
            {words.pickBox}
          </Link>
        }
      />
    );
  return <ContentsOfRecipe key={recipe.id} recipe={recipe} open={open} />;
}

function ContentsOfRecipe({ recipe, open }: { recipe: Recipe; open: OpenWorkbook }) {
  const edits = useContentsEdits(recipe);
  const { contents } = recipe;
  const { rooms, stale } = useNeededRooms(contents);
  const chosen = Math.min(contents?.arrangement ?? 0, Math.max(0, rooms.length - 1));
  const room = rooms[chosen];
  return (
    <div className="contents-page">
      <ThingsForm contents={contents} edits={edits} />
      <div className="contents-found">
        <WaysToLie
          recipe={recipe}
          rooms={rooms}
          stale={stale}
          chosen={chosen}
          edits={edits}
          workbook={open.workbook}
        />
        {contents && room && !stale && (
          <>
            <InThisBox recipe={recipe} contents={contents} room={room} edits={edits} />
            <BottomView recipe={recipe} contents={contents} />
          </>
        )}
      </div>
    </div>
  );
}
