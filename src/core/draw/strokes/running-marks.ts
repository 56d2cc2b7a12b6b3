import type { At } from '../../plane';
import type { Ruler } from '../../units';
import { type Ticks, toMm } from '../../units/ticks';
import { lengthText } from './length-text';
import { CAP_HEIGHT, textWidthMm } from './letters';
import { lineMark, textMark } from './marks';
import { type SpreadLabel, spreadLabels } from './spread';
import type { Mark } from './types';

/** A number along an edge of the card: how far from its zero, and which row it lights. */
export interface RunningMark {
  readonly distance: Ticks;
  readonly key: string;
  /** Lines are set by this number; a lesser one only says where a line ends. */
  readonly leading: boolean;
}

export interface RunningStyle {
  readonly ruler: Ruler;
  /** Type size of the biggest numbers: those on the tool's own marks. */
  readonly textMm: number;
  readonly otherUnit: boolean;
}

/** How an axis runs on paper: from its zero, `along` it, with numbers put `out` from the edge of the card. Unit vectors. */
interface Axis {
  readonly zero: At;
  readonly along: At;
  readonly out: At;
  readonly lengthMm: number;
  readonly scale: number;
}

const CLEAR = 1.2; // between the card and its extension lines, mm on paper
const RULE = 3.4; // from the card to the dimension line
const ELBOW = 6; // where a leader starts to lean towards its number
const FOOT = 9.5; // where the number stands
const BETWEEN = 2.2; // least space between two numbers
const CORNER = 4; // how far a zero may slip towards that of the other axis

/** Numbers above the card, counted from its left edge. Never touching: they spread, and stand upright where it is crowded. */
export const marksAbove = (
  marks: readonly RunningMark[],
  topLeft: At,
  lengthMm: number,
  scale: number,
  style: RunningStyle,
): Mark[] => runningMarks(marks, { zero: topLeft, along: [1, 0], out: [0, 1], lengthMm, scale }, style);

/** The same counted from the right edge, for a fence that stands there. */
export const marksAboveFromRight = (
  marks: readonly RunningMark[],
  topRight: At,
  lengthMm: number,
  scale: number,
  style: RunningStyle,
): Mark[] => runningMarks(marks, { zero: topRight, along: [-1, 0], out: [0, 1], lengthMm, scale }, style);

/** Numbers left of the card, counted down from its top edge. */
export const marksBeside = (
  marks: readonly RunningMark[],
  topLeft: At,
  lengthMm: number,
  scale: number,
  style: RunningStyle,
): Mark[] => runningMarks(marks, { zero: topLeft, along: [0, -1], out: [-1, 0], lengthMm, scale }, style);

function runningMarks(marks: readonly RunningMark[], axis: Axis, style: RunningStyle): Mark[] {
  const sorted = [...marks].sort((p, q) => p.distance - q.distance);
  const at = sorted.map(({ distance }) => toMm(distance) * axis.scale);
  const layouts = LAYOUTS[axis.along[1] === 0 ? 'above' : 'beside'];
  const room = axis.lengthMm + 2 * style.textMm;
  const labels = layouts
    .map((layout) => sorted.map((mark) => layout(mark, style)))
    .find((tried, i) => i === layouts.length - 1 || total(tried) <= room)!;
  const wished = [
    { at: 0, size: LESSER * style.textMm },
    ...labels.map(({ size }, i) => ({ at: at[i]!, size })),
  ];
  const [zeroPlace = 0, ...places] = fromCorner(spreadLabels(wished, BETWEEN), wished);
  const point = (along: number, out: number): At => [
    axis.zero[0] + along * axis.along[0] + out * axis.out[0],
    axis.zero[1] + along * axis.along[1] + out * axis.out[1],
  ];
  return [
    ...zeroAndRule(axis, style, zeroPlace, point),
    ...sorted.flatMap(({ key }, i) => [
      lineMark('dimension', [point(at[i]!, CLEAR), point(at[i]!, ELBOW), point(places[i]!, FOOT - 1)], key),
      lineMark('dimension', [point(at[i]! - 0.9, RULE - 0.9), point(at[i]! + 0.9, RULE + 0.9)], key),
      ...labels[i]!.draw(point(places[i]!, FOOT), key),
    ]),
  ];
}

/** Places no nearer the corner than where the other axis may have its own zero; what that pushes on keeps its distance. */
function fromCorner(places: readonly number[], labels: readonly SpreadLabel[]): number[] {
  let least = -CORNER;
  return places.map((place, i) => {
    const kept = Math.max(place, least);
    least = kept + (labels[i]!.size + (labels[i + 1]?.size ?? 0)) / 2 + BETWEEN;
    return kept;
  });
}

const total = (labels: readonly Label[]) => labels.reduce((sum, { size }) => sum + size + BETWEEN, 0);

function zeroAndRule(
  axis: Axis,
  style: RunningStyle,
  place: number,
  point: (along: number, out: number) => At,
): Mark[] {
  const sizeMm = LESSER * style.textMm;
  const above = axis.along[1] === 0;
  const [x, y] = point(place, FOOT);
  return [
    lineMark('dimension', [point(0, RULE), point(axis.lengthMm, RULE)]),
    lineMark('dimension', [point(0, CLEAR), point(0, ELBOW), point(place, FOOT - 1)]),
    { kind: 'arc', ink: 'dimension', centre: point(0, RULE), radius: 0.9, fromDeg: 0, sweepDeg: 360 },
    above
      ? textMark('0', [x, y], sizeMm, { anchor: 'middle' })
      : textMark('0', [x, y - (CAP_HEIGHT * sizeMm) / 2], sizeMm, { anchor: 'end' }),
  ];
}

/** A number laid out: the room it takes along the axis, and its text marks once its foot is known. */
interface Label {
  readonly size: number;
  readonly draw: (foot: At, key: string) => Mark[];
}

type LabelLayout = (mark: RunningMark, style: RunningStyle) => Label;

/** Type size of a number that only says where a line ends, and of the other unit, over the biggest. */
export const LESSER = 0.65;
const OFF_MARK = 0.82;

function wordsOf({ distance, leading }: RunningMark, { ruler, textMm, otherUnit }: RunningStyle) {
  const { number, below, onMark } = lengthText(distance, ruler);
  const sizeMm = textMm * (!leading ? LESSER : onMark ? 1 : OFF_MARK);
  const lean = onMark ? '' : below.split(',')[0]!;
  return {
    number,
    sizeMm,
    bold: leading && onMark,
    below: otherUnit && leading ? below : lean,
    belowMm: LESSER * textMm,
  };
}

/** Number over the other unit, both level. */
const stackedAbove: LabelLayout = (mark, style) => {
  const { number, sizeMm, bold, below, belowMm } = wordsOf(mark, style);
  return {
    size: Math.max(textWidthMm(number, sizeMm, bold), textWidthMm(below, belowMm)),
    draw: ([x, y], key) => [
      ...(below ? [textMark(below, [x, y], belowMm, { anchor: 'middle', key })] : []),
      textMark(number, [x, y + (below ? 1.25 * belowMm : 0)], sizeMm, { anchor: 'middle', bold, key }),
    ],
  };
};

/** One line standing upright, read from the right. */
const turnedAbove: LabelLayout = (mark, style) => {
  const { number, sizeMm, bold, below, belowMm } = wordsOf(mark, style);
  return {
    size: CAP_HEIGHT * sizeMm,
    draw: ([x, y], key) => {
      const foot = x + (CAP_HEIGHT * sizeMm) / 2;
      const after = y + textWidthMm(`${number} `, sizeMm, bold);
      return [
        textMark(number, [foot, y], sizeMm, { bold, turnDeg: 90, key }),
        ...(below ? [textMark(below, [foot, after], belowMm, { turnDeg: 90, key })] : []),
      ];
    },
  };
};

/** Number over the other unit, ending at the leader. */
const stackedBeside: LabelLayout = (mark, style) => {
  const { number, sizeMm, bold, below, belowMm } = wordsOf(mark, style);
  const height = CAP_HEIGHT * sizeMm + (below ? 1.25 * belowMm : 0);
  return {
    size: height,
    draw: ([x, y], key) => [
      textMark(number, [x, y + height / 2 - CAP_HEIGHT * sizeMm], sizeMm, { anchor: 'end', bold, key }),
      ...(below ? [textMark(below, [x, y - height / 2], belowMm, { anchor: 'end', key })] : []),
    ],
  };
};

/** The other unit before the number, on one line. */
const rowBeside: LabelLayout = (mark, style) => {
  const { number, sizeMm, bold, below, belowMm } = wordsOf(mark, style);
  return {
    size: CAP_HEIGHT * sizeMm,
    draw: ([x, y], key) => {
      const foot = y - (CAP_HEIGHT * sizeMm) / 2;
      const before = x - textWidthMm(` ${number}`, sizeMm, bold);
      return [
        textMark(number, [x, foot], sizeMm, { anchor: 'end', bold, key }),
        ...(below ? [textMark(below, [before, foot], belowMm, { anchor: 'end', key })] : []),
      ];
    },
  };
};

const LAYOUTS = { above: [stackedAbove, turnedAbove], beside: [stackedBeside, rowBeside] } as const;
