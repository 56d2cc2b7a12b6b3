import { Link, useOutletContext } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { isEditable, keepOneWay } from '../../core/draft/first-draft';
import { boxOfRecipe } from '../../state/results/box-result';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { Button } from '../../ui/fields/button';
import { NEW_RECIPE, pageAddress } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import type { OpenWorkbook } from '../../ui/frame/open-workbook';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { Refusals } from './refusals';
import { StyleEditor } from './style-editor';
import { useDraft } from './use-draft';
import './style.css';

/** Where a maker draws a style: the net under the hand, the box folding beside it, every change an undo step of the box. */
export function StyleScreen() {
  const { recipe, workbook } = useOutletContext<OpenWorkbook>();
  const words = useDraftingWords();
  if (recipe?.ownStyle === undefined)
    return (
      <BlankState
        title={words.noStyle}
        act={
          <Link className="button button-act" to={NEW_RECIPE}>
            {words.toNew}
          </Link>
        }
      >
        <p>{words.noStyleWhy}</p>
      </BlankState>
    );
  return (
    <div className="style-page">
      <header className="style-head">
        <h2>{words.title}</h2>
        <p className="soft">{words.why}</p>
        <Link className="button button-plain" to={pageAddress(workbook, 'box', recipe.id)}>
          {words.toSize}
        </Link>
      </header>
      <DraftOf key={recipe.id} recipe={recipe} />
    </div>
  );
}

function DraftOf({ recipe }: { readonly recipe: Recipe }) {
  const words = useDraftingWords();
  const { opened, edits } = useDraft(recipe);
  const box = boxOfRecipe(recipe, useToolInHand());
  if (!opened.ok) return <Refusals of={opened.refusals} />;
  if (!isEditable(opened.draft))
    return (
      <BlankState
        title={words.ways}
        act={
          opened.draft.whole === undefined && (
            <Button tone="act" onClick={() => edits.make(words.changes.way, keepOneWay(recipe.options))}>
              {words.keepWay}
            </Button>
          )
        }
      >
        <p>{opened.draft.whole === undefined ? words.waysWhy : words.gluedStyle}</p>
      </BlankState>
    );
  return box && <StyleEditor recipe={recipe} box={box} open={opened} edits={edits} />;
}
