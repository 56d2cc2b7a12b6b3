import { useMemo, useState } from 'react';
import { Link, useOutletContext } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import type { BoxNet } from '../../core/net';
import { cuttingToolOf } from '../../core/plan';
import { sheetsOfPieces } from '../../core/plan/event/style-facts';
import type { BoxStyle } from '../../core/styles';
import { type Ticks, ticks } from '../../core/units';
import { boxOfRecipe } from '../../state/results/box-result';
import { useEasyMarks, useNeededRooms } from '../../state/results/fit-result';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { useWorkbook } from '../../state/use-workbook';
import { useRuler } from '../../ui/fields/measure';
import { pageAddress, START } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import type { OpenWorkbook } from '../../ui/frame/open-workbook';
import { usePageWords, useSay } from '../../ui/words';
import { AskForm } from './ask-form';
import { BesidePanel } from './beside-panel';
import { CompareStyles } from './compare-styles';
import type { BoxInHand } from './easy-cards';
import { FamilyPanel } from './family-panel';
import { FoundRows } from './found-rows';
import { type NamedSheet, USUAL_SLACK, useMarksAsk, useSheets } from './marks-ask';
import { useMarksEdits } from './marks-edits';
import { NothingFits } from './nothing-fits';
import './marks.css';

/** Can I hit it on my trimmer? What is asked on the left; the sizes on easy marks as a plot and a table, and what each costs. */
export function MarksScreen() {
  const open = useOutletContext<OpenWorkbook>();
  const words = usePageWords().marks;
  const tool = useToolInHand();
  const { recipe } = open;
  const box = recipe && boxOfRecipe(recipe, tool);
  if (!recipe || !box)
    return (
      <BlankState
        title={recipe ? words.styleGone : words.noRecipe}
        act={
          <Link className="button button-act" to={START}>
            {words.pickBox}
          </Link>
        }
      />
    );
  return <MarksOfRecipe key={recipe.id} recipe={recipe} net={box.net} style={box.style} open={open} />;
}

interface MarksOfRecipeProps {
  readonly recipe: Recipe;
  readonly net: BoxNet;
  readonly style: BoxStyle;
  readonly open: OpenWorkbook;
}

type Need = readonly [Ticks, Ticks, Ticks];

function MarksOfRecipe({ recipe, net, style, open }: MarksOfRecipeProps) {
  const { unit } = useRuler();
  const words = usePageWords().marks;
  const say = useSay();
  const tool = useToolInHand();
  const edits = useMarksEdits(recipe);
  const sheets = useSheets(recipe);
  const [sheetId, setSheetId] = useState<string | null>(null);
  const [slack, setSlack] = useState<Ticks | null>(null);
  const [turned, setTurned] = useState<Need | null>(null);
  const [compare, setCompare] = useState(false);
  const { need, asIs, fromContents, isTurned, arrangement, stale } = useNeed(recipe, net, turned);
  const sheet = sheets.find(({ id }) => id === sheetId) ?? sheets[0];
  const within = slack ?? USUAL_SLACK[unit];
  const ask = useMarksAsk({
    recipe,
    style,
    need,
    slack: within,
    sheet,
    sheets,
    compare,
    values: net.values,
  });
  const marks = useEasyMarks(ask);
  const own = marks.found[0];
  const isStale = marks.stale || stale;
  const sheetName = say(sheet?.name ?? '');
  const hand = useHand(recipe, net, sheet, arrangement);
  const shared = { recipe, edits, need: need ?? asIs, sheet: sheetName };
  return (
    <div className="marks-page">
      <AskForm
        {...shared}
        net={net}
        style={style}
        fromContents={fromContents}
        workbook={open.workbook}
        slack={within}
        onSlack={setSlack}
        sheets={sheets}
        sheetId={sheet?.id ?? ''}
        onSheet={setSheetId}
        turnedBack={isTurned ? () => setTurned(null) : null}
      />
      <div className="marks-found" aria-busy={isStale}>
        {own && (
          <NothingFits
            found={own}
            fixed={recipe.ownNet !== undefined}
            sheets={sheets}
            onSheet={setSheetId}
            onTurn={setTurned}
            onSlack={() => setSlack(ticks(within * 2))}
          />
        )}
        <FoundRows
          {...shared}
          found={own}
          stale={isStale}
          hand={hand}
          next={pageAddress(open.workbook, 'fold', recipe.id)}
        />
        <CompareStyles {...shared} marks={marks} open={compare} onOpen={setCompare} />
        <section className="marks-more" aria-label={words.more}>
          {ask && sheet && recipe.ownNet === undefined && (
            <FamilyPanel recipe={recipe} need={ask.need} sheet={sheet} options={net.options} base={ask} />
          )}
          <BesidePanel recipe={recipe} sheet={sheet} cutting={cuttingToolOf(tool)} />
        </section>
      </div>
    </div>
  );
}

/** The box as the found rows speak of it. */
function useHand(recipe: Recipe, net: BoxNet, sheet: NamedSheet | undefined, holds: BoxInHand['holds']) {
  const tool = useToolInHand();
  const papers = useWorkbook((state) => state.rows.papers);
  return useMemo(
    () => ({
      recipe,
      net,
      sheetsPerBox: sheet ? sheetsOfPieces(net.pieces, sheet.paper, cuttingToolOf(tool)) : null,
      colour: papers.get(recipe.paperId ?? '')?.colour,
      holds,
    }),
    [recipe, net, sheet, tool, papers, holds],
  );
}

/** The inside size that is looked for: of what goes in, turned if the maker asked so; else of the box as it is. */
function useNeed(recipe: Recipe, net: BoxNet, turned: Need | null) {
  const { contents } = recipe;
  const { rooms, stale } = useNeededRooms(contents);
  const fromContents = (contents?.items.length ?? 0) > 0;
  const room = rooms[Math.min(contents?.arrangement ?? 0, Math.max(0, rooms.length - 1))];
  const { width, depth, height } = net.inside;
  const asIs = useMemo<Need>(
    () => [atLeastOne(width), atLeastOne(depth), atLeastOne(height)],
    [width, depth, height],
  );
  const asked = fromContents ? (room?.inside ?? null) : asIs;
  const isTurned = turned !== null && asked !== null && sameSides(turned, asked);
  const need = isTurned ? turned : asked;
  return { need, asIs, fromContents, isTurned, arrangement: isTurned ? undefined : room?.arrangement, stale };
}

const atLeastOne = (side: Ticks): Ticks => ticks(Math.max(1, side));

/** The same three sides in another order: a turn asked for before is good as long as the room is. */
const sameSides = (a: Need, b: Need): boolean =>
  [...a].sort((x, y) => x - y).join(' ') === [...b].sort((x, y) => x - y).join(' ');
