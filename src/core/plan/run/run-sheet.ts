import { type BenchTool, type BoxCard, boxCards, type CardStep, type Lie, sizeAsItLies } from '../../bench';
import { type BoxSize, type FlatSize, fitPiece, insertCuts, outsideSize, tieLength } from '../../dress';
import type { BoxNet } from '../../net/types';
import type { Paper, Recipe, Supply, Tool } from '../../rows';
import type { HandAct } from '../../rows/hand-times';
import { markAbove, type Ticks } from '../../units';
import type { Reason } from '../../units/reason';
import { benchToolOf, cutMarkOf } from '../buying/stock-rows';
import { netOfRecipe } from '../event/event-boxes';
import type { EventPlan, PlannedLine } from '../event/types';
import { cutStep } from './run-counts';
import { type CardLies, type CardWork, cardLies, flatWork, stageCard } from './run-stages';

/** A straight score with the fence set once. */
export interface FenceScore {
  readonly do: 'fence';
  readonly pieceId: string;
  readonly pieceLabel: string;
  readonly at: Ticks;
  /** Off the near edge; null: from edge to edge. */
  readonly spans: readonly (null | { readonly from: Ticks; readonly to: Ticks })[];
  readonly lies: CardLies;
  readonly lie: Lie;
  /** The card as it lies. */
  readonly size: FlatSize;
}

/** What the hands do at one step. */
export type RunWork =
  | { readonly do: 'sheets'; readonly layouts: number }
  | FenceScore
  | CardWork
  | {
      readonly do: 'place';
      readonly name: string;
      readonly perBox: number;
      readonly size: FlatSize | null;
      /** Slots, scores and holes of an insert. */
      readonly cuts: readonly Reason[];
    }
  | { readonly do: 'fill'; readonly things: readonly { readonly name: string; readonly perBox: number }[] }
  | { readonly do: 'tie'; readonly name: string; readonly perBox: number; readonly length: Ticks };

/** One screen of the run sheet: one thing done to every piece of one line, or to every sheet of one paper. */
export interface RunStep {
  readonly id: string;
  readonly act: HandAct;
  /** Null: sheets of a paper, whatever lines they are for. */
  readonly lineId: string | null;
  readonly recipeId: string | null;
  /** The recipe, or the paper that is cut. */
  readonly name: string;
  /** The line's paper: tells two colors of one recipe apart. */
  readonly paper: string | null;
  readonly piece: string | null;
  readonly unit: 'sheet' | 'piece' | 'box';
  readonly of: number;
  readonly work: RunWork;
}

/** The first box of a line, with what to measure on it before the batch. */
export interface FirstBox {
  readonly lineId: string;
  readonly recipeId: string;
  readonly name: string;
  readonly paper: string | null;
  readonly blanks: readonly { readonly label: string; readonly size: FlatSize }[];
  readonly inside: BoxSize;
  readonly outside: BoxSize;
}

export interface RunSheet {
  readonly firsts: readonly FirstBox[];
  /** In the order of work. */
  readonly steps: readonly RunStep[];
}

/** The order of the batch: flat work first, decorating while it is flat, then glue and bottoms, then filling and tying. */
const ORDER: readonly HandAct[] = [
  'cut',
  'score',
  'slit',
  'fold',
  'place',
  'glue',
  'close-bottom',
  'tuck',
  'fill',
  'tie-bow',
];

interface Rows {
  readonly recipes: readonly Recipe[];
  readonly papers: readonly Paper[];
  readonly supplies: readonly Supply[];
  readonly tools: readonly Tool[];
}

/** The batch as steps at the bench. `tool`: what the maker scores on. */
export function listRunSheet(plan: EventPlan, rows: Rows, tool: Tool | undefined): RunSheet {
  const bench = benchToolOf(tool);
  const lines = plan.lines.flatMap((line): LineAtBench[] => {
    const recipe = rows.recipes.find(({ id }) => id === line.recipeId);
    const net = recipe && netOfRecipe(recipe);
    return recipe && net ? [{ line, recipe, net, paper: nameOf(rows.papers, line.paperId) }] : [];
  });
  const steps = [
    ...plan.papers.map(
      ({ paperId, name, plan: { sheets, layouts } }): RunStep => ({
        id: cutStep(paperId),
        act: 'cut',
        lineId: null,
        recipeId: null,
        name,
        paper: null,
        piece: null,
        unit: 'sheet',
        of: sheets,
        work: { do: 'sheets', layouts: layouts.length },
      }),
    ),
    ...lines.flatMap((line) => [
      ...stepsOfCards(line, bench),
      ...stepsOfDressing(line, rows.supplies, bench),
    ]),
  ];
  return { firsts: lines.map(firstOf), steps: ORDER.flatMap((act) => inOrder(act, steps)) };
}

interface LineAtBench {
  readonly line: PlannedLine;
  readonly recipe: Recipe;
  readonly net: BoxNet;
  readonly paper: string | null;
}

const nameOf = (papers: readonly Paper[], paperId: string | null): string | null =>
  papers.find(({ id }) => id === paperId)?.name ?? null;

/** Of the scores, all that share a setting of the fence stand together; every setting is made once. */
function inOrder(act: HandAct, steps: readonly RunStep[]): RunStep[] {
  const mine = steps.filter((step) => step.act === act);
  if (act !== 'score') return mine;
  const fence = (step: RunStep) => (step.work.do === 'fence' ? step.work.at : Number.POSITIVE_INFINITY);
  return mine.toSorted((a, b) => (fence(a) === fence(b) ? 0 : fence(a) - fence(b)));
}

function firstOf({ line, recipe, net, paper }: LineAtBench): FirstBox {
  const blanks = net.pieces.map(({ label, blank: { across, up } }) => ({ label, size: { across, up } }));
  const { inside } = net;
  return {
    lineId: line.lineId,
    recipeId: recipe.id,
    name: recipe.name,
    paper,
    blanks,
    inside,
    outside: outsideSize(net),
  };
}

const stepsOfCards = (at: LineAtBench, tool: BenchTool): RunStep[] =>
  boxCards(at.net, tool, { faceUp: at.recipe.faceUp }).flatMap((card) => stepsOfCard(at, card, tool));

function stepsOfCard({ line, recipe, paper }: LineAtBench, card: BoxCard, tool: BenchTool): RunStep[] {
  const { piece, program, steps, joins } = card;
  const step = (act: HandAct, place: number, work: RunWork): RunStep => ({
    id: `${line.lineId}/${act}/${piece.id.toLowerCase()}/${place}`,
    act,
    lineId: line.lineId,
    recipeId: recipe.id,
    name: recipe.name,
    paper,
    piece: piece.id.toLowerCase(),
    unit: joins ? 'box' : 'piece',
    of: line.making,
    work,
  });
  const settings = new Map<string, FenceScore>();
  const loose: CardStep[] = [];
  for (const stop of steps.filter(({ kind }) => kind === 'score')) {
    const ops = program.ops.slice(stop.ops.from, stop.ops.to);
    const straight = ops.flatMap((op) => (op.op === 'score' ? [op] : []));
    if (tool.kind !== 'fence' || straight.length === 0) loose.push(stop);
    else
      for (const { at, span } of straight) {
        const key = `${at} ${stop.lie.quarters} ${stop.lie.mirrored}`;
        const spans = [...(settings.get(key)?.spans ?? []), span];
        settings.set(key, {
          do: 'fence',
          pieceId: piece.id,
          pieceLabel: piece.label,
          at,
          spans,
          lies: cardLies(piece, stop.lie, tool),
          lie: stop.lie,
          size: sizeAsItLies(piece.blank, stop.lie),
        });
      }
  }
  return [
    ...[...settings.values()].map((score, i) => step('score', i + 1, score)),
    ...loose.map((stop, i) => step('score', settings.size + i + 1, flatWork(piece, stop, program.ops, tool))),
    ...stageCard(steps, program.ops, piece, tool).map(({ act, place, work }) => step(act, place, work)),
  ];
}

function stepsOfDressing(
  { line, recipe, net, paper }: LineAtBench,
  supplies: readonly Supply[],
  tool: BenchTool,
): RunStep[] {
  const dressing = recipe.dressings.find(({ id }) => id === line.dressingId);
  if (!dressing) return [];
  const fills = (supplyId: string | null) =>
    supplies.some(({ id, kind }) => id === supplyId && (kind === 'contents' || kind === 'wrap'));
  const counted = dressing.counted ?? [];
  const step = (act: HandAct, key: string, work: RunWork): RunStep => ({
    id: `${line.lineId}/${act}/${key}`,
    act,
    lineId: line.lineId,
    recipeId: recipe.id,
    name: recipe.name,
    paper,
    piece: null,
    unit: 'box',
    of: line.making,
    work,
  });
  const put = counted.filter(({ supplyId }) => fills(supplyId));
  return [
    ...dressing.pieces.map((piece) => {
      const mark = cutMarkOf(tool);
      const size = fitPiece(net, piece, mark);
      const cuts = size === null ? [] : insertCuts(net, piece, size, mark);
      return step('place', piece.id, { do: 'place', name: piece.name, perBox: piece.perBox, size, cuts });
    }),
    ...counted
      .filter(({ supplyId }) => !fills(supplyId))
      .map(({ id, name, perBox }) => step('place', id, { do: 'place', name, perBox, size: null, cuts: [] })),
    ...(put.length > 0 ? [step('fill', 'all', { do: 'fill', things: put })] : []),
    // ribbon for a pull goes in with the card
    ...(dressing.ties ?? [])
      .filter(({ wrap }) => wrap !== 'pull')
      .map((tie) => {
        const length = markAbove(tieLength(outsideSize(net), tie), cutMarkOf(tool));
        return step('tie-bow', tie.id, { do: 'tie', name: tie.name, perBox: tie.perBox, length });
      }),
  ];
}
