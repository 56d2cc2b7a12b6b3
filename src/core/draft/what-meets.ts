import { type FoldedFace, foldPiece, insideOf, type Pose, type Vector } from '../fold';
import { distance, dot } from '../fold/vector';
import { fillSizes, layNet, nameValues } from '../net';
import { namedSides } from '../net/lay-piece';
import type { PieceNet } from '../net/types';
import { type At, convexParts, counterClockwise, deepestOverlap } from '../plane';
import { legalBoxes } from '../proof';
import { type BoxStyle, piecesOf } from '../styles';
import { inches, toMm } from '../units/ticks';
import { swayFrom } from '../yield/stock/sway';

/** What comes to lie where when a piece is closed, at every size looked at. */
export interface Meetings {
  /** Panels that lie on one another in one plane; each pair once. */
  readonly lying: readonly (readonly [string, string])[];
  /** Edges that come together and lie apart in the flat. */
  readonly edges: readonly (readonly [string, string])[];
}

/** How many sizes are looked at: what meets at one by chance seldom meets at all. source: our own */
const LOOKED_AT = 4;
/** Below this thickness panels are drawn without relief, so that what should meet does. source: thin card, common practice, no source */
const THIN_UM = 305;
/** source: our own, a third of a millimeter for planes, a tenth of a millimeter for edges */
const NEAR_MM = 0.34;
const MEETS_MM = 0.1;
/** How far panels overlap that lie on one another. source: our own */
const LAPS_MM = 1;
/** Panels whose edges close a box. */
const CLOSES: ReadonlySet<string> = new Set(['wall', 'base', 'roof', 'gusset']);

/** Folds a piece at several of its sizes, and sees what comes together in all of them. */
export function whatMeets(style: BoxStyle, pieceId: string): Meetings {
  const legal = legalBoxes(style, LOOKED_AT, swayFrom(3));
  const usual = { sizes: fillSizes(style), options: {}, mark: inches(0, 1, 16) };
  const seen = (legal.length > 0 ? legal : [usual]).map((box) =>
    meetingsAt(style, pieceId, { ...box, caliperUm: THIN_UM }),
  );
  const inAll = (pairs: readonly ReadonlyMap<string, readonly [string, string]>[]) =>
    [...(pairs[0] ?? new Map<string, readonly [string, string]>())].flatMap(([key, pair]) =>
      pairs.every((other) => other.has(key)) ? [pair] : [],
    );
  return { lying: inAll(seen.map(({ lying }) => lying)), edges: inAll(seen.map(({ edges }) => edges)) };
}

type Pairs = Map<string, readonly [string, string]>;

function meetingsAt(style: BoxStyle, pieceId: string, sizing: Parameters<typeof layNet>[1]) {
  const lying: Pairs = new Map();
  const edges: Pairs = new Map();
  const piece = layNet(style, sizing).pieces.find(({ id }) => id === pieceId);
  const spec = piecesOf(style, sizing.options)[pieceId];
  if (piece === undefined || spec === undefined) return { lying, edges };
  const folded = foldPiece(piece);
  const hinged = new Set(
    piece.hinges.flatMap(({ parent, child }) => [`${parent} ${child}`, `${child} ${parent}`]),
  );
  piece.faces.forEach(({ panel }, one) => {
    for (let other = one + 1; other < piece.faces.length; other++) {
      const onto = piece.faces[other]?.panel ?? '';
      if (panel === onto || hinged.has(`${one} ${other}`)) continue;
      if (liesOn(piece, folded, one, other)) lying.set(`${panel} ${onto}`, [panel, onto]);
    }
  });
  const sides = namedSides(spec, nameValues(style, sizing)).filter(({ panel }) =>
    CLOSES.has(spec.panels[panel]?.role ?? ''),
  );
  const spread = sides.map(({ panel, edge, face, a, b }) => {
    const pose = folded[face]?.pose;
    const at = ({ x, y }: typeof a): Vector => (pose ? placed(pose, toMm(x), toMm(y)) : [0, 0, 0]);
    const flat = ({ x, y }: typeof a): Vector => [toMm(x), toMm(y), 0];
    return {
      panel,
      name: `${panel}.${edge}`,
      closed: [at(a), at(b)] as const,
      flat: [flat(a), flat(b)] as const,
    };
  });
  spread.forEach((one, at) => {
    if (distance(...one.closed) < LAPS_MM) return;
    for (const other of spread.slice(at + 1))
      if (one.panel !== other.panel && together(one.closed, other.closed) && !together(one.flat, other.flat))
        edges.set(`${one.name} ${other.name}`, [one.name, other.name]);
  });
  return { lying, edges };
}

type Ends = readonly [Vector, Vector];
const together = ([a, b]: Ends, [c, d]: Ends): boolean =>
  (distance(a, d) < MEETS_MM && distance(b, c) < MEETS_MM) ||
  (distance(a, c) < MEETS_MM && distance(b, d) < MEETS_MM);

const placed = (m: Pose, x: number, y: number): Vector => [
  m[0] * x + m[1] * y + m[3],
  m[4] * x + m[5] * y + m[7],
  m[8] * x + m[9] * y + m[11],
];

/** A point of the closed box in the flat frame of a face. */
const seenFrom = (m: Pose, [x, y, z]: Vector): Vector => {
  const [p, q, r] = [x - m[3], y - m[7], z - m[11]];
  return [m[0] * p + m[4] * q + m[8] * r, m[1] * p + m[5] * q + m[9] * r, m[2] * p + m[6] * q + m[10] * r];
};

function liesOn(piece: PieceNet, folded: readonly FoldedFace[], one: number, other: number): boolean {
  const [p, q] = [folded[one], folded[other]];
  if (p === undefined || q === undefined) return false;
  if (Math.abs(dot(insideOf(p.pose), insideOf(q.pose))) < 0.9999) return false;
  const seen = q.ring.map((corner) => seenFrom(p.pose, corner));
  const level = piece.faces[one]?.ring ?? [];
  if (level.length < 3 || seen.some(([, , z]) => Math.abs(z) > NEAR_MM)) return false;
  const ring = level.map(({ x, y }): At => [toMm(x), toMm(y)]);
  return (
    deepestOverlap(
      convexParts(counterClockwise(ring)),
      convexParts(counterClockwise(seen.map(([x, y]): At => [x, y]))),
    ) > LAPS_MM
  );
}
