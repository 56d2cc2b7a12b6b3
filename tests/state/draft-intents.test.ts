import { expect, test } from 'vitest';
import { addPanel } from '../../src/core/draft/add-panel';
import { editStyle } from '../../src/core/draft/edit-style';
import { emptyBase } from '../../src/core/draft/first-draft';
import { changeSize, renameSize } from '../../src/core/draft/sizes';
import { styleOfRecipe } from '../../src/core/plan';
import { withDraft } from '../../src/state/intents/draft-intents';
import { recipeRow } from './draft-recipe';

const floor = emptyBase('floor', 'Mine');
const edited = (edit: Parameters<typeof editStyle>[1]) => {
  const made = editStyle(floor, edit);
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made;
};

test('a box keeps its sizes through an edit, under another name where one is called otherwise', () => {
  const box = recipeRow({
    sizesMm: { width: 120, height: 30, gone: 5 },
    ownStyle: floor,
    options: { lid: 'x' },
  });
  const walled = withDraft(box, edited(addPanel('box', 'base', 'left', 'wall')));
  expect(walled.sizesMm).toEqual({ width: 120, height: 30 });
  expect(walled.options).toEqual({});
  expect(styleOfRecipe(walled)?.name).toBe('Mine');
  const renamed = withDraft(box, edited(renameSize('height', 'Tall')), {
    renamed: { from: 'height', to: 'tall' },
  });
  expect(renamed.sizesMm).toEqual({ width: 120, tall: 30 });
});

test('a usual size that was set just now is the one that is seen', () => {
  const box = recipeRow({ sizesMm: { width: 120, height: 30 }, ownStyle: floor, options: {} });
  const wider = withDraft(box, edited(changeSize('width', { default: '5 in' })), { usual: 'width' });
  expect(wider.sizesMm).toEqual({ height: 30 });
});
