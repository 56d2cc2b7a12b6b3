import { useState } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { type BoxBeside, benchToolOf, boxBeside } from '../../core/plan';
import { type CuttingTool, sheetsEach } from '../../core/yield';
import { boxOfRecipe } from '../../state/box-result';
import { useSheetCounts } from '../../state/sheet-counts';
import { useToolInHand } from '../../state/tool-in-hand';
import { useWorkbook } from '../../state/use-workbook';
import { sizeWords, useRuler } from '../../ui/measure';
import { Opening } from '../../ui/opening';
import { RecipePicture } from '../../ui/recipe-picture';
import { SelectField } from '../../ui/text-field';
import { usePageWords } from '../../ui/words';
import type { NamedSheet } from './marks-ask';

interface BesidePanelProps {
  readonly recipe: Recipe;
  readonly sheet: NamedSheet | undefined;
  readonly cutting: CuttingTool;
}

/** This box beside another of the shelf: both drawn, and the numbers by which one is weighed against the other. */
export function BesidePanel(props: BesidePanelProps) {
  const words = usePageWords().marks;
  const recipes = useWorkbook((state) => state.rows.recipes);
  const [open, setOpen] = useState(false);
  const [chosen, setChosen] = useState('');
  const others = [...recipes.values()].filter(({ id }) => id !== props.recipe.id);
  const other = others.find(({ id }) => id === chosen) ?? others[0];
  return (
    <Opening head={<strong>{words.beside}</strong>} open={open} onToggle={setOpen}>
      {other ? (
        <>
          <SelectField
            label={words.besideWhich}
            value={other.id}
            choices={others.map(({ id, name }) => ({ id, label: name }))}
            onChange={setChosen}
          />
          {open && <Beside {...props} other={other} />}
        </>
      ) : (
        <p className="soft">{words.besideNone}</p>
      )}
    </Opening>
  );
}

function Beside({ recipe, other, sheet, cutting }: BesidePanelProps & { readonly other: Recipe }) {
  const words = usePageWords().marks;
  const ruler = useRuler();
  const tool = useToolInHand();
  // How many one sheet gives is counted apart, since that can take longer than a frame.
  const nets = [recipe, other].map((each) => boxOfRecipe(each, tool)?.net);
  const columns = nets.map((net) => net && boxBeside(net, benchToolOf(tool), cutting, null));
  const cards = columns.map((box) => box?.cards ?? []);
  const counts = useSheetCounts(
    sheet
      ? cards.flat().map(({ piece, across, up }) => ({
          part: { id: piece, across, up, grain: 'free' as const },
          paper: sheet.paper,
          tool: cutting,
        }))
      : [],
  );
  const countOf = (column: number, card: number) =>
    counts[column === 0 ? card : (cards[0]?.length ?? 0) + card]?.count ?? 0;
  const boxesFromOne = (column: number) => {
    const sheets = sheetsEach([...(cards[column] ?? []).keys()], (card) => countOf(column, card));
    return sheets === null ? words.fitsNot(sheet?.name ?? '') : `${Math.floor(100 / sheets) / 100}`;
  };
  const rows: readonly [head: string, says: (box: BoxBeside, column: number) => string][] = [
    [words.roomIs, ({ inside }) => sizeWords([inside.width, inside.depth, inside.height], ruler)],
    [words.holds, ({ roomMm3 }) => words.millilitres(Math.round(roomMm3 / 1000))],
    [words.blank, ({ cards }) => cards.map(({ across, up }) => sizeWords([across, up], ruler)).join('; ')],
    [words.scores, ({ scores, settings }) => words.scoresAt(scores, settings)],
    [words.betweenMarks, ({ betweenMarks }) => `${betweenMarks}`],
    [words.fromOneSheet(sheet?.name ?? ''), (_, column) => boxesFromOne(column)],
    [words.handWork, ({ seconds }) => words.minutes(seconds)],
  ];
  return (
    <div className="beside">
      <table>
        <thead>
          <tr>
            <td />
            {[recipe, other].map((each) => (
              <th key={each.id} scope="col">
                <RecipePicture recipe={each} />
                {each.name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([head, says]) => (
            <tr key={head}>
              <th scope="row">{head}</th>
              {columns.map((box, place) => (
                <td key={place === 0 ? recipe.id : other.id} className="marks-number">
                  {box ? says(box, place) : words.styleGone}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
