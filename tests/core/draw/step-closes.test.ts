import { afterAll, describe, expect, it } from 'vitest';
import { type BenchOp, boxCards, type CardStep } from '../../../src/core/bench';
import { pictureOfStep } from '../../../src/core/draw/step/step-picture';
import type { Drawing } from '../../../src/core/draw/strokes/types';
import { layNet } from '../../../src/core/net';
import type { PieceNet } from '../../../src/core/net/types';
import { STYLES } from '../../../src/core/styles';
import { trimmer } from '../bench/bench-tools';

/**
 * Pictures of folding and gluing against the acts of the program. How far each score is folded, and to which side, is read back from the outlines of the
 * panels on paper by this file's own arithmetic: a parallel view of flat panels leaves one angle for each. Nothing of `core/fold` is used.
 */
type At = readonly [x: number, y: number];
type Solid = readonly [x: number, y: number, z: number];
type Ring = readonly At[];

const HANDS = [
  ['left', 'outside'],
  ['right', 'inside'],
] as const;
const SPACE = { widthMm: 200, heightMm: 150 };
const tally = { steps: 0, folds: 0, glue: 0 };

const ringsOf = ({ marks }: Pick<Drawing, 'marks'>, panel: string, ...inks: readonly string[]): Ring[] =>
  marks.flatMap((mark) =>
    mark.kind === 'area' && inks.includes(mark.ink) && mark.key === `panel ${panel}` ? [mark.ring] : [],
  );

const less = ([a, b, c]: Solid, [d, e, f]: Solid): Solid => [a - d, b - e, c - f];
const plus = ([a, b, c]: Solid, [d, e, f]: Solid, times = 1): Solid => [
  a + times * d,
  b + times * e,
  c + times * f,
];
const dot = ([a, b, c]: Solid, [d, e, f]: Solid): number => a * d + b * e + c * f;
const cross = ([a, b, c]: Solid, [d, e, f]: Solid): Solid => [b * f - c * e, c * d - a * f, a * e - b * d];
const unit = (v: Solid): Solid => v.map((one) => one / Math.sqrt(dot(v, v))) as unknown as Solid;

/** How the card's plane and the way up from it run on paper, from the outline of the panel that lies still. `nearer`: up is towards the eye. */
function viewOf(flat: Ring, seen: Ring, nearer: boolean): (at: Solid) => At {
  const [p, q, r] = [flat[0], flat[1], flat[2]] as [At, At, At];
  const [P, Q, R] = [seen[0], seen[1], seen[2]] as [At, At, At];
  const det = (q[0] - p[0]) * (r[1] - p[1]) - (r[0] - p[0]) * (q[1] - p[1]);
  const row = (k: 0 | 1): At => [
    ((Q[k] - P[k]) * (r[1] - p[1]) - (R[k] - P[k]) * (q[1] - p[1])) / det,
    ((R[k] - P[k]) * (q[0] - p[0]) - (Q[k] - P[k]) * (r[0] - p[0])) / det,
  ];
  const [[a, b], [c, d]] = [row(0), row(1)];
  // Rows of a parallel view are as long as one another and square: what they lack in the plane is the third way.
  const [xx, yy, xy] = [a * a + b * b, c * c + d * d, a * c + b * d];
  const half = (xx + yy) / 2;
  const scale = half + Math.hypot((xx - yy) / 2, xy);
  const [up, right] = [Math.sqrt(Math.max(0, scale - yy)), Math.sqrt(Math.max(0, scale - xx))];
  const out = [right * (up * right === 0 || -xy > 0 ? 1 : -1), up].map((one) =>
    nearer ? one : -one,
  ) as unknown as At;
  return ([x, y, z]) => [
    P[0] + a * (x - p[0]) + b * (y - p[1]) + out[0] * z,
    P[1] + c * (x - p[0]) + d * (y - p[1]) + out[1] * z,
  ];
}

interface Hung {
  readonly place: (at: At) => Solid;
}

/** The angle of every score in a picture, degrees, as a hand folds it: in is more, out is less; null where the drawing is none of a folded card. */
function anglesOf(piece: PieceNet, drawing: Pick<Drawing, 'marks'>, nearer: boolean): number[] | null {
  const [still] = piece.faces;
  for (const root of ringsOf(drawing, still?.panel ?? '', 'paper')) {
    const found = root.length === still?.ring.length && anglesFrom(root, piece, drawing, nearer);
    if (found) return found;
  }
  return null;
}

function anglesFrom(
  root: Ring,
  piece: PieceNet,
  drawing: Pick<Drawing, 'marks'>,
  nearer: boolean,
): number[] | null {
  const flat = piece.faces.map(({ ring }) => ring.map(({ x, y }): At => [x / 320, y / 320]));
  if (!flat[0]) return null;
  const view = viewOf(flat[0], root, nearer);
  const hung: Hung[] = [];
  hung[0] = { place: ([x, y]) => [x, y, 0] };
  const angles: number[] = [];
  for (const { parent, child, a, b } of piece.hinges) {
    const under = hung[parent];
    const ring = flat[child];
    if (!under || !ring) return null;
    const [from, to]: [At, At] = [
      [a.x / 320, a.y / 320],
      [b.x / 320, b.y / 320],
    ];
    const along = unit(less(under.place(to), under.place(from)));
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const [ux, uy] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
    // Off the score, in the parent's plane: to its left as it runs.
    const off = unit(less(under.place([from[0] - uy, from[1] + ux]), under.place(from)));
    const inside = cross(along, off);
    const turned =
      (deg: number) =>
      ([x, y]: At): Solid => {
        const [run, side] = [
          (x - from[0]) * ux + (y - from[1]) * uy,
          -(x - from[0]) * uy + (y - from[1]) * ux,
        ];
        const turn = (deg * Math.PI) / 180;
        const lies = plus(under.place(from), along, run);
        return plus(plus(lies, off, side * Math.cos(turn)), inside, side * Math.sin(turn));
      };
    // Turning moves a corner by cos and sin of one angle, so the corner farthest off the score gives both.
    const sideOf = ([x, y]: At) => -(x - from[0]) * uy + (y - from[1]) * ux;
    const far = ring.reduce(
      (best, at, i) => (Math.abs(sideOf(at)) > Math.abs(sideOf(ring[best] as At)) ? i : best),
      0,
    );
    const corner = ring[far] as At;
    const foot = plus(under.place(from), along, (corner[0] - from[0]) * ux + (corner[1] - from[1]) * uy);
    const [f, c, n] = [foot, plus(foot, off, sideOf(corner)), plus(foot, inside, sideOf(corner))].map(
      view,
    ) as [At, At, At];
    const [cx, cy, nx, ny] = [c[0] - f[0], c[1] - f[1], n[0] - f[0], n[1] - f[1]];
    let best = { off: Number.POSITIVE_INFINITY, deg: 0 };
    for (const seen of ringsOf(drawing, piece.faces[child]?.panel ?? '', 'paper')) {
      if (seen.length !== ring.length) continue;
      const [x, y] = [(seen[far]?.[0] ?? 0) - f[0], (seen[far]?.[1] ?? 0) - f[1]];
      const det = cx * ny - cy * nx;
      const deg = (Math.atan2((cx * y - cy * x) / det, (x * ny - y * nx) / det) * 180) / Math.PI;
      const missed = Math.max(
        ...ring.map((at, i) => {
          const [atX, atY] = view(turned(deg)(at));
          return Math.hypot(atX - (seen[i]?.[0] ?? 0), atY - (seen[i]?.[1] ?? 0));
        }),
      );
      if (missed < best.off) best = { off: missed, deg };
    }
    if (best.off > 0.1) return null;
    // Which side of the score the child hangs on says which way is in.
    const middle = ring.reduce((sum, [x, y]) => sum - (x - from[0]) * uy + (y - from[1]) * ux, 0);
    angles.push(middle > 0 ? best.deg : -best.deg);
    hung[child] = { place: turned(best.deg) };
  }
  return angles;
}

/** What the acts so far have folded, by the net's own list of acts: the angle of each score, and after each stop of the next. */
function wantedAfter({ hinges, closing }: PieceNet, acts: number): number[] {
  const angles = hinges.map(() => 0);
  for (const act of closing.slice(0, acts))
    if (act.do !== 'glue')
      act.hinges.forEach((hinge, i) => {
        angles[hinge] = act.toDeg[i] ?? 0;
      });
  return angles;
}

/** Flat over is 180 degrees either way round. */
const apart = (a: number, b: number): number => {
  const off = Math.abs(a - b) % 360;
  return Math.min(off, 360 - off);
};
const NEAR_DEG = 3; // small panels are small on paper
const SMALL_DEG = 20; // a third of so small a fold is not told from all of it

/** Does a picture show the card as it is after so many acts, the next one under way? */
function shows(piece: PieceNet, drawing: Drawing, acts: number, isUnderWay: boolean): boolean {
  const [before, after] = [wantedAfter(piece, acts), wantedAfter(piece, acts + 1)];
  const act = piece.closing[acts];
  const stops = act && act.do !== 'glue' ? (act.through ?? []) : [];
  // A box that stands is seen from its front, whose inside is turned away.
  return (/from the front/.test(drawing.description) ? [true, false] : [true]).some((nearer) => {
    const read = anglesOf(piece, drawing, nearer);
    return (
      read?.every((deg, hinge) => {
        const [from = 0, to = 0] = [before[hinge], after[hinge]];
        if (from === to && stops.length === 0) return apart(deg, from) < NEAR_DEG;
        if (!isUnderWay) return apart(deg, from) < NEAR_DEG;
        const at = act && act.do !== 'glue' ? act.hinges.indexOf(hinge) : -1;
        const way = [from, to, ...(at < 0 ? [] : stops.map((stop) => stop[at] ?? from))];
        const [least, most] = [Math.min(...way) - NEAR_DEG, Math.max(...way) + NEAR_DEG];
        const isOnTheWay = [deg - 360, deg, deg + 360].some((one) => one > least && one < most);
        return isOnTheWay && (stops.length > 0 || apart(deg, from) > Math.abs(to - from) / 2);
      }) ?? false
    );
  });
}

const isAct = ({ op }: BenchOp): boolean => op === 'close' || op === 'glue';

function closingStepsOf(cards: ReturnType<typeof boxCards>) {
  return cards.flatMap((card) =>
    card.steps.flatMap((step) => {
      const at = card.program.ops.slice(0, step.ops.to).findLastIndex(({ op }) => op === 'close');
      return at >= step.ops.from
        ? [{ card, step, acts: card.program.ops.slice(0, at).filter(isAct).length }]
        : [];
    }),
  );
}

describe('pictures of closing show what the program has folded, and which way', { timeout: 120_000 }, () => {
  it.each(STYLES.map((style) => [style.id, style] as const))('%s', (_, style) => {
    const net = layNet(style, { sizes: {}, caliperUm: 300 });
    for (const [fence, faceUp] of HANDS)
      for (const { card, step, acts } of closingStepsOf(boxCards(net, { ...trimmer, fence }, { faceUp }))) {
        const picture = pictureOfStep(card, step, SPACE, { textMm: 3 });
        if (!picture) throw new Error(step.headline);
        expect(shows(card.piece, picture, acts, true), `${step.headline} (${fence}, ${faceUp})`).toBe(true);
        tally.steps++;
        const [from, to] = [wantedAfter(card.piece, acts), wantedAfter(card.piece, acts + 1)];
        if (from.every((deg, hinge) => Math.abs(deg - (to[hinge] ?? 0)) < SMALL_DEG)) continue;
        // The picture of another state is seen to be one.
        expect(shows(card.piece, picture, acts + 1, false), `${step.headline}, done`).toBe(false);
        expect(shows(card.piece, picture, acts, false), `${step.headline}, not begun`).toBe(false);
        tally.folds++;
      }
  });
});

/** What a step sticks: the panel, and its face. */
const sticksOf = (ops: readonly BenchOp[], { ops: { from, to } }: CardStep) =>
  ops.slice(from, to).flatMap((op) => (op.op === 'stick' ? [op] : []));

describe('adhesive is drawn on the panel and the face that the program names', () => {
  it.each(STYLES.map((style) => [style.id, style] as const))('%s', (_, style) => {
    const net = layNet(style, { sizes: {}, caliperUm: 300 });
    for (const [fence, faceUp] of HANDS)
      for (const card of boxCards(net, { ...trimmer, fence }, { faceUp }))
        for (const step of card.steps.filter(({ kind }) => kind === 'close' || kind === 'glue')) {
          const picture = pictureOfStep(card, step, SPACE, { textMm: 3 });
          if (!picture) throw new Error(step.headline);
          const sticks = sticksOf(card.program.ops, step);
          const panels = new Set(card.piece.faces.map(({ panel }) => panel));
          for (const panel of panels) {
            const glued = ringsOf(picture, panel, 'glue', 'glue-below');
            const paper = ringsOf(picture, panel, 'paper').map((ring) => ring.join());
            const on = sticks.filter((one) => one.panel === panel);
            expect(glued.length > 0, `${panel}: ${step.headline}`).toBe(on.length > 0);
            for (const ring of glued) {
              expect(paper).toContain(ring.join());
              tally.glue++;
            }
          }
        }
  });

  afterAll(() => {
    console.info(
      `Pictures of closing read back: ${tally.steps}, of ${tally.folds} folds under way; ${tally.glue} panels with adhesive`,
    );
  });
});
