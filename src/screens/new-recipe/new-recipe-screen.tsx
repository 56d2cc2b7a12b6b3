import { useNavigate, useSearchParams } from 'react-router';
import { STYLES, styleById } from '../../core/styles';
import { useWorkbook } from '../../state/use-workbook';
import { pageAddress } from '../../ui/addresses';
import { StyleTiles } from '../../ui/style-tiles';
import { useWords } from '../../ui/words';
import './new-recipe.css';

/** A new box begins with a picture: one press makes the recipe at the style's own sizes and opens it. */
export function NewRecipeScreen() {
  const words = useWords().newRecipe;
  const createRecipe = useWorkbook((state) => state.createRecipe);
  const edit = useWorkbook((state) => state.edit);
  const [search] = useSearchParams();
  const navigate = useNavigate();
  const eventId = search.get('event');

  const begin = (styleId: string) => {
    const made = createRecipe({
      name: words.nameOf(styleById(styleId)?.name ?? styleId),
      styleId,
      // Grain is a wish, not a must: a first box should fit the sheet she has. The Box page has the choice.
      grain: 'free',
    });
    if (!made.ok) return;
    if (eventId === null) return void navigate(pageAddress({ kind: 'recipe', id: made.id }, 'box'));
    edit('events', eventId, words.newLine, (event) => ({
      ...event,
      lines: [...event.lines, { id: made.id, recipeId: made.id, dressingId: null, paperId: null, count: 1 }],
    }));
    void navigate(pageAddress({ kind: 'event', id: eventId }, 'box', made.id));
  };

  return (
    <main id="page" className="page page-sheet new-recipe" tabIndex={-1}>
      <h1>{words.title}</h1>
      <p>{words.why}</p>
      <StyleTiles styles={STYLES} onChoose={begin} explained />
    </main>
  );
}
