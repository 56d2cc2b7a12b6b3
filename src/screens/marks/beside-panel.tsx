import { useState } from 'react';
import { useNavigate } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { sizesForRoom } from '../../core/fit';
import type { BoxNet } from '../../core/net';
import { type BoxBeside, benchToolOf, boxBeside } from '../../core/plan';
import { type BoxStyle, STYLES } from '../../core/styles';
import { type Ruler, ticks } from '../../core/units';
import { type CuttingTool, sheetsEach } from '../../core/yield';
import { boxOfRecipe } from '../../state/box-result';
import { useSheetCounts } from '../../state/sheet-counts';
import { useToolInHand } from '../../state/tool-in-hand';
import { useWorkbook } from '../../state/use-workbook';
import { pageAddress } from '../../ui/addresses';
import { Button } from '../../ui/button';
import { sayFacts } from '../../ui/findings';
import { sizeWords, useRuler } from '../../ui/measure';
import { Opening } from '../../ui/opening';
import { RecipePicture } from '../../ui/recipe-picture';
import { SelectField } from '../../ui/text-field';
import { usePageWords } from '../../ui/words';
import type { NamedSheet } from './marks-ask';
import { markMmOf, sizesMmOf } from './marks-edits';

interface BesidePanelProps {
  readonly recipe: Recipe;
  readonly sheet: NamedSheet | undefined;
  readonly cutting: CuttingTool;
}

/** A style of the same room, among the boxes to choose from. */
const SAME_ROOM = 'same-room:';

/** This box beside another of the shelf, or beside another style with the same room inside: both drawn, and the numbers by which one is weighed against the other. */
export function BesidePanel(props: BesidePanelProps) {
  const words = usePageWords().marks;
  const recipes = useWorkbook((state) => state.rows.recipes);
  const [open, setOpen] = useState(false);
  const [chosen, setChosen] = useState('');
  const ruler = useRuler();
  const tool = useToolInHand();
  const others = [...recipes.values()].filter(({ id }) => id !== props.recipe.id);
  const styles = STYLES.filter(({ id }) => id !== props.recipe.styleId);
  const net = boxOfRecipe(props.recipe, tool)?.net;
  const style =
    styles.find(({ id }) => `${SAME_ROOM}${id}` === chosen) ?? (others.length === 0 ? styles[0] : undefined);
  const other =
    style && net
      ? {
          ...inStyle(props.recipe, style, net, ruler),
          name: words.recipeInStyle(props.recipe.name, style.name),
        }
      : (others.find(({ id }) => id === chosen) ?? others[0]);
  return (
    <Opening head={<strong>{words.beside}</strong>} open={open} onToggle={setOpen}>
      <SelectField
        label={words.besideWhich}
        value={other?.id ?? ''}
        choices={[
          ...others.map(({ id, name }) => ({ id, label: name })),
          ...styles.map(({ id, name }) => ({ id: `${SAME_ROOM}${id}`, label: words.sameRoomIn(name) })),
        ]}
        onChange={setChosen}
      />
      {open && other && <Beside {...props} other={other} />}
      {open && other && style && <WhatStops recipe={other} />}
    </Opening>
  );
}

/** The recipe in another style, at the least marks that give the same room. */
const inStyle = (recipe: Recipe, style: BoxStyle, net: BoxNet, ruler: Ruler): Recipe => {
  const { ownNet: _, ...same } = recipe;
  const { width, depth, height } = net.inside;
  const sizes = sizesForRoom({
    style,
    caliperUm: recipe.caliperUm,
    need: [width, depth, height],
    slack: ticks(0),
    ruler,
    held: {},
    options: {},
  });
  return {
    ...same,
    id: `${SAME_ROOM}${style.id}`,
    styleId: style.id,
    options: {},
    dressings: [],
    held: [],
    sizesMm: sizesMmOf({ sizes }),
    ...markMmOf(ruler.finest),
  };
};

/** Why a style cannot be made with this room, each limit with its remedy; or a press that keeps it. */
function WhatStops({ recipe }: { readonly recipe: Recipe }) {
  const words = usePageWords().marks;
  const ruler = useRuler();
  const createAll = useWorkbook((state) => state.createAll);
  const navigate = useNavigate();
  const stops = (boxOfRecipe(recipe, useToolInHand())?.findings ?? []).filter(
    ({ severity }) => severity === 'stop',
  );
  const keep = () => {
    const { id: _, rev: __, createdAt: ___, changedAt: ____, ...content } = recipe;
    const answer = createAll('recipes', [content], words.keepStyle);
    if (answer.ok && answer.ids[0] !== undefined)
      void navigate(pageAddress({ kind: 'recipe', id: answer.ids[0] }, 'box'));
  };
  if (stops.length === 0) return <Button onClick={keep}>{words.keepStyle}</Button>;
  return (
    <ul className="beside-stops" role="status">
      {stops.map(({ code, where, says, remedy, facts }) => (
        <li key={`${code} ${where}`}>
          {sayFacts(says, facts, ruler)} <span className="soft">{sayFacts(remedy, facts, ruler)}</span>
        </li>
      ))}
    </ul>
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
