import { describe, expect, it } from 'vitest';
import type { DressingPiece, GlueSupply } from '../../../shared/workbook';
import { fitPiece, movedOnto, overhangOf, placePiece } from '../../../src/core/dress';
import { layNet } from '../../../src/core/net';
import { fillRolls } from '../../../src/core/plan/buying/rolls';
import { planAdhesive, tapeFits } from '../../../src/core/plan/supplies/adhesive';
import { whyPiece, whyTie } from '../../../src/core/plan/why/dressing-why';
import { STYLES, styleById } from '../../../src/core/styles/registry';
import { inches, millimetres, toInches, USUAL_FINEST } from '../../../src/core/units';
import { sayReason } from '../../../src/core/units/reason';

const net = layNet(styleById('open-top')!, { sizes: { flap: inches(1, 1, 2) }, caliperUm: 305 });
const mark = USUAL_FINEST.in;
const say = (reasons: readonly Parameters<typeof sayReason>[0][]) =>
  reasons.map((each) =>
    sayReason(each, { length: (length) => `${Number(toInches(length).toFixed(3))}`, money: String }),
  );
const glue: GlueSupply = {
  id: 'glue',
  rev: 1,
  createdAt: '2027-01-01T00:00:00Z',
  changedAt: '2027-01-01T00:00:00Z',
  name: 'White glue',
  kind: 'glue',
  bottleGrams: 120,
  gramsPerSquareMetre: 60,
  pressMinutes: 1,
  dryMinutes: 30,
  priceMinor: 300,
  onHandBottles: 0,
};
const layer: DressingPiece = {
  id: 'layer',
  kind: 'layer',
  name: 'Front layer',
  widthMm: 50,
  heightMm: 50,
  perBox: 1,
  grain: 'free',
  paperId: null,
  fit: { rule: 'on-panel', panel: 'front', revealMm: 3.175 },
};

describe('the adhesive plan', () => {
  it('needs ten rolls of 5 yd for forty pieces of 36 1/2 in, not nine', () => {
    // floor(180 / 36.5) = 4 to a roll; derived, common practice that a cut piece is not joined
    expect(fillRolls([{ length: inches(36, 1, 2), count: 40 }], millimetres(5 * 914.4)).rolls).toBe(10);
  });

  it('tapes the trade box joint by joint, double under load, 1/8 in narrower than the flap', () => {
    const { rows } = planAdhesive({ net, pieces: [] }, null);
    const tab = rows.find(({ panel }) => panel === 'tab');
    expect(tab).toMatchObject({ length: inches(2, 15, 16), strips: 1, widest: inches(0, 7, 8) });
    expect(rows.filter(({ strips }) => strips === 2).every(({ onto }) => onto?.endsWith('Flap'))).toBe(true);
    expect(tab && tapeFits(tab, 25.4)).toBe(false);
    expect(tab && tapeFits(tab, 6.35)).toBe(true);
    expect(say(tab?.why ?? [])).toEqual(['One strip of 2.938.', 'Tape no wider than 1 − 0.125 = 0.875.']);
  });

  it('holds a band at its lap: 1/2 in takes tape no wider than 3/8, however long the band', () => {
    const band: DressingPiece = {
      ...layer,
      kind: 'band',
      fit: { rule: 'around', heightMm: 25.4, lapMm: 12.7 },
    };
    const size = fitPiece(net, band, mark)!;
    const { rows } = planAdhesive({ net, pieces: [{ piece: band, size }] }, glue);
    const [row] = rows.filter(({ by }) => by === 'tape');
    expect(row).toMatchObject({ length: inches(1), strips: 1, widest: inches(0, 3, 8) });
  });

  it('tapes a pillow along its one tab, 1/2 in deep, though its bent sides are drawn in facets', () => {
    const pillow = layNet(styleById('pillow-pack')!, { sizes: {}, caliperUm: 305 });
    const { rows } = planAdhesive({ net: pillow, pieces: [] }, null);
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({ strips: 1 });
    expect(toInches(rows[0]!.depth)).toBeCloseTo(0.5, 2);
  });

  it('glues the same joints in place of tape, with the time the bottle says', () => {
    const plan = planAdhesive({ net, pieces: [] }, glue);
    expect(plan).toMatchObject({ tape: 0, pressMinutes: 1, setMinutes: 30 });
    // 1 × 2 15/16 in = 1895.16 mm² at 60 g/m²: 113.71 mg, taken up
    expect(say(plan.rows.find(({ panel }) => panel === 'tab')?.why ?? [])).toEqual([
      '2.938 × 1 spread thinly: 114 mg.',
    ]);
  });
});

describe('cut sizes and where they come from', () => {
  it('takes each side’s own reveal off a panel: 3 1/2 − 1/8 − 1/2 and 3 − 1/4 − 1/2', () => {
    const offset: DressingPiece = {
      ...layer,
      fit: {
        rule: 'on-panel',
        panel: 'front',
        revealMm: 3.175,
        sidesMm: { left: 3.175, right: 12.7, up: 6.35, down: 12.7 },
      },
    };
    const size = fitPiece(net, offset, mark);
    expect(size && [size.across, size.up].map(toInches)).toEqual([2.875, 2.25]);
    expect(size && say(whyPiece(net, offset, size))).toEqual([
      'Across: 3.5 − 0.125 − 0.5 = 2.875, cut 2.875.',
      'Up: 3 − 0.25 − 0.5 = 2.25, cut 2.25.',
    ]);
    const placed = size && placePiece(net, offset, size);
    // Outside up, the front is the rightmost wall of the 11 in blank: it begins 7 1/2 in from the left.
    expect(placed && toInches(placed.left)).toBeCloseTo(7.5 + 0.125, 6);
    expect(placed && toInches(placed.bottom)).toBeCloseTo(1.5 + 0.5, 6);
  });

  it('goes over the top past the front: 2 × (3 + 1 1/2), four calipers and the lap', () => {
    const sleeve: DressingPiece = {
      ...layer,
      kind: 'band',
      fit: { rule: 'around', heightMm: 25.4, lapMm: 12.7, way: 'front' },
    };
    const size = fitPiece(net, sleeve, mark);
    // 9 + .05 + .5 = 9.55, up to 9 9/16
    expect(size && toInches(size.across)).toBe(9.5625);
  });

  it('has no film where a panel has no opening', () => {
    const film: DressingPiece = {
      ...layer,
      kind: 'window',
      fit: { rule: 'over-window', panel: 'front', lapMm: 6.35 },
    };
    expect(fitPiece(net, film, mark)).toBeNull();
  });

  it('laps film over every edge of an opening', () => {
    const [box] = net.pieces;
    const corner = (x: number, y: number) => ({ x: inches(x), y: inches(y) });
    const hole = [corner(1, 2), corner(1, 4), corner(3, 4), corner(3, 2)];
    const faces = box!.faces.map((face) => (face.panel === 'front' ? { ...face, holes: [hole] } : face));
    const cut = { ...net, pieces: [{ ...box!, faces }] };
    const film: DressingPiece = {
      ...layer,
      kind: 'window',
      fit: { rule: 'over-window', panel: 'front', lapMm: 6.35 },
    };
    const size = fitPiece(cut, film, mark);
    expect(size && [size.across, size.up].map(toInches)).toEqual([2.5, 2.5]);
    // Outside up, the opening from 1 to 3 lies from 8 to 10; the film a quarter further out.
    expect(size && placePiece(cut, film, size)).toMatchObject({ behind: true, left: inches(7, 3, 4) });
  });

  it('writes out the ribbon of the trade box: 22 and a bow of 14 1/2', () => {
    // common practice sizes; derived: two loops of 2, tails 2 1/2, knot 1 1/2. Outside is a caliper more than the room
    const bow = { loops: 2, loopMm: 50.8, tailMm: 63.5, knotMm: 38.1 };
    const lines = say(whyTie(net, { wrap: 'cross', bow }, inches(36, 9, 16)));
    expect(lines[1]).toBe('Bow: 2 loops × 2 × 2 + 2 tails × 2.5 + 1.5 for the knot = 14.5.');
    expect(lines).toHaveLength(3);
  });

  it('tells the front of a lid from the front of its tray', () => {
    const box = layNet(styleById('tray-lid')!, { sizes: {}, caliperUm: 300 });
    const on = (part: string) => ({
      ...layer,
      fit: { rule: 'on-panel', panel: 'base', part, revealMm: 0 } as const,
    });
    const [tray, lid] = [fitPiece(box, on('tray'), mark), fitPiece(box, on('lid'), mark)];
    // The lid goes over the tray, so its top is larger than the tray's floor; neither is both together.
    expect(tray && lid && lid.across > tray.across && lid.up > tray.up).toBe(true);
    expect(lid && placePiece(box, on('lid'), lid)?.part).toBe('lid');
    expect(lid && lid.across - tray!.across).toBeLessThan(inches(1));
  });

  it('lays a layer within its panel on every panel of every style', () => {
    for (const style of STYLES) {
      const box = layNet(style, { sizes: {}, caliperUm: 300 });
      for (const { id: part, faces, blank } of box.pieces)
        for (const panel of new Set(faces.map((face) => face.panel))) {
          const piece = { ...layer, fit: { rule: 'on-panel', panel, part, revealMm: 3.175 } as const };
          const size = fitPiece(box, piece, mark);
          const placed = size && placePiece(box, piece, size);
          if (!placed) continue;
          expect(placed.left, `${style.id} ${panel}`).toBeGreaterThanOrEqual(0);
          expect(placed.left + placed.across).toBeLessThanOrEqual(blank.across);
          expect(placed.bottom + placed.up).toBeLessThanOrEqual(blank.up);
        }
    }
  });

  it('says how far a tag stands over its panel, and moves it back', () => {
    // 1 in of tag from 3 in on a wall of 3 1/2 in: 1/2 in over; 2 in from 1 1/4 in on 3 in: 1/4 in over.
    const tag: DressingPiece = {
      ...layer,
      kind: 'tag',
      widthMm: 25.4,
      heightMm: 50.8,
      placed: { panel: 'front', leftMm: 76.2, downMm: 31.75 },
    };
    const { fit: _, ...free } = tag;
    const size = { across: inches(1), up: inches(2) };
    const over = overhangOf(net, free, size);
    expect(over).toEqual({ across: inches(0, 1, 2), up: inches(0, 1, 4) });
    const moved = over && movedOnto(free, over);
    expect(moved?.placed).toMatchObject({ leftMm: 63.5, downMm: 25.4 });
    expect(moved && overhangOf(net, moved, size)).toBeNull();
  });
});
