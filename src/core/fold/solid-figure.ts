import type { PieceNet, Point } from '../net/types';
import type { At } from '../plane';
import { toMm } from '../units/ticks';
import { anglesDuring, closingStates } from './closing/closing-states';
import { foldPiece, posesOf } from './fold-piece';
import { layersInside } from './layers';
import { panelWays, standOf } from './panel-way';
import { insideOf, type Pose } from './pose';
import type { Vector } from './vector';

/** A panel of card with thickness, in its own flat millimeters: its inside at height 0, its outside one caliper below. */
export interface SolidFace {
  readonly panel: string;
  readonly ring: readonly At[];
  readonly holes: readonly (readonly At[])[];
  /** How far it is moved towards its outside, so that layers lie on one another and not in one place; mm. */
  readonly liftMm: number;
  /** The way that is up on its outside once the box stands, as a flat unit vector. */
  readonly up: At;
}

/** Rows: right, back and up of the standing box, in the net's frame. */
type Standing = readonly [right: Vector, back: Vector, up: Vector];

/** A piece of card to be turned in the hand and folded along its closing path. */
export interface SolidFigure {
  readonly faces: readonly SolidFace[];
  readonly caliperMm: number;
  readonly standing: Standing;
  /** How many acts close it. */
  readonly acts: number;
  /** How many acts are done when things can go in: a lid that is tucked last is still open then. */
  readonly openUntil: number;
  /** Where every face has got to, `done` acts on, a part of the next one counted as a part. */
  readonly posesAt: (done: number) => readonly Pose[];
}

/** A box along an axis each, millimeters of the standing frame. */
export interface Extent {
  readonly low: Vector;
  readonly high: Vector;
}

/** Everything a picture in space needs of a piece. `caliperUm`: the card. */
export function solidFigure(piece: PieceNet, caliperUm: number): SolidFigure {
  const states = closingStates(piece);
  const closed = posesOf(piece, states.at(-1) ?? []);
  const ways = panelWays(piece);
  const layers = layersInside(piece);
  const caliperMm = caliperUm / 1000;
  const flat = (ring: readonly Point[]) => ring.map(({ x, y }): At => [toMm(x), toMm(y)]);
  const acts = piece.closing.length;
  return {
    faces: piece.faces.map(({ panel, ring, holes }, at) => ({
      panel,
      ring: flat(ring),
      holes: holes.map(flat),
      liftMm: (layers.get(at) ?? 0) * caliperMm,
      up: ways[at]?.up ?? [0, 1],
    })),
    caliperMm,
    standing: standingOf(piece, closed),
    acts,
    openUntil: piece.closing.at(-1)?.do === 'tuck' ? acts - 1 : acts,
    posesAt(done) {
      const act = Math.min(Math.floor(done), Math.max(0, acts - 1));
      return acts === 0 ? closed : posesOf(piece, anglesDuring(states, act, done - act, piece.closing));
    },
  };
}

function standingOf(piece: PieceNet, closed: readonly Pose[]): Standing {
  const { up, front } = standOf(piece, closed);
  const back: Vector = [-front[0], -front[1], -front[2]];
  return [
    [back[1] * up[2] - back[2] * up[1], back[2] * up[0] - back[0] * up[2], back[0] * up[1] - back[1] * up[0]],
    back,
    up,
  ];
}

/** What the closed piece takes up, card and all, in the standing frame. */
export function outsideExtent(piece: PieceNet, { standing, caliperMm }: SolidFigure): Extent {
  const points = foldPiece(piece).flatMap(({ pose, ring }) => {
    const inside = insideOf(pose);
    return ring.flatMap((at) => [
      at,
      [at[0] - caliperMm * inside[0], at[1] - caliperMm * inside[1], at[2] - caliperMm * inside[2]] as const,
    ]);
  });
  return extentIn(standing, points);
}

/** The room inside: what the faces round it span, thin card, in the standing frame; where nothing bounds a room, the whole piece. */
export function roomExtent(piece: PieceNet, { standing }: SolidFigure): Extent {
  const folded = foldPiece(piece);
  const shell = piece.shell.length > 0 ? piece.shell : folded.map((_, at) => at);
  return extentIn(
    standing,
    shell.flatMap((at) => folded[at]?.ring ?? []),
  );
}

function extentIn(standing: Standing, points: readonly Vector[]): Extent {
  const along = standing.map((way) => points.map((p) => way[0] * p[0] + way[1] * p[1] + way[2] * p[2]));
  const each = (pick: (...values: number[]) => number): Vector => [
    pick(...(along[0] ?? [])),
    pick(...(along[1] ?? [])),
    pick(...(along[2] ?? [])),
  ];
  return { low: each(Math.min), high: each(Math.max) };
}
