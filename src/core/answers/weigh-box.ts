import { bottomPlate, costOfRow, estimateBottom, gramsOf, type NeededRoom } from '../fit';
import { asItStands, type BoxNet, layNet } from '../net';
import { groupLayers } from '../net/group-layers';
import { benchToolOf, planEvent, type SheetPlanner } from '../plan';
import { meritsOf } from '../plan/event/style-facts';
import type { FavorEvent, Recipe } from '../rows';
import { mmOfTicks } from '../rows/lengths';
import type { BoxStyle } from '../styles';
import { areaOf, easeOf, rulerOfQuestion, TEMPLATE_LINE, type TriedBox } from './boxes-that-hold';
import type { Answer, AnswersQuestion, Closing } from './types';

/** What a recipe keeps of an answer. */
export type AnswerRecipe = Pick<
  Recipe,
  'styleId' | 'sizesMm' | 'options' | 'caliperUm' | 'grain' | 'contents' | 'markMm'
>;

/** The answer as a recipe: its style and sizes, the contents and how they lie, the paper’s thickness, the tool’s marks. */
export function recipeOfAnswer(
  { styleId, sizes, options, arrangement }: Pick<Answer, 'styleId' | 'sizes' | 'options' | 'arrangement'>,
  question: AnswersQuestion,
): AnswerRecipe {
  const { finest } = rulerOfQuestion(question);
  return {
    styleId,
    sizesMm: Object.fromEntries(
      Object.entries(sizes).flatMap(([name, size]) => (size > 0 ? [[name, mmOfTicks(size)]] : [])),
    ),
    options,
    caliperUm: question.paper.caliperUm,
    // Grain is a wish, not a must: a first box should fit the sheet they have. The Box page has the choice.
    grain: 'free',
    contents: { ...question.contents, arrangement },
    markMm: mmOfTicks(finest),
  };
}

const STAMP = { rev: 0, createdAt: '2000-01-01T00:00:00.000Z', changedAt: '2000-01-01T00:00:00.000Z' };

/** Everything said of a box: what the whole order takes, by the plan that the workbook will show, and its place by each rank. */
export function weighBox(
  { style, row, arrangement, net, findings }: TriedBox,
  rooms: readonly NeededRoom[],
  question: AnswersQuestion,
  planSheets?: SheetPlanner,
): Answer | null {
  const { paper, tool, favors, spares, currency } = question;
  const sized = { styleId: style.id, sizes: row.sizes, options: row.options, arrangement };
  const recipe: Recipe = {
    ...STAMP,
    id: 'box',
    name: style.name,
    paperId: paper.id,
    faceUp: 'outside',
    dressings: [],
    notes: '',
    ...recipeOfAnswer(sized, question),
  };
  const event: FavorEvent = {
    ...STAMP,
    id: 'order',
    name: style.name,
    date: null,
    lines: [{ id: 'box', recipeId: 'box', dressingId: null, paperId: null, count: favors }],
    spares,
    tapeId: null,
    currency,
    notes: '',
  };
  const rows = {
    recipes: [recipe],
    events: [event],
    papers: [paper],
    supplies: [],
    tools: tool ? [tool] : [],
  };
  const plan = planEvent(rows, event.id, planSheets && { planSheets });
  const sheets = plan?.papers[0]?.plan;
  if (!plan || !sheets || sheets.unplaced.length > 0) return null;
  const bench = benchToolOf(tool);
  const minutes = plan.hours.totalSeconds / 60;
  const glued = asItStands(net).reduce((sum, { joints }) => sum + joints.length, 0);
  const [marks = 0, ...alike] = easeOf({ ...row, handling: row.settings + row.edges });
  const closing = closingOf(style, net);
  const merits = meritsOf(style, net.pieces, bench, row.sheetsPerBox);
  return {
    ...sized,
    inside: row.inside,
    fiddliness: row.roughness,
    row: costOfRow(row, rooms[arrangement]?.inside ?? row.inside),
    byTemplate: row.byTemplate,
    glued,
    sheets: { count: sheets.sheets, atLeast: sheets.lowerBound, proven: sheets.proven },
    costMinor: plan.cost.unpriced.length > 0 ? null : plan.cost.using.totalMinor,
    minutes,
    closing,
    // A style that usually has a lid may be made without.
    merits: [...merits].filter((merit) => merit !== 'lid' || closing !== 'open'),
    warnings: findings.filter(({ severity }) => severity === 'warn'),
    keys: {
      easiest: [marks + glued + slantedWork(net), ...alike],
      'least-paper': [sheets.sheets, areaOf(row)],
      quickest: [minutes],
      sturdiest: [...sturdinessOf(net, question), areaOf(row)],
      fanciest: [-fancyPanels(net), -net.pieces.length],
    },
  };
}

/** How the box is shut at the end, read off its net. */
function closingOf(style: BoxStyle, net: BoxNet): Closing {
  const ids = net.pieces.map(({ id }) => id);
  if (ids.includes('sleeve')) return 'sleeve';
  if (ids.includes('lid')) return 'lid';
  const pieces = asItStands(net);
  if (pieces.some(({ closing }) => closing.some((act) => act.do === 'tuck'))) return 'tuck';
  if (isCovered(net)) return 'folds';
  // Walls that meet at the top close it by themselves; a style whose usual flaps were left off stays open.
  const usual = layNet(style, { sizes: {}, caliperUm: net.caliperUm });
  return style.traits.includes('lid') && !isCovered(usual) ? 'folds' : 'open';
}

const COVERS: readonly string[] = ['lid', 'roof', 'endFlap', 'cover'];
const isCovered = (net: BoxNet): boolean =>
  asItStands(net).some(({ faces }) => faces.some(({ role }) => COVERS.includes(role)));

/** A slanted line is set by two points, a curved one by a template. */
function slantedWork({ pieces }: BoxNet): number {
  const slanted = pieces.flatMap(({ edges }) =>
    edges.filter(({ kind, a, b }) => (kind === 'score' || kind === 'slit') && a.x !== b.x && a.y !== b.y),
  );
  const curves = pieces.reduce((sum, piece) => sum + piece.curves.length, 0);
  return 2 * slanted.length + TEMPLATE_LINE * curves;
}

/**
 * Sturdiest first: a bottom that carries as one plate before one that does not, then less sag of the bottom by the usual estimate (one gram where nothing was weighed: the
 * order is the same), then more panels that lie on another. Never a load.
 */
function sturdinessOf(net: BoxNet, { contents }: AnswersQuestion): readonly number[] {
  const card = { caliperUm: net.caliperUm, modulusGpa: null };
  const { sag } = estimateBottom(bottomPlate(net), card, gramsOf(contents) || 1);
  const doubled = asItStands(net).reduce(
    (sum, piece) =>
      sum +
      piece.joints.length +
      piece.overlaps.reduce((more, group) => more + groupLayers(piece, group).length - 1, 0),
    0,
  );
  return [sag === null ? 1 : 0, sag?.mm ?? 0, -doubled];
}

/** Panels that a plain box has not: roofs, gussets, handles and ends that curve, and whatever hinges on a slanted or bent line. */
function fancyPanels(net: BoxNet): number {
  const fancy = new Set<string>();
  for (const piece of asItStands(net))
    for (const { a, b, left, right, kind } of piece.edges) {
      if (kind === 'cut' || kind === 'slit') continue;
      const slanted = a.x !== b.x && a.y !== b.y;
      for (const at of [left, right]) {
        const face = at === null ? undefined : piece.faces[at];
        if (!face || face.role === 'glueTab') continue;
        const odd = FANCY.includes(face.role) || slanted || kind === 'join';
        if (odd) fancy.add(`${piece.id} ${face.panel}`);
      }
    }
  return fancy.size;
}

const FANCY: readonly string[] = ['roof', 'gusset', 'handle', 'endFlap', 'hangTab'];
