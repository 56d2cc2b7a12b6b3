import { useId, useState } from 'react';
import { Link, useNavigate } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { ownOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { CountStepper } from '../../ui/fields/count-stepper';
import { RecipePicture } from '../../ui/folded/recipe-picture';
import { pageAddress } from '../../ui/frame/addresses';
import { usePageWords } from '../../ui/words';
import './event.css';

/** What a maker most often asks for. source: common practice, no source. */
const USUAL_COUNT = 40;

/** A recipe becomes a batch: how many, and one press opens an event with it. */
export function MakeThese({ recipe }: { recipe: Recipe }) {
  const words = usePageWords().event;
  const events = useWorkbook((state) => state.rows.events);
  const papers = useWorkbook((state) => state.rows.papers);
  const createEvent = useWorkbook((state) => state.createEvent);
  const supplies = useWorkbook((state) => state.rows.supplies);
  const navigate = useNavigate();
  const [count, setCount] = useState(USUAL_COUNT);
  const head = useId();
  const using = [...events.values()].filter(({ lines }) =>
    lines.some(({ recipeId }) => recipeId === recipe.id),
  );
  const tape = ownOf(supplies).find(({ kind }) => kind === 'tape');

  const begin = () => {
    const line = {
      id: recipe.id,
      recipeId: recipe.id,
      dressingId: recipe.dressings[0]?.id ?? null,
      paperId: null,
      count,
    };
    const made = createEvent({ name: words.eventOf(recipe.name), lines: [line], tapeId: tape?.id ?? null });
    if (made.ok) void navigate(pageAddress({ kind: 'event', id: made.id }, 'event'));
  };
  const paper = recipe.paperId === null ? undefined : papers.get(recipe.paperId);

  return (
    <div className="make-these">
      <RecipePicture recipe={recipe} colour={paper?.colour} />
      <form
        className="make-these-form"
        aria-labelledby={head}
        onSubmit={(event) => {
          event.preventDefault();
          begin();
        }}
      >
        <h2 id={head}>{words.howMany(recipe.name)}</h2>
        <p className="soft">{words.howManyWhy}</p>
        <CountStepper label={words.count} value={count} least={1} onChange={setCount} />
        <Button tone="act" type="submit">
          {words.begin}
        </Button>
        {using.length > 0 && (
          <div className="make-these-using">
            <h3>{words.usedIn}</h3>
            <ul>
              {using.map(({ id, name }) => (
                <li key={id}>
                  <Link to={pageAddress({ kind: 'event', id }, 'event')}>{name}</Link>
                </li>
              ))}
            </ul>
          </div>
        )}
      </form>
    </div>
  );
}
