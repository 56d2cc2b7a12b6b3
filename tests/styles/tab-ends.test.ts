import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layNet, newOptions, newSizes, type PieceNet, type Point } from '../../src/core/net';
import { paringsOf } from '../../src/core/net/parings';
import { type BoxStyle, STYLES, styleById } from '../../src/core/styles';
import { SEED } from '../seed';
import { legalBoxes } from './legal-sizes';

/** Tabs that slope otherwise, and why. */
const OTHERWISE: Readonly<Record<string, string>> = {
  'gable-top roofTab': 'runs on from the wall’s tab up to the ridge, between the roof and the folded gusset',
  'fin-top roofTab': 'runs on from the wall’s tab to the fin',
  'fin-top tabFin': 'ends level with the fin, between six other layers',
  'rolled-cone tab': 'runs to the tip, and its other end is the mouth itself',
  'handle-basket rightLegTab': 'joins two legs of one handle end to end and is covered by both',
};

interface TabEnd {
  readonly tab: string;
  /** How far the end slopes in from square, degrees. */
  readonly deg: number;
  /** How far along its score the tab begins, from a corner where a third panel meets it, mm; none where no panel does. */
  readonly fromCrease: number | null;
  /** It reaches out about as far as its score is long, so its ends take a third of that each. */
  readonly stubby: boolean;
}

const MM = 320;
const far = (p: Point, q: Point): number => Math.hypot(p.x - q.x, p.y - q.y);

/** Both ends of every glue tab of a piece as hands cut them: the net’s outline and what is pared off it. Plane geometry, nothing of how a style counts. */
function tabEnds(piece: PieceNet): readonly TabEnd[] {
  const pared = paringsOf(piece);
  return piece.faces.flatMap(({ role, panel, ring }, face): readonly TabEnd[] => {
    const hinge = piece.hinges.find(({ child }) => child === face);
    if (role !== 'glueTab' || hinge === undefined) return [];
    const score = far(hinge.a, hinge.b);
    const folded = (p: Point, q: Point) =>
      piece.hinges.some(({ a, b }) => Math.min(far(a, p) + far(b, q), far(a, q) + far(b, p)) < 2);
    return (
      [
        [hinge.a, hinge.b],
        [hinge.b, hinge.a],
      ] as const
    ).flatMap(([corner, other]): TabEnd[] => {
      // biome-ignore format: one row
      const along = (p: Point) =>
        ((p.x - corner.x) * (other.x - corner.x) + (p.y - corner.y) * (other.y - corner.y)) / far(corner, other);
      const off = (p: Point) =>
        Math.abs((p.x - corner.x) * (other.y - corner.y) - (p.y - corner.y) * (other.x - corner.x)) /
        far(corner, other);
      const at = ring.findIndex((p) => far(p, corner) < 2);
      const beside = [ring[(at + 1) % ring.length], ring.at(at - 1)].find((p) => p && off(p) > 2) ?? corner;
      // where the strip runs on in another tab it has no end
      if (folded(corner, beside)) return [];
      const cut = pared
        .filter((one) => one.face === face)
        .map(({ a, b }) => [a, b].sort((p, q) => off(p) - off(q)) as [Point, Point])
        .find(([a]) => far(a, corner) < far(a, other));
      const [near, end] = cut ?? [corner, beside];
      const met = piece.faces.some(
        (one, i) => i !== face && i !== hinge.parent && one.ring.some((p) => far(p, corner) < 2),
      );
      return [
        {
          tab: panel.replace(/\d+$/, ''),
          deg: (Math.atan2(along(end) - along(near), off(end) - off(near)) * 180) / Math.PI,
          fromCrease: met ? far(near, corner) / MM : null,
          stubby: off(beside) > 0.9 * score,
        },
      ];
    });
  });
}

const endsOf = (style: BoxStyle) => {
  const boxes = [
    { sizes: newSizes(style), options: newOptions(style), caliperUm: 300 },
    ...fc.sample(legalBoxes(style), { seed: SEED, numRuns: 25 }),
  ];
  return boxes.flatMap((asked) =>
    layNet(style, asked)
      .pieces.flatMap(tabEnds)
      .filter(({ tab }) => !(`${style.id} ${tab}` in OTHERWISE))
      .map((end) => ({ ...end, asked: JSON.stringify(asked) })),
  );
};

/** A tab at an acute tip slopes more, to stay clear of what meets there; none slopes less, but by the degree that a quarter of its width is. source: 15 to 30 degrees, common practice, no source */
describe('ends of glue tabs slope in, and stay clear of the crease across them', () => {
  it.each(STYLES.map((style) => [style.name, style] as const))('%s', (_, style) => {
    for (const { deg, fromCrease, tab, stubby, asked } of endsOf(style)) {
      expect(deg, `${tab} ${asked}`).toBeGreaterThanOrEqual(stubby ? 4 : 14);
      // 1/32 in; what slopes more is clear of it at once
      if (fromCrease !== null && deg < 19) expect(fromCrease, `${tab} ${asked}`).toBeGreaterThan(0.79);
    }
  });

  it('what slopes otherwise is there', () => {
    for (const one of Object.keys(OTHERWISE)) {
      const [id = '', tab] = one.split(' ');
      const style = styleById(id);
      if (style === undefined) throw new Error(id);
      const all = layNet(style, { sizes: {}, caliperUm: 300 }).pieces.flatMap(({ faces }) => faces);
      expect(
        all.some(({ panel, role }) => panel === tab && role === 'glueTab'),
        one,
      ).toBe(true);
    }
  });

  it('corner tabs of a tray by hand: four feet are clear of the crease, four ends lie at the rim', () => {
    const style = styleById('tray');
    if (style === undefined) throw new Error('no tray');
    const [tray] = layNet(style, { sizes: {}, caliperUm: 300 }).pieces;
    const ends = tray ? tabEnds(tray) : [];
    expect(ends).toHaveLength(8);
    // four feet, 1/32 in clear; four at the rim, where nothing meets them
    expect(ends.filter(({ fromCrease }) => fromCrease === null)).toHaveLength(4);
  });
});
