import { type Lie, placeAtBench } from '../../bench';
import type { Blank, Curve, NetEdge, PieceNet, Point } from '../../net/types';
import { ticks } from '../../units/ticks';
import type { Ink } from '../strokes/types';

/** Which face of the card lies up at the bench. */
export type FaceUp = 'inside' | 'outside';

type LineInk = Extract<Ink, 'edge' | 'cut' | 'score-valley' | 'score-mountain' | 'score-flat' | 'slit'>;

/** One line as a hand makes it: every edge that lies end to end on it, of one ink. Ticks, in the frame of the face that lies up. */
export interface NetLine {
  /** The line's ends in the net's own frame, inside up: the same whichever face lies up. */
  readonly key: string;
  readonly ink: LineInk;
  readonly way: 'upright' | 'level' | 'slanted' | 'curved';
  /** The left, then lower, end first. */
  readonly a: Point;
  readonly b: Point;
  readonly curve: Curve | null;
}

/** Every line of a piece that is cut, scored, slit or the card's own edge; modelling lines are left out. */
export function linesOfNet(piece: PieceNet, lie: Lie): NetLine[] {
  const edges = piece.edges.filter((edge) => edge.kind !== 'join');
  const straight = edges.filter((edge) => edge.curve === null);
  const lines = [...mergeStraight(straight), ...curvedLines(piece, edges)];
  return lines.map((line) => lineAsItLies(line, piece.blank, lie));
}

function inkOf({ kind, foldDeg }: NetEdge): LineInk {
  if (kind === 'score') return foldDeg > 0 ? 'score-valley' : foldDeg < 0 ? 'score-mountain' : 'score-flat';
  return kind === 'cut' || kind === 'slit' ? kind : 'edge';
}

function wayOf(a: Point, b: Point): NetLine['way'] {
  return a.x === b.x ? 'upright' : a.y === b.y ? 'level' : 'slanted';
}

const keyOf = (a: Point, b: Point, bow = '') => `line ${a.x},${a.y} ${b.x},${b.y}${bow}`;

/** Along the line's own direction, so that collinear edges of one ink can be joined. Exact: all whole numbers. */
function mergeStraight(edges: readonly NetEdge[]): NetLine[] {
  const groups = new Map<string, { ink: LineInk; spans: { from: Point; to: Point }[] }>();
  for (const edge of edges) {
    const [from, to] = inOrder(edge.a, edge.b);
    const [dx, dy] = reduced(to.x - from.x, to.y - from.y);
    const name = `${inkOf(edge)} ${dx} ${dy} ${dx * from.y - dy * from.x}`;
    const group = groups.get(name) ?? { ink: inkOf(edge), spans: [] };
    group.spans.push({ from, to });
    groups.set(name, group);
  }
  return [...groups.values()].flatMap(({ ink, spans }) =>
    joinSpans(spans).map(({ from, to }) => ({
      key: keyOf(from, to),
      ink,
      way: wayOf(from, to),
      a: from,
      b: to,
      curve: null,
    })),
  );
}

function joinSpans(spans: readonly { from: Point; to: Point }[]) {
  const joined: { from: Point; to: Point }[] = [];
  for (const span of [...spans].sort((p, q) => compare(p.from, q.from))) {
    const last = joined.at(-1);
    if (!last || compare(span.from, last.to) > 0) joined.push({ ...span });
    else if (compare(span.to, last.to) > 0) last.to = span.to;
  }
  return joined;
}

function curvedLines(piece: PieceNet, edges: readonly NetEdge[]): NetLine[] {
  return piece.curves.flatMap((curve, index) => {
    const chord = edges.find((edge) => edge.curve === index);
    if (!chord) return [];
    const [a, b] = inOrder(curve.a, curve.b);
    const [x, y] = curve.centre.map(Math.round);
    return [{ key: keyOf(a, b, ` about ${x},${y}`), ink: inkOf(chord), way: 'curved' as const, a, b, curve }];
  });
}

const TURNED_OVER = { 'score-valley': 'score-mountain', 'score-mountain': 'score-valley' } as const;

function lineAsItLies(line: NetLine, blank: Blank, lie: Lie): NetLine {
  const over = ({ x, y }: Point): Point => {
    const [left, above] = placeAtBench(blank, lie, [x, y]);
    return { x: ticks(left), y: ticks(above) };
  };
  const [a, b] = inOrder(over(line.a), over(line.b));
  const isScore = line.ink === 'score-valley' || line.ink === 'score-mountain';
  const ink = lie.mirrored && isScore ? TURNED_OVER[line.ink] : line.ink;
  const { curve } = line;
  if (!curve) return { ...line, a, b, ink };
  // A mirror runs an arc the other way round.
  const [from, to] = lie.mirrored ? [curve.b, curve.a] : [curve.a, curve.b];
  const centre = placeAtBench(blank, lie, curve.centre);
  return { ...line, a, b, ink, curve: { ...curve, a: over(from), b: over(to), centre } };
}

const compare = (p: Point, q: Point) => p.x - q.x || p.y - q.y;
const inOrder = (p: Point, q: Point): [Point, Point] => (compare(p, q) <= 0 ? [p, q] : [q, p]);

function reduced(dx: number, dy: number): [number, number] {
  let [a, b] = [Math.abs(dx), Math.abs(dy)];
  while (b) [a, b] = [b, a % b];
  return a === 0 ? [0, 0] : [dx / a, dy / a];
}
