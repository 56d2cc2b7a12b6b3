import { useNavigate, useSearchParams } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { mmOfTicks } from '../../core/rows/lengths';
import { OWN_NET, styleById } from '../../core/styles';
import type { Ticks } from '../../core/units';
import { firstOptions, firstSizesMm } from '../../state/intents/first-sizes';
import { useStylesAtHand } from '../../state/results/styles-at-hand';
import { useWorkbook } from '../../state/use-workbook';
import { drawingAddress, pageAddress, type Workbook } from '../../ui/frame/addresses';
import { useWords } from '../../ui/words';
import { usePickingWords } from '../../ui/words/picking-words';
import { DrawOwn } from './draw-own';
import { OwnNet } from './own-net';
import { OwnStyle } from './own-style';
import { SheetsAtSize } from './sheets-at-size';
import { useStyleFacts } from './style-facts';
import { StyleFamilies } from './style-families';
import { StyleFilters } from './style-filters';
import { useWishes } from './wishes';
import './new-recipe.css';

/** A new box begins with a picture: one press makes the recipe at the style's own sizes and opens it. */
export function NewRecipeScreen() {
  const words = useWords().newRecipe;
  const picking = usePickingWords();
  const begin = useBegin();
  const wishes = useWishes();
  const facts = useStyleFacts();
  const { styles, kept } = useStylesAtHand();
  const doesAll = (id: string) => {
    const of = facts.of(id);
    return of !== undefined && wishes.merits.every((merit) => of.merits.has(merit));
  };
  const isHidden = (id: string) => wishes.merits.length > 0 && !doesAll(id);
  const matching = styles.filter(({ id }) => !isHidden(id)).length;

  return (
    <main id="page" className="page page-sheet new-recipe" tabIndex={-1}>
      <h1>{words.title}</h1>
      <p>{words.why}</p>
      <StyleFilters wishes={wishes} matching={matching} of={styles.length} looking={facts.looking} />
      <SheetsAtSize facts={facts} />
      <StyleFamilies
        onChoose={(styleId) =>
          begin(styleId, words.nameOf(styleById(styleId)?.name ?? styleId), {
            ...kept(styleId),
            sizesMm: sizesAsTyped(styleId, facts.sizes),
          })
        }
        isHidden={isHidden}
        extra={(id) => {
          const of = facts.of(id);
          if (of === undefined) return null;
          return (
            <span className="style-tile-fact">
              {of.sheetsPerFavor === null ? picking.tooLarge : picking.sheetsPerFavor(of.sheetsPerFavor)}
            </span>
          );
        }}
      />
      <DrawOwn onDraw={(styleId, ownStyle, name) => begin(styleId, name, { ownStyle }, true)} />
      <OwnStyle onMake={(style, ownStyle) => begin(style.id, words.nameOf(style.name), { ownStyle })} />
      <OwnNet onMake={(ownNet, title) => begin(OWN_NET.id, title || picking.newName, { ownNet })} />
    </main>
  );
}

/** The sizes typed for the tiles, as far as the style has them: nothing typed is asked again. */
function sizesAsTyped(styleId: string, sizes: Readonly<Record<string, Ticks>> | null): Recipe['sizesMm'] {
  const symbols = styleById(styleId)?.symbols ?? {};
  return Object.fromEntries(
    Object.entries(sizes ?? {}).flatMap(([name, size]) => (name in symbols ? [[name, mmOfTicks(size)]] : [])),
  );
}

/** Makes the recipe and opens it; out of an event, as a new line of it. */
function useBegin() {
  const words = useWords().newRecipe;
  const createRecipe = useWorkbook((state) => state.createRecipe);
  const edit = useWorkbook((state) => state.edit);
  const unit = useWorkbook((state) => state.settings.unit);
  const [search] = useSearchParams();
  const navigate = useNavigate();
  const eventId = search.get('event');
  return (
    styleId: string,
    name: string,
    own: Partial<Pick<Recipe, 'ownNet' | 'ownStyle' | 'sizesMm'>> = {},
    draws = false,
  ) => {
    const made = createRecipe({
      name: name.slice(0, 120),
      styleId,
      options: firstOptions(styleId),
      // Grain is a wish, not a must: a first box should fit the sheet they have. The Box page has the choice.
      grain: 'free',
      ...own,
      sizesMm: { ...firstSizesMm(styleId, unit), ...own.sizesMm },
    });
    if (!made.ok) return;
    const addressOf = draws
      ? drawingAddress
      : (workbook: Workbook, id: string) => pageAddress(workbook, 'box', id);
    if (eventId === null) return void navigate(addressOf({ kind: 'recipe', id: made.id }, made.id));
    edit('events', eventId, words.newLine, (event) => ({
      ...event,
      lines: [...event.lines, { id: made.id, recipeId: made.id, dressingId: null, paperId: null, count: 1 }],
    }));
    void navigate(addressOf({ kind: 'event', id: eventId }, made.id));
  };
}
