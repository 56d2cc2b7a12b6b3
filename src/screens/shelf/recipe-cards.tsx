import { Copy, Download, Trash2 } from 'lucide-react';
import { Link } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { netOfRecipe } from '../../core/plan/event-boxes';
import { styleById } from '../../core/styles';
import { useWorkbook } from '../../state/use-workbook';
import { pageAddress } from '../../ui/addresses';
import { IconButton } from '../../ui/button';
import { roughSize, useRuler } from '../../ui/measure';
import { RecipePicture } from '../../ui/recipe-picture';
import { useWords } from '../../ui/words';
import { useSaveFile } from './save-file';

/** Every recipe as its folded box. */
export function RecipeCards({ recipes }: { recipes: readonly Recipe[] }) {
  return (
    <ul className="recipe-cards">
      {recipes.map((recipe) => (
        <RecipeCard key={recipe.id} recipe={recipe} />
      ))}
    </ul>
  );
}

function RecipeCard({ recipe }: { recipe: Recipe }) {
  const words = useWords().shelf;
  const ruler = useRuler();
  const papers = useWorkbook((state) => state.rows.papers);
  const remove = useWorkbook((state) => state.remove);
  const duplicate = useWorkbook((state) => state.duplicate);
  const saveFile = useSaveFile();
  const paper = recipe.paperId === null ? undefined : papers.get(recipe.paperId);
  const net = netOfRecipe(recipe);
  const key = { table: 'recipes', id: recipe.id } as const;
  return (
    <li className="recipe-card">
      <Link to={pageAddress({ kind: 'recipe', id: recipe.id }, 'box')} className="recipe-card-face">
        <RecipePicture recipe={recipe} colour={paper?.colour} />
        <strong>{recipe.name}</strong>{' '}
        <span className="soft">
          {recipe.example && <>{words.example}: </>}
          {styleById(recipe.styleId)?.name}
          {net && <> · {roughSize([net.inside.width, net.inside.depth, net.inside.height], ruler)}</>}
        </span>
      </Link>
      <div className="recipe-card-acts">
        <IconButton
          label={words.copyOf(recipe.name)}
          icon={<Copy />}
          onClick={() => duplicate(key, words.copyName(recipe.name))}
        />
        <IconButton
          label={words.saveFileOf(recipe.name)}
          icon={<Download />}
          onClick={() => saveFile({ kind: 'recipe', id: recipe.id }, recipe.name)}
        />
        <IconButton label={words.deleteOf(recipe.name)} icon={<Trash2 />} onClick={() => remove(key)} />
      </div>
    </li>
  );
}
