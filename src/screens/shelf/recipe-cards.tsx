import { Copy, Download, Trash2 } from 'lucide-react';
import { useEffect, useMemo, useRef, useState } from 'react';
import { Link } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { netOfRecipe } from '../../core/plan/event/event-boxes';
import { styleById } from '../../core/styles';
import { useWorkbook } from '../../state/use-workbook';
import { IconButton } from '../../ui/fields/button';
import { roughSize, useRuler } from '../../ui/fields/measure';
import { RecipePicture } from '../../ui/folded/recipe-picture';
import { pageAddress } from '../../ui/frame/addresses';
import { LongList, type Place } from '../../ui/frame/long-list';
import { useSay, useWords } from '../../ui/words';
import { useSaveFile } from './save-file';

/** Every recipe as its folded box. */
export function RecipeCards({ recipes }: { recipes: readonly Recipe[] }) {
  return (
    <LongList rows={recipes} className="recipe-cards" rowPx={300}>
      {(recipe, place, at) => (
        <RecipeCard key={recipe.id} recipe={recipe} place={place} atOnce={at < DRAWN_AT_ONCE} />
      )}
    </LongList>
  );
}

/** Cards that are drawn with the page; a thousand boxes are folded only as they come into sight. source: our own, two screens of them */
const DRAWN_AT_ONCE = 24;

/** Whether an element is in sight or nearly so; once it was, it stays so. */
function useNearSight(atOnce: boolean) {
  const [near, setNear] = useState(atOnce || typeof IntersectionObserver === 'undefined');
  const element = useRef<HTMLAnchorElement>(null);
  useEffect(() => {
    if (near || !element.current) return;
    const watch = new IntersectionObserver(
      (seen) => {
        if (seen.some(({ isIntersecting }) => isIntersecting)) setNear(true);
      },
      { rootMargin: '600px' },
    );
    watch.observe(element.current);
    return () => watch.disconnect();
  }, [near]);
  return { near, element };
}

interface RecipeCardProps {
  readonly recipe: Recipe;
  readonly place: Place;
  readonly atOnce: boolean;
}

function RecipeCard({ recipe, place, atOnce }: RecipeCardProps) {
  const words = useWords().shelf;
  const say = useSay();
  const ruler = useRuler();
  const papers = useWorkbook((state) => state.rows.papers);
  const remove = useWorkbook((state) => state.remove);
  const duplicate = useWorkbook((state) => state.duplicate);
  const saveFile = useSaveFile();
  const paper = recipe.paperId === null ? undefined : papers.get(recipe.paperId);
  const { near, element } = useNearSight(atOnce);
  const net = useMemo(() => (near ? netOfRecipe(recipe) : null), [near, recipe]);
  const key = { table: 'recipes', id: recipe.id } as const;
  return (
    <li {...place} className="recipe-card">
      <Link
        ref={element}
        to={pageAddress({ kind: 'recipe', id: recipe.id }, 'box')}
        className="recipe-card-face"
      >
        {near ? <RecipePicture recipe={recipe} colour={paper?.colour} /> : <span className="style-picture" />}
        <strong>{recipe.name}</strong>{' '}
        <span className="soft">
          {recipe.example && <>{words.example}: </>}
          {say(styleById(recipe.styleId)?.name ?? '')}
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
