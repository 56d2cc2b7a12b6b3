import { Copy, Trash2 } from 'lucide-react';
import type { EventLine, Recipe } from '../../../shared/workbook';
import type { PlannedLine } from '../../core/plan';
import { useLookColours } from '../../state/results/look-colours';
import { ownOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { IconButton } from '../../ui/fields/button';
import { CountStepper } from '../../ui/fields/count-stepper';
import { SelectField } from '../../ui/fields/text-field';
import { RecipePicture } from '../../ui/folded/recipe-picture';
import { Opening } from '../../ui/frame/opening';
import { usePageWords } from '../../ui/words';
import type { EventEdits } from './event-edits';

interface EventLineRowProps {
  readonly line: EventLine;
  readonly planned: PlannedLine | undefined;
  readonly edits: EventEdits;
  /** The count is what goes into one kit of a class. */
  readonly isKit: boolean;
}

/** One line: the folded box in its paper, what goes with it, how many, and how many with spares. */
export function EventLineRow({ line, planned, edits, isKit }: EventLineRowProps) {
  const { event: words, guests: guestWords } = usePageWords();
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
      <DressedPicture recipe={recipe} line={line} colour={paper?.colour} />
      <div className="event-line-what">
        <h3>{recipe.name}</h3>
        <SelectField
          label={words.paper}
          of={recipe.name}
          value={line.paperId ?? ''}
          choices={[
            { id: '', label: own ? words.ownPaper(own.name) : words.noPaper },
            ...ownOf(papers, line.paperId)
              .filter(({ id }) => id !== own?.id)
              .map(({ id, name }) => ({ id, label: name })),
          ]}
          onChange={(id) => edits.changeLine(withPaper(line, id === '' ? null : id), words.paper)}
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
          onChange={(count) => edits.changeLine(withCount(line, count), words.count)}
        />
        {isKit && <p className="soft">{words.countInKit}</p>}
        {line.byGuests && <p className="soft">{guestWords.follows}</p>}
        <p className="soft" aria-live="polite">
          {planned ? words.andSpares(planned.spares) : ''}
        </p>
      </div>
      <div className="event-line-acts">
        <IconButton
          label={words.copyLineOf(recipe.name)}
          icon={<Copy />}
          onClick={() => edits.copyLine(line)}
        />
        <IconButton
          label={words.removeLineOf(recipe.name)}
          icon={<Trash2 />}
          onClick={() => edits.removeLine(line.id)}
        />
      </div>
      {!isKit && !line.byGuests && <ByTable line={line} edits={edits} name={recipe.name} />}
    </li>
  );
}

/** A count of its own is no longer what the tables or the guest list come to. */
function withCount({ byTable, byGuests: _, ...line }: EventLine, count: number): EventLine {
  return byTable && byTable.tables * byTable.guests === count
    ? { ...line, byTable, count }
    : { ...line, count };
}

/** One favor for every guest: so many tables with so many at each. */
function ByTable({ line, edits, name }: { line: EventLine; edits: EventEdits; name: string }) {
  const words = usePageWords().event;
  const { byTable } = line;
  const set = (tables: number, guests: number) =>
    edits.changeLine({ ...line, byTable: { tables, guests }, count: tables * guests }, words.byTable);
  const [tables, guests] = [byTable?.tables ?? Math.max(1, Math.round(line.count / 8)), byTable?.guests ?? 8];
  return (
    <div className="event-line-tables">
      <Opening head={byTable ? words.counted(byTable.tables, byTable.guests) : words.byTable}>
        <p className="soft">{words.onePerGuest}</p>
        <div className="event-tables">
          <div className="field">
            <span className="field-name">{words.tables}</span>
            <CountStepper
              label={`${words.tables}: ${name}`}
              value={tables}
              least={1}
              most={1000}
              onChange={(next) => set(next, guests)}
            />
          </div>
          <div className="field">
            <span className="field-name">{words.guests}</span>
            <CountStepper
              label={`${words.guests}: ${name}`}
              value={guests}
              least={1}
              most={100}
              onChange={(next) => set(tables, next)}
            />
          </div>
        </div>
      </Opening>
    </div>
  );
}

/** Another paper chosen by hand puts a mix out of use. */
const withPaper = ({ mix: _, ...line }: EventLine, paperId: string | null): EventLine => ({
  ...line,
  paperId,
});

/** The box as this line makes it: in its paper, with its look on. */
function DressedPicture({
  recipe,
  line,
  colour,
}: {
  readonly recipe: Recipe;
  readonly line: EventLine;
  readonly colour: string | undefined;
}) {
  const dressing = recipe.dressings.find(({ id }) => id === line.dressingId);
  const colours = useLookColours(dressing, line.paperId ?? recipe.paperId);
  return <RecipePicture recipe={recipe} colour={colour} dressing={dressing} colours={colours} />;
}
