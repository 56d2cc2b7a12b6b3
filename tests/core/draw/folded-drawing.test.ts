import { describe, expect, it } from 'vitest';
import { drawFolded } from '../../../src/core/draw/folded-drawing';
import type { Drawing } from '../../../src/core/draw/strokes/types';
import {
  anglesDuring,
  closingStates,
  foldPiece,
  insideOf,
  plus,
  times,
  type Vector,
} from '../../../src/core/fold';
import { liftsInward } from '../../../src/core/fold/layers';
import { aroundFigures, lightOn, putOnPaper, seeBox } from '../../../src/core/fold/seen/figure';
import { benchView, see, standingView, type View } from '../../../src/core/fold/seen/view';
import { layNet } from '../../../src/core/net';
import type { PieceNet } from '../../../src/core/net/types';
import type { At } from '../../../src/core/plane';
import { STYLES } from '../../../src/core/styles';

const space = { widthMm: 120, heightMm: 120 };
const LIFT_MM = 0.03; // thin enough that a lifted layer does not move in the picture
const PIXELS = 100;

/** A ring seen: its corners in the picture, and the plane of its nearness, from three corners that span it best. */
interface Mesh {
  readonly panel: string;
  readonly flat: readonly At[];
  readonly nearness: (point: At) => number;
}

/** Every face as a flat mesh, flush layers of the closed box lifted apart by a hair: nothing here knows how the picture is made. */
function meshOf(piece: PieceNet, angles: readonly number[], view: View, closed: boolean): Mesh[] {
  const layers = closed ? liftsInward(piece) : piece.faces.map(() => 0);
  return foldPiece(piece, angles).map(({ pose, ring }, face) => {
    const lift = times(insideOf(pose), LIFT_MM * layers[face]!);
    const seen = ring.map((corner: Vector) => see(view, plus(corner, lift)));
    const [a, b, c] = widest(seen);
    const across = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    const nearness = ([x, y]: At) => {
      const u = ((x - a[0]) * (c[1] - a[1]) - (y - a[1]) * (c[0] - a[0])) / across;
      const v = ((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])) / across;
      return a[2] + u * (b[2] - a[2]) + v * (c[2] - a[2]);
    };
    return { panel: piece.faces[face]!.panel, flat: seen.map(([x, y]): At => [x, y]), nearness };
  });
}

type Seen3 = readonly [number, number, number];
function widest(ring: readonly Seen3[]): [Seen3, Seen3, Seen3] {
  let best: [Seen3, Seen3, Seen3] = [ring[0]!, ring[1]!, ring[2]!];
  let most = 0;
  for (const b of ring)
    for (const c of ring) {
      const [a] = ring as [Seen3];
      const area = Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
      if (area > most) [most, best] = [area, [a, b, c]];
    }
  return best;
}

function contains([x, y]: At, ring: readonly At[]): boolean {
  let winding = 0;
  ring.forEach(([ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length]!;
    const side = (bx - ax) * (y - ay) - (by - ay) * (x - ax);
    if (ay <= y && by > y && side > 0) winding++;
    if (ay > y && by <= y && side < 0) winding--;
  });
  return winding !== 0;
}

/** All panels that a depth buffer cannot tell from the nearest one: more than one only where faces are flush. */
function nearestPanels(meshes: readonly Mesh[], point: At): Set<string> {
  const hits = meshes
    .filter(({ flat }) => contains(point, flat))
    .map(({ panel, nearness }) => ({ panel, near: nearness(point) }))
    .filter(({ near }) => Number.isFinite(near));
  const nearest = Math.max(...hits.map(({ near }) => near));
  return new Set(hits.filter(({ near }) => nearest - near < LIFT_MM / 3).map(({ panel }) => panel));
}

/** The panel painted last over a point; null on bare paper. */
function paintedPanel({ marks }: Pick<Drawing, 'marks'>, point: At): string | null {
  let panel: string | null = null;
  for (const mark of marks)
    if (mark.kind === 'area' && contains(point, mark.ring)) panel = mark.key?.replace('panel ', '') ?? null;
  return panel;
}

/** The share of picture points, on the figure or just off it, where picture and depth buffer show the same panel. */
function agreement(drawing: Drawing, meshes: readonly Mesh[]): number {
  const all = meshes.flatMap(({ flat }) => flat);
  const [left, right] = [Math.min(...all.map(([x]) => x)), Math.max(...all.map(([x]) => x))];
  const [bottom, top] = [Math.min(...all.map(([, y]) => y)), Math.max(...all.map(([, y]) => y))];
  const scale = (drawing.widthMm - 2) / (right - left);
  let [same, count] = [0, 0];
  for (let i = 0; i < PIXELS; i++)
    for (let j = 0; j < PIXELS; j++) {
      const point: At = [
        left + ((i + 0.5) / PIXELS) * (right - left),
        bottom + ((j + 0.5) / PIXELS) * (top - bottom),
      ];
      const painted = paintedPanel(drawing, [1 + (point[0] - left) * scale, 1 + (point[1] - bottom) * scale]);
      const nearest = nearestPanels(meshes, point);
      if (painted === null && nearest.size === 0) continue;
      count++;
      if (painted !== null && nearest.has(painted)) same++;
    }
  return same / count;
}

/** Five states of closing, half-done acts among them, as acts done and the part of the next. */
const fiveStates = ({ closing }: PieceNet) => {
  const turns = closing.flatMap((act, i) => (act.do === 'glue' ? [] : [i]));
  const picked = [0, 0.35, 0.7].map((share) => turns[Math.floor(share * (turns.length - 1))]!);
  return [
    ...picked.map((acts) => ({ acts, part: 0.5 })),
    { acts: turns.at(-1)!, part: 0 },
    { acts: closing.length, part: 0 },
  ];
};

const pieces = STYLES.flatMap((style) =>
  layNet(style, { sizes: {}, caliperUm: 300 }).pieces.map((piece) => ({ style, piece })),
);

describe('a folded picture shows what a depth buffer shows', { timeout: 60_000 }, () => {
  for (const { style, piece } of pieces)
    it(`at five states of closing: ${style.id}, ${piece.id}`, () => {
      const states = closingStates(piece);
      for (const { acts, part } of fiveStates(piece)) {
        const angles = part === 0 ? states[acts]! : anglesDuring(states, acts, part, piece.closing);
        const drawing = drawFolded(piece, { acts, part, from: 'bench', space });
        const share = agreement(drawing, meshOf(piece, angles, benchView(), acts === piece.closing.length));
        expect(share, `${acts} acts and ${part} of the next`).toBeGreaterThan(0.995);
      }
    });

  for (const { style, piece } of pieces.filter(({ piece: { lid } }) => !lid))
    it(`standing on its bottom: ${style.id}, ${piece.id}`, () => {
      const angles = closingStates(piece).at(-1)!;
      const view = standingView(piece);
      expect(
        agreement(drawFolded(piece, { from: 'standing', space }), meshOf(piece, angles, view, true)),
      ).toBeGreaterThan(0.995);
    });

  it('and not when two panels are painted in the wrong order', () => {
    const [{ piece }] = pieces as [(typeof pieces)[number]];
    const drawing = drawFolded(piece, { from: 'bench', space });
    const painted = { ...drawing, marks: [...drawing.marks].reverse() };
    expect(agreement(painted, meshOf(piece, closingStates(piece).at(-1)!, benchView(), true))).toBeLessThan(
      0.9,
    );
  });
});

/** A panel and those it shares a score with. */
const neighbours = ({ edges, faces }: PieceNet, panel: string) =>
  new Set([
    panel,
    ...edges.flatMap(({ left, right }) => {
      const sides = [faces[left]!.panel, right === null ? '' : faces[right]!.panel];
      return sides.includes(panel) ? sides : [];
    }),
  ]);

describe('a folded picture', () => {
  it('draws only lines that border on a panel seen there', () => {
    for (const { piece } of pieces) {
      const drawing = drawFolded(piece, { from: 'standing', space });
      const edges = drawing.marks.flatMap((mark) =>
        mark.kind === 'line' && mark.ink === 'edge' ? [mark] : [],
      );
      const seen = edges.filter(({ points: [a, b], key }) => {
        const [dx, dy] = [b![0] - a![0], b![1] - a![1]];
        const long = Math.hypot(dx, dy);
        const middle = [(a![0] + b![0]) / 2, (a![1] + b![1]) / 2] as const;
        return [0.15, -0.15].some((off) => {
          const beside: At = [middle[0] - (off * dy) / long, middle[1] + (off * dx) / long];
          return neighbours(piece, key!.replace('panel ', '')).has(paintedPanel(drawing, beside) ?? '');
        });
      });
      expect(edges.length).toBeGreaterThan(3);
      expect(seen.length / edges.length).toBeGreaterThan(0.98);
    }
  });

  it('is the same every time', () => {
    for (const { piece } of pieces)
      expect(drawFolded(piece, { from: 'standing', space })).toEqual(
        drawFolded(piece, { from: 'standing', space }),
      );
  });
});

describe('the picture of a whole box on tiles', () => {
  it.each(STYLES.map((style) => [style.id, style] as const))(
    'shows all of a %s, and no line outside it',
    (_, style) => {
      const placed = seeBox(layNet(style, { sizes: {}, caliperUm: 300 }), true);
      const { left, right, bottom, top } = aroundFigures(placed);
      expect(right - left).toBeGreaterThan(10);
      for (const { figure, dx, dy } of placed) {
        const lines = putOnPaper(figure, ([x, y]) => [x + dx, y + dy]).lines();
        expect(lines.length).toBeGreaterThan(3);
        for (const [x, y] of lines.flatMap(({ ends }) => ends)) {
          expect(x).toBeGreaterThanOrEqual(left - 1e-9);
          expect(x).toBeLessThanOrEqual(right + 1e-9);
          expect(y).toBeGreaterThanOrEqual(bottom - 1e-9);
          expect(y).toBeLessThanOrEqual(top + 1e-9);
        }
        for (const face of figure.order) {
          expect(lightOn(figure, face)).toBeGreaterThanOrEqual(0);
          expect(lightOn(figure, face)).toBeLessThanOrEqual(1);
        }
      }
    },
  );

  it('leaves a lid that is tucked last ajar only where asked', () => {
    const tuck = layNet(STYLES.find(({ id }) => id === 'straight-tuck')!, { sizes: {}, caliperUm: 300 });
    const angles = (ajar: boolean) => seeBox(tuck, ajar)[0]!.figure.angles;
    expect(angles(false)).toEqual(closingStates(tuck.pieces[0]!).at(-1));
    expect(angles(true)).not.toEqual(angles(false));
  });
});
