import { type At, readLength, type Unit, Unreadable } from './lengths';
import { plain } from './plain-figures';

/** A picture as it is printed: strokes and words on paper, mm, y up. What a stroke means is its ink. */
export interface Picture {
  readonly marks: readonly PictureMark[];
}

interface PictureMark {
  readonly kind: string;
  readonly ink?: string;
  readonly text?: string;
  readonly at?: At;
  readonly points?: readonly At[];
  readonly centre?: At;
  readonly radius?: number;
  readonly fromDeg?: number;
  readonly sweepDeg?: number;
}

/** A number beside a drawing: the mark it names, and to which side of it the truth lies. */
export interface DrawnNumber {
  /** Where on paper it points at, along its edge. */
  readonly place: number;
  /** In 320ths of a millimeter. */
  readonly mark: number;
  readonly lean: 'full' | 'scant' | null;
  readonly text: string;
}

const NUMBER = /^[\d. ½¼¾⅛⅜⅝⅞⁰¹²³⁴⁵⁶⁷⁸⁹⁄₀₁₂₃₄₅₆₇₈₉]+$/;
const LEAN = /^(full|scant)\b/;

const strokes = ({ marks }: Picture, ...inks: readonly string[]): (readonly At[])[] =>
  marks.flatMap(({ kind, ink = '', points }) =>
    kind === 'line' && points && inks.includes(ink) ? [points] : [],
  );

const words = ({ marks }: Picture) =>
  marks.flatMap(({ kind, text, at }) => (kind === 'text' && text !== undefined && at ? [{ text, at }] : []));

/** The numbers above a drawing (or left of it), each by its leader: the leader's foot points at the card, its other end at the number. */
export function numbersAlong(picture: Picture, edge: 'top' | 'left', unit: Unit): DrawnNumber[] {
  const [along, out] = edge === 'top' ? ([0, 1] as const) : ([1, 0] as const);
  const beyond = (at: At, end: At) => (edge === 'top' ? at[out] > end[out] - 0.5 : at[out] < end[out] + 0.5);
  const leaders = strokes(picture, 'dimension').flatMap((points) => {
    const [foot, elbow, end] = points as [At, At, At];
    return points.length === 3 && foot[along] === elbow[along] ? [{ foot, end }] : [];
  });
  const given = leaders.map(() => ({ number: [] as string[], lean: [] as string[] }));
  for (const { text, at } of words(picture)) {
    const isLean = LEAN.test(text);
    if (!isLean && !NUMBER.test(text)) continue;
    const far = (end: At) => (beyond(at, end) ? Math.abs(at[along] - end[along]) : Number.POSITIVE_INFINITY);
    const nearest = leaders.map(({ end }) => far(end));
    const least = Math.min(...nearest);
    if (least > 4) continue;
    given[nearest.indexOf(least)]?.[isLean ? 'lean' : 'number'].push(text);
  }
  return leaders.map(({ foot }, i) => {
    const { number, lean } = given[i] ?? { number: [], lean: [] };
    const [text] = number;
    if (text === undefined || number.length > 1 || lean.length > 1)
      throw new Unreadable(`a leader with ${[...number, ...lean].join(' and ') || 'no number'}`);
    const [leaning = null] = lean.flatMap((said) => LEAN.exec(said)?.[1] ?? []);
    return {
      place: foot[along],
      mark: readLength(plain(text), unit),
      lean: leaning as DrawnNumber['lean'],
      text,
    };
  });
}

/** Lengths written on dimension lines: the ends of the line on paper, and the number in its middle. */
export function dimensions(picture: Picture, unit: Unit) {
  const numbers = words(picture).flatMap(({ text, at }) => {
    const [, lean = null, number] = /^(?:(full|scant) )?(.+?)(?: (?:in|mm))$/.exec(text) ?? [];
    return number !== undefined && NUMBER.test(number) ? [{ lean, number, at }] : [];
  });
  return numbers.map(({ lean, number }) => ({
    mark: readLength(plain(number), unit),
    lean: lean as DrawnNumber['lean'],
    text: number,
  }));
}

/** In 320ths of a millimeter: no eye tells 1/80 mm. */
export const UNSEEN = 4;

/** Could this length be what a number names? A lean is within 1/32 in or 1 mm. */
export function names(
  { mark, lean }: Pick<DrawnNumber, 'mark' | 'lean'>,
  length: number,
  unit: Unit,
): boolean {
  const past = length - mark;
  if (lean === null) return Math.abs(past) <= UNSEEN;
  return (lean === 'full' ? past > 0 : past < 0) && Math.abs(past) <= (unit === 'in' ? 254 : 320);
}

const SEEN: Readonly<Record<string, string>> = {
  cut: 'outline',
  edge: 'outline',
  slit: 'slit',
  'score-valley': 'towards you',
  'score-mountain': 'away from you',
  'score-flat': 'flat',
};

export interface DrawnLine {
  readonly a: At;
  readonly b: At;
  readonly work: string;
}

/** The straight lines of a drawn net, on paper; the bars that end a slit are left aside. */
export function linesOf(picture: Picture): DrawnLine[] {
  const lines = Object.entries(SEEN).flatMap(([ink, work]) =>
    strokes(picture, ink).flatMap((points): DrawnLine[] => {
      const [a, b] = points;
      return a && b && points.length === 2 ? [{ a, b, work }] : [];
    }),
  );
  const isBar = ({ a, b, work }: DrawnLine): boolean =>
    work === 'slit' &&
    Math.hypot(a[0] - b[0], a[1] - b[1]) < 2.3 &&
    lines.some(
      (other) =>
        other.work === 'slit' &&
        [other.a, other.b].some(([x, y]) => Math.hypot((a[0] + b[0]) / 2 - x, (a[1] + b[1]) / 2 - y) < 0.001),
    );
  return lines.filter((line) => !isBar(line));
}

/** Where the curves of a drawn net begin and end, on paper. */
export const curveEnds = ({ marks }: Picture): At[] =>
  marks.flatMap(({ ink = '', centre, radius = 0, fromDeg = 0, sweepDeg = 0 }): At[] => {
    if (!centre || !(ink in SEEN)) return [];
    return [fromDeg, fromDeg + sweepDeg].map((deg) => [
      centre[0] + radius * Math.cos((deg * Math.PI) / 180),
      centre[1] + radius * Math.sin((deg * Math.PI) / 180),
    ]);
  });
