import { Trash2 } from 'lucide-react';
import type { EventLine } from '../../../shared/workbook';
import type { PlannedLine } from '../../core/plan';
import { useWorkbook } from '../../state/use-workbook';
import { IconButton } from '../../ui/button';
import { CountStepper } from '../../ui/count-stepper';
import { RecipePicture } from '../../ui/recipe-picture';
import { SelectField } from '../../ui/text-field';
import { usePageWords } from '../../ui/words';
import type { EventEdits } from './event-edits';

interface EventLineRowProps {
  readonly line: EventLine;
  readonly planned: PlannedLine | undefined;
  readonly edits: EventEdits;
}

/** One line: the folded box in its paper, what goes with it, how many, and how many with spares. */
export function EventLineRow({ line, planned, edits }: EventLineRowProps) {
  const words = usePageWords().event;
  const recipe = useWorkbook((state) => state.rows.recipes.get(line.recipeId));
  const papers = useWorkbook((state) => state.rows.papers);
  if (!recipe)
    return (
      <li className="event-line">
        <p role="alert">{words.recipeGone}</p>
        <IconButton label={words.removeLine} icon={<Trash2 />} onClick={() => edits.removeLine(line.id)} />
      </li>
    );
  const own = recipe.paperId === null ? undefined : papers.get(recipe.paperId);
  const paper = line.paperId === null ? own : papers.get(line.paperId);
  return (
    <li className="event-line">
      <RecipePicture recipe={recipe} colour={paper?.colour} />
      <div className="event-line-what">
        <h3>{recipe.name}</h3>
        <SelectField
          label={words.paper}
          of={recipe.name}
          value={line.paperId ?? ''}
          choices={[
            { id: '', label: own ? words.ownPaper(own.name) : words.noPaper },
            ...[...papers.values()]
              .filter(({ id }) => id !== own?.id)
              .map(({ id, name }) => ({ id, label: name })),
          ]}
          onChange={(id) => edits.changeLine({ ...line, paperId: id === '' ? null : id }, words.paper)}
        />
        {recipe.dressings.length > 0 && (
          <SelectField
            label={words.dressing}
            of={recipe.name}
            value={line.dressingId ?? ''}
            choices={[
              { id: '', label: words.noDressing },
              ...recipe.dressings.map(({ id, name }) => ({ id, label: name })),
            ]}
            onChange={(id) =>
              edits.changeLine({ ...line, dressingId: id === '' ? null : id }, words.dressing)
            }
          />
        )}
      </div>
      <div className="event-line-count">
        <CountStepper
          label={words.countOf(recipe.name)}
          value={line.count}
          least={1}
          onChange={(count) => edits.changeLine({ ...line, count }, words.count)}
        />
        <p className="soft" aria-live="polite">
          {planned ? words.andSpares(planned.spares) : ''}
        </p>
      </div>
      <IconButton
        label={words.removeLineOf(recipe.name)}
        icon={<Trash2 />}
        className="event-line-remove"
        onClick={() => edits.removeLine(line.id)}
      />
    </li>
  );
}
