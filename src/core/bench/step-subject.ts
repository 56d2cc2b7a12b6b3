import type { Blank, NetEdge, PieceNet, Point } from '../net/types';
import { ticks } from '../units';
import type { BoxProgram } from './box-cards';
import type { CardStep } from './card-step';
import { sizeAsItLies, toNet } from './equal/card-lie';
import type { BenchOp, BenchPoint } from './types';
import { panelLabels } from './words/panel-labels';

/** What a step is about, whatever its number: its acts, each with the panels it works. */
export interface StepSubject {
  readonly piece: string;
  /** By the names of the panels: `score front wall | left wall`, `join tab`, `close lid`. */
  readonly acts: string[];
  /** By what those panels are in any style: `score wall | wall`, `join glueTab`. */
  readonly like: string[];
}

/** As many as a saved tip holds. source: the file format */
const MOST_ACTS = 200;

/** One act and the faces it works. */
interface Work {
  readonly does: string;
  readonly faces: readonly number[];
}

/** A step of a piece by what it is about, so that it is found again in another size or style. */
export function subjectOf({ piece, program }: BoxProgram, { ops, lie }: CardStep): StepSubject {
  const acts = program.ops.slice(ops.from, ops.to);
  const toCard = (point: BenchPoint): Point => toNet(piece.blank, lie, point);
  const size = sizeAsItLies(piece.blank, lie);
  // A joint with its tape and the fold that brings it there is about the joint.
  const joins = acts.filter(({ op }) => op === 'stick' || op === 'glue');
  const works = (joins.length > 0 ? joins : acts).flatMap((op) => worksOf(op, piece, size, toCard));
  const labels = panelLabels(piece);
  const said = (nameOf: (face: number) => string): string[] =>
    [
      ...new Set(works.map(({ does, faces }) => `${does} ${faces.map(nameOf).sort().join(' | ')}`.trim())),
    ].slice(0, MOST_ACTS);
  return {
    piece: piece.id,
    acts: said((face) => labels.get(piece.faces[face]?.panel ?? '') ?? ''),
    like: said((face) => piece.faces[face]?.role ?? ''),
  };
}

function worksOf(
  op: BenchOp,
  piece: PieceNet,
  { across, up }: Blank,
  toCard: (point: BenchPoint) => Point,
): readonly Work[] {
  const along = (does: string, kind: NetEdge['kind'], points: readonly BenchPoint[]): readonly Work[] => {
    const path = points.map(toCard);
    const found = piece.edges.filter(
      (edge) => edge.kind === kind && path.some((b, i) => i > 0 && liesOn(edge, path[i - 1] ?? b, b)),
    );
    if (found.length === 0) return [{ does, faces: [] }];
    return found.map(({ left, right }) => ({ does, faces: right === null ? [left] : [left, right] }));
  };
  const named = (does: string, panels: readonly string[]): readonly Work[] =>
    panels.flatMap((panel) => {
      const face = piece.faces.findIndex((one) => one.panel === panel);
      return face < 0 ? [] : [{ does, faces: [face] }];
    });
  switch (op.op) {
    case 'blank':
    case 'crease':
      return [{ does: op.op, faces: [] }];
    case 'turn':
    case 'flip':
      return [];
    case 'score': {
      const { from, to } = op.span ?? { from: ticks(0), to: up };
      return along('score', 'score', [{ x: op.at, y: from }, { x: op.at, y: to }]); // biome-ignore format: two ends
    }
    case 'scoreLine':
      return along('score', 'score', [op.a, op.b]);
    case 'scoreCurve':
      return along('score', 'score', op.points);
    case 'slit':
      return along('slit', 'slit', [{ x: op.at, y: op.from }, { x: op.at, y: op.to }]); // biome-ignore format: two ends
    case 'slitLine':
      return along('slit', 'slit', [op.a, op.b]);
    case 'corner': {
      const edge = {
        x: op.corner.endsWith('left') ? ticks(0) : across,
        y: op.corner.startsWith('near') ? ticks(0) : up,
      };
      const inner = { x: ticks(Math.abs(edge.x - op.across)), y: ticks(Math.abs(edge.y - op.up)) };
      return along('cut', 'cut', [{ x: inner.x, y: edge.y }, inner, { x: edge.x, y: inner.y }]);
    }
    case 'snip':
      return along('cut', 'cut', [op.a, op.b]);
    case 'cutPath':
      return along('cut', 'cut', op.points);
    case 'window':
      return piece.faces.flatMap(({ holes }, face) =>
        holes.some((hole) => hole.some((point) => op.ring.map(toCard).some((one) => isSame(one, point))))
          ? [{ does: 'window', faces: [face] }]
          : [],
      );
    case 'stick':
    case 'glue':
      return named('join', [op.panel]);
    case 'thread':
      return named('thread', [op.panel]);
    case 'close':
      return op.way === 'open' ? [{ does: 'open', faces: [] }] : named('close', op.panels);
  }
}

const isSame = (p: Point, q: Point): boolean => p.x === q.x && p.y === q.y;

/** Does an edge lie on the stretch from a to b? Corners are whole ticks, so a slanted line may pass one by a tick. */
function liesOn(edge: NetEdge, a: Point, b: Point): boolean {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const long = Math.hypot(dx, dy);
  return [edge.a, edge.b].every(({ x, y }) => {
    const off = Math.abs(dx * (y - a.y) - dy * (x - a.x)) / long;
    const far = (dx * (x - a.x) + dy * (y - a.y)) / long;
    return off <= 1 && far >= -1 && far <= long + 1;
  });
}
