import { useMemo, useState } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { type BoxBeside, benchToolOf, boxBeside } from '../../core/plan';
import type { BoxStyle } from '../../core/styles';
import { type CuttingTool, sheetsEach } from '../../core/yield';
import { boxOfRecipe } from '../../state/results/box-result';
import { useSheetCounts } from '../../state/results/sheet-counts';
import { useStylesAtHand } from '../../state/results/styles-at-hand';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { useWorkbook } from '../../state/use-workbook';
import { sizeWords, useRuler } from '../../ui/fields/measure';
import { SelectField } from '../../ui/fields/text-field';
import { RecipePicture } from '../../ui/folded/recipe-picture';
import { Opening } from '../../ui/frame/opening';
import { usePageWords } from '../../ui/words';
import type { NamedSheet } from './marks-ask';
import { inStyle, KeepStyle, sameRoomId } from './same-room';

interface BesidePanelProps {
  readonly recipe: Recipe;
  readonly sheet: NamedSheet | undefined;
  readonly cutting: CuttingTool;
}

/**
 * This box beside another of the shelf, or beside another style with the same room inside: both drawn, and the numbers by which one is
 * weighed against the other.
 */
export function BesidePanel(props: BesidePanelProps) {
  const words = usePageWords().marks;
  const recipes = useWorkbook((state) => state.rows.recipes);
  const [open, setOpen] = useState(false);
  const [chosen, setChosen] = useState('');
  const others = [...recipes.values()].filter(({ id }) => id !== props.recipe.id);
  const styles = useStylesAtHand().styles.filter(({ id }) => id !== props.recipe.styleId);
  const style =
    styles.find(({ id }) => sameRoomId(id) === chosen) ?? (others.length === 0 ? styles[0] : undefined);
  const other = others.find(({ id }) => id === chosen) ?? others[0];
  return (
    <Opening head={<strong>{words.beside}</strong>} open={open} onToggle={setOpen}>
      <SelectField
        label={words.besideWhich}
        value={style ? sameRoomId(style.id) : (other?.id ?? '')}
        choices={[
          ...others.map(({ id, name }) => ({ id, label: name })),
          ...styles.map(({ id, name }) => ({ id: sameRoomId(id), label: words.sameRoomIn(name) })),
        ]}
        onChange={setChosen}
      />
      {open && style && <BesideStyle {...props} style={style} />}
      {open && !style && other && <Beside {...props} other={other} />}
    </Opening>
  );
}

/** Beside another style with the same room inside; it can be kept where nothing stops it. */
function BesideStyle({ style, ...props }: BesidePanelProps & { readonly style: BoxStyle }) {
  const { recipe } = props;
  const words = usePageWords().marks;
  const ruler = useRuler();
  const net = boxOfRecipe(recipe, useToolInHand())?.net;
  const { kept } = useStylesAtHand();
  const name = words.recipeInStyle(recipe.name, style.name);
  const other = useMemo(
    () => net && { ...inStyle(recipe, style, net.inside, ruler), ...kept(style.id), name },
    [recipe, style, net, ruler, name, kept],
  );
  if (!other) return null;
  return (
    <>
      <Beside {...props} other={other} />
      <KeepStyle recipe={other} />
    </>
  );
}

function Beside({ recipe, other, sheet, cutting }: BesidePanelProps & { readonly other: Recipe }) {
  const { marks: words, sheets: sheetWords } = usePageWords();
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
    [
      words.holds,
      ({ roomMm3 }) =>
        roomMm3 === null ? words.holdsNothing : words.millilitres(Math.round(roomMm3 / 1000)),
    ],
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
      {counts.some(({ exact }) => !exact) && <p className="soft">{sheetWords.stillCounting}</p>}
    </div>
  );
}
