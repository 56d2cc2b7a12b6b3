import { alongOf, type Carrier, carrierKey, carrierOf } from './carrier';
import type { EdgeKind, PieceNet, Point } from './types';

/** One line as a hand draws it: straight and unbroken, or one true curve. */
export interface NetLine {
  readonly kind: Exclude<EdgeKind, 'join'>;
  readonly from: Point;
  readonly to: Point;
  /** Signed fold when closed; where pieces of one score fold differently they are separate lines. */
  readonly foldDeg: number;
  /** Along the line (along the arc of a curve), in ticks; not whole when slanted. */
  readonly length: number;
  /** Index into the piece's `curves`, or null when straight. */
  readonly curve: number | null;
  /** Indices into the piece's `edges`. */
  readonly edges: readonly number[];
}

const ORDER: readonly NetLine['kind'][] = ['score', 'slit', 'cut', 'edge'];

/** Every drawn line of a piece, merged along its carrier; scores first, then slits, cuts and edges, upright before level, from the lower left. */
export function linesOf(piece: PieceNet): NetLine[] {
  const groups = new Map<string, { carrier: Carrier; edges: number[] }>();
  const curves = new Map<number, number[]>();
  piece.edges.forEach(({ a, b, kind, foldDeg, curve }, at) => {
    if (kind === 'join') return;
    if (curve !== null) {
      curves.set(curve, [...(curves.get(curve) ?? []), at]);
      return;
    }
    const { carrier } = carrierOf(a, b);
    const key = `${kind} ${foldDeg} ${carrierKey(carrier)}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { carrier, edges: [at] });
    else group.edges.push(at);
  });
  const straight = [...groups.values()].flatMap(({ carrier, edges }) => mergeRuns(piece, carrier, edges));
  const bent = [...curves].map(([curve, edges]) => curvedLine(piece, curve, edges));
  return [...straight, ...bent].sort(
    (p, q) =>
      ORDER.indexOf(p.kind) - ORDER.indexOf(q.kind) ||
      slope(p) - slope(q) ||
      p.from.x - q.from.x ||
      p.from.y - q.from.y,
  );
}

const slope = ({ from, to }: NetLine): number => (from.x === to.x ? 0 : from.y === to.y ? 1 : 2);

function mergeRuns(piece: PieceNet, carrier: Carrier, edges: readonly number[]): NetLine[] {
  const runs = edges
    .flatMap((at) => {
      const edge = piece.edges[at];
      if (edge === undefined) return [];
      const [from, to] =
        alongOf(carrier, edge.a) < alongOf(carrier, edge.b) ? [edge.a, edge.b] : [edge.b, edge.a];
      return [{ at, edge, from, to }];
    })
    .sort((p, q) => alongOf(carrier, p.from) - alongOf(carrier, q.from));
  const lines: NetLine[] = [];
  for (const { at, edge, from, to } of runs) {
    const last = lines[lines.length - 1];
    const joined = last !== undefined && alongOf(carrier, last.to) >= alongOf(carrier, from);
    const start = joined ? last.from : from;
    if (joined) lines.pop();
    lines.push({
      kind: edge.kind as NetLine['kind'],
      from: start,
      to,
      foldDeg: edge.foldDeg,
      length: Math.hypot(to.x - start.x, to.y - start.y),
      curve: null,
      edges: joined ? [...last.edges, at] : [at],
    });
  }
  return lines;
}

function curvedLine(piece: PieceNet, curve: number, edges: readonly number[]): NetLine {
  const arc = piece.curves[curve];
  const first = piece.edges[edges[0] ?? 0];
  if (arc === undefined || first === undefined) throw new RangeError(`no curve ${curve}`);
  const half = Math.hypot(arc.b.x - arc.a.x, arc.b.y - arc.a.y) / 2;
  const middle = piece.edges[edges[Math.floor(edges.length / 2)] ?? 0] ?? first;
  return {
    kind: arc.kind,
    from: arc.a,
    to: arc.b,
    foldDeg: middle.foldDeg,
    length: 2 * arc.radius * Math.asin(Math.min(1, half / arc.radius)),
    curve,
    edges,
  };
}
