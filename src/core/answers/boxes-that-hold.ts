import { checkBox, type Finding } from '../checks';
import { leastCrossing } from '../checks/check-item-room';
import { SLACK } from '../checks/settle-item';
import {
  type EasyCandidate,
  type EasyRow,
  easyCandidates,
  type MarkTool,
  type NeededRoom,
  openingOf,
  passesOpening,
  protrusionsOf,
  type YieldMemo,
} from '../fit';
import { asItStands, type BoxNet, begunNew, newOptions } from '../net';
import { CHORD_TOLERANCE_MM } from '../net/arc';
import { benchToolOf, cuttingToolOf, sheetOfPaper } from '../plan';
import type { Contents, Tool } from '../rows';
import { ticksOfMm } from '../rows/lengths';
import { type BoxStyle, defaultChoices } from '../styles';
import { LONGEST_LENGTH, type Ruler, ticks, USUAL_FINEST } from '../units';
import type { AnswersQuestion, NoAnswer } from './types';

/** A saved tool as what marks are set on; without one, a ruler of any length. */
export const markToolOf = (tool: Tool | undefined, ruler: Ruler): MarkTool => ({
  ruler,
  reach: tool ? ticksOfMm(tool.reachMm) : LONGEST_LENGTH,
  grooves: tool?.kind === 'grooves' && tool.groovesMm?.length ? tool.groovesMm.map(ticksOfMm) : undefined,
  stylus: tool?.stylusMm === undefined ? undefined : ticksOfMm(tool.stylusMm),
});

/** The marks of the tool in the question, or the usual ones. */
export const rulerOfQuestion = ({ tool, unit }: Pick<AnswersQuestion, 'tool' | 'unit'>): Ruler =>
  tool ? { unit: tool.unit, finest: ticksOfMm(tool.finestMarkMm) } : { unit, finest: USUAL_FINEST[unit] };

/** Sizes of a style, the room they were looked for with, and the box laid. */
export interface TriedBox {
  readonly style: BoxStyle;
  readonly row: EasyRow;
  readonly arrangement: number;
  readonly net: BoxNet;
  /** None of them stops it. */
  readonly findings: readonly Finding[];
}

/** How many ways the contents may lie are tried. source: our choice, as in `fitContents` */
const ROOMS_TRIED = 3;
/** Rows looked at before a style is said not to hold. source: our choice; each is a check of some milliseconds */
const ROWS_LOOKED_AT = 4;

/** First as the style is usually made, with a quarter of an inch to spare; only then every construction, with half an inch. source: our choice */
const attemptsFor = (style: BoxStyle, unit: Ruler['unit']) => [
  {
    heldOptions: { ...defaultChoices(style), ...newOptions(style) },
    slack: unit === 'in' ? ticks(2032) : ticks(1920),
  },
  { heldOptions: {}, slack: unit === 'in' ? ticks(4064) : ticks(3840) },
];

/**
 * The easiest box of a style that holds the contents and is cut from the paper, and the one of least paper where that is another.
 * "Easiest" and "least paper" are exact among the rows of `findEasyMarks`.
 */
export function boxesThatHold(
  saved: BoxStyle,
  rooms: readonly NeededRoom[],
  question: AnswersQuestion,
  memo: YieldMemo,
): { readonly boxes: readonly TriedBox[]; readonly none: NoAnswer | null } {
  const ruler = rulerOfQuestion(question);
  const style = begunNew(saved);
  let none: NoAnswer = 'size';
  for (const attempt of attemptsFor(style, ruler.unit)) {
    const asked = {
      ...markToolOf(question.tool, ruler),
      ...attempt,
      style,
      caliperUm: question.paper.caliperUm,
      held: {},
      paper: sheetOfPaper(question.paper),
      tool: cuttingToolOf(question.tool),
    };
    const found = rooms
      .slice(0, ROOMS_TRIED)
      .flatMap((room, arrangement) =>
        easyCandidates({ ...asked, need: room.inside }, memo).map((row) => ({ row, room, arrangement })),
      );
    if (found.length === 0) continue;
    const onSheet = found.filter(({ row }) => row.sheetsPerBox !== null);
    none = onSheet.length === 0 ? 'sheet' : 'hold';
    const byEase = onSheet.toSorted((a, b) => compareKeys(easeOf(a.row), easeOf(b.row)));
    const byPaper = onSheet.toSorted((a, b) => compareKeys(paperOf(a.row), paperOf(b.row)));
    const tried = new Map<EasyCandidate, TriedBox | null>();
    const firstThatHolds = (tries: typeof found) => {
      for (const { row, room, arrangement } of tries.slice(0, ROWS_LOOKED_AT)) {
        const known = tried.get(row);
        const box = known === undefined ? tryBox(row, { style, arrangement }, room, question) : known;
        tried.set(row, box);
        if (box) return box;
      }
      return null;
    };
    const boxes = [firstThatHolds(byEase), firstThatHolds(byPaper)].filter((box) => box !== null);
    if (boxes.length > 0) return { boxes: [...new Set(boxes)], none: null };
  }
  return { boxes: [], none };
}

function tryBox(
  candidate: EasyCandidate,
  tried: Pick<TriedBox, 'style' | 'arrangement'>,
  { arrangement }: NeededRoom,
  { contents, tool }: AnswersQuestion,
): TriedBox | null {
  const laid = candidate.lay();
  if (!laid || !holds(tried.style, laid.net, contents, arrangement)) return null;
  const findings = checkBox(tried.style, laid.net, tool && benchToolOf(tool));
  return findings.some(({ severity }) => severity === 'stop') ? null : { ...tried, ...laid, findings };
}

/** Whether the contents go in through the opening, lie in the closed box without running into card, and stay in. */
function holds(
  style: BoxStyle,
  net: BoxNet,
  contents: Contents,
  arrangement: NeededRoom['arrangement'],
): boolean {
  if (!passesOpening(arrangement, openingOf(style, net))) return false;
  if (protrusionsOf(contents, style, net).length > 0) return false;
  if (style.pocket) return liesWithin(arrangement.size, net);
  const piece = asItStands(net).find(({ shell }) => shell.length > 0);
  if (piece === undefined) return false;
  const bent = piece.hinges.some(({ kind }) => kind === 'join') ? CHORD_TOLERANCE_MM : 0;
  return leastCrossing(piece, net.caliperUm / 1000, arrangement.size) <= SLACK + bent;
}

const AXES = ['width', 'depth', 'height'] as const;

/** Whether it is no larger than the room that a flat pocket says it has, as it lies. */
const liesWithin = (sizeMm: readonly [number, number, number], { inside }: BoxNet): boolean =>
  AXES.every((axis, at) => ticksOfMm(sizeMm[at] ?? 0) <= inside[axis]);

type Ease = Pick<EasyCandidate, 'roughness' | 'handling' | 'byTemplate' | 'sheetsPerBox' | 'excess'>;

/** How hard the marks of a row are: their fineness, every setting and edge of the fence, and what no ruler sets; then paper, then room to spare. */
export const easeOf = (row: Ease): readonly number[] => [
  row.roughness + row.handling + TEMPLATE_LINE * row.byTemplate,
  row.sheetsPerBox ?? 0,
  row.excess,
];

/** A line drawn round a template is as fiddly as a mark of 1/16 in. source: our choice */
export const TEMPLATE_LINE = 4;

const paperOf = (row: EasyCandidate): readonly number[] => [
  row.sheetsPerBox ?? 0,
  areaOf(row),
  ...easeOf(row),
];

/** Card of one box, cut out as rectangles. */
export const areaOf = ({ blanks }: Pick<EasyRow, 'blanks'>): number =>
  blanks.reduce((sum, { across, up }) => sum + across * up, 0);

/** Less than 0 where the first list is smaller; the first number that differs decides. */
export function compareKeys(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, place) => value !== b[place]);
  return at < 0 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
}
