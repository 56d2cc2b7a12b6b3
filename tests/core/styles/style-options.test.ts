import { describe, expect, it, test } from 'vitest';
import { boxCards, cardTrouble } from '../../../src/core/bench';
import { checkBox, checkGeometry } from '../../../src/core/checks';
import { checkLimits } from '../../../src/core/checks/check-limits';
import { dxfOf, foldTextOf, layNet, nameValues, type PieceNet, readFold, svgOf } from '../../../src/core/net';
import { legalBoxes, mendSizes } from '../../../src/core/proof/legal-boxes';
import { STYLES, styleById } from '../../../src/core/styles';
import { everyAddOn } from '../../../src/core/styles/shapes/choices';
import { inches, type Ticks, toMm } from '../../../src/core/units/ticks';
import { swayFrom } from '../../../src/core/yield/stock/sway';
import { ADD_ONS, BUILT_IN, bears, NO_DRAWER, WHY_NOT } from '../../styles/no-option';
import { trimmer } from '../bench/bench-tools';

const boxOf = (
  id: string,
  sizes: Readonly<Record<string, Ticks>>,
  options: Readonly<Record<string, string>>,
) => layNet(styleById(id)!, { sizes, options, caliperUm: 305 });
const faceOf = ({ faces }: PieceNet, panel: string) => faces.find((face) => face.panel === panel)!;
const areaIn = (ring: readonly { readonly x: number; readonly y: number }[]): number =>
  Math.abs(
    ring.reduce((sum, { x, y }, at) => {
      const next = ring[(at + 1) % ring.length]!;
      return sum + (toMm(x) * toMm(next.y) - toMm(next.x) * toMm(y)) / 2;
    }, 0),
  );
const areaOf = (piece: PieceNet, panel: string): number =>
  piece.faces.filter((face) => face.panel === panel).reduce((sum, { ring }) => sum + areaIn(ring), 0);
const middleOf = (ring: readonly { readonly x: number; readonly y: number }[]) =>
  (['x', 'y'] as const).map((axis) => {
    const all = ring.map((point) => point[axis]);
    return (Math.min(...all) + Math.max(...all)) / 2;
  });

describe('every style bears each add-on, has it built in, or has a reason not to', () => {
  test.each(STYLES.map((style) => [style.id, style] as const))('%s', (id, style) => {
    for (const addOn of ADD_ONS) {
      const isOthers = addOn === 'pull' && !bears(style, addOn);
      const reason = isOthers ? NO_DRAWER : WHY_NOT[id]?.[addOn];
      const told = [bears(style, addOn), BUILT_IN[id]?.[addOn] !== undefined, reason !== undefined];
      expect({ addOn, told: told.filter(Boolean).length }).toEqual({ addOn, told: 1 });
    }
  });
});

describe('every add-on in each of its places, at twenty sizes', () => {
  const tool = { ...trimmer, reach: inches(100), longestCut: inches(100) };
  test.each(
    STYLES.flatMap((style) =>
      everyAddOn(style).flatMap((options) => {
        const added = Object.entries(options).filter(
          ([option, id]) => ['ribbon', 'corners', 'notch', 'pull'].includes(option) && id !== 'none',
        );
        return added.length === 0 ? [] : [[`${style.id} ${added.flat().join(' ')}`, style, options] as const];
      }),
    ),
  )('%s', { timeout: 60_000 }, (_, style, options) => {
    const sized = legalBoxes(style, 40, swayFrom(22)).flatMap(
      (box) => mendSizes(style, { ...box, options }) ?? [],
    );
    expect(sized.length).toBeGreaterThan(9);
    for (const asked of sized.slice(0, 20)) {
      const box = layNet(style, asked);
      const plain = layNet(style, { ...asked, options: {} });
      expect(checkGeometry(style, box), JSON.stringify(asked)).toEqual([]);
      const stops = checkBox(style, box).filter(({ severity }) => severity === 'stop');
      expect(
        stops.map(({ code }) => code),
        JSON.stringify(asked),
      ).toEqual([]);
      expect(box.pieces.flatMap((piece) => cardTrouble(piece, tool, { faceUp: 'outside' }) ?? [])).toEqual(
        [],
      );
      const back = readFold(foldTextOf(box, style.name));
      expect(back.ok && back.pieces).toEqual(box.pieces);
      const worked = (net: typeof box) =>
        net.pieces.reduce((sum, { curves, edges }) => sum + curves.length + edges.length, 0);
      expect(worked(box)).toBeGreaterThan(worked(plain));
      expect(svgOf(box, '')).not.toBe(svgOf(plain, ''));
      expect(dxfOf(box)).not.toBe(dxfOf(plain));
    }
  });
});

describe('a ribbon hole below a rim', () => {
  const sizes = {
    width: inches(4),
    depth: inches(2),
    height: inches(3),
    flap: inches(1, 1, 4),
    ribbonHole: inches(0, 1, 4),
    ribbonDrop: inches(0, 1, 2),
  };

  it('lies half an inch below the middle of both sides', () => {
    const [piece] = boxOf('open-top', sizes, { ribbon: 'sides', order: 'front' }).pieces;
    // front 4 in, then left 2 in: 5 in; back 4 in, then right 2 in: 11 in. Flaps 1 1/4 in, walls 3 in, less 1/2 in: 3 3/4 in
    expect(middleOf(faceOf(piece!, 'left').holes[0]!)).toEqual([inches(5), inches(3, 3, 4)]);
    expect(middleOf(faceOf(piece!, 'right').holes[0]!)).toEqual([inches(11), inches(3, 3, 4)]);
    expect(faceOf(piece!, 'front').holes).toEqual([]);
  });

  it('keeps a quarter inch of card above it: 1/4 in wide at 3/8 in below the rim, no more', () => {
    const told = (sixteenths: number) => {
      const asked = { ...sizes, ribbonDrop: inches(0, 3, 8), ribbonHole: inches(0, sixteenths, 16) };
      const options = { ribbon: 'sides' };
      const { lengths } = nameValues(styleById('open-top')!, { sizes: asked, caliperUm: 305, options });
      return checkLimits(styleById('open-top')!, lengths, inches(0, 1, 16), options).map(({ code }) => code);
    };
    expect(told(4)).toEqual([]);
    expect(told(5)).toContain('ribbon-hole-too-wide');
  });

  it('lies in a wall that leans, square below the middle of its rim', () => {
    const bowl = { width: inches(2), rim: inches(3), slant: inches(2), ribbonDrop: inches(0, 1, 2) };
    const [piece] = boxOf('flared-bowl', bowl, { ribbon: 'sides' }).pieces;
    // walls 2 in on both sides of a base 2 in wide: the left one’s rim is the blank’s left edge
    expect(middleOf(faceOf(piece!, 'left').holes[0]!)).toEqual([inches(0, 1, 2), inches(3)]);
    expect(middleOf(faceOf(piece!, 'right').holes[0]!)).toEqual([inches(5, 1, 2), inches(3)]);
  });
});

describe('rounded corners', () => {
  it('take (1 − π/4) r² off each corner; school geometry', () => {
    const sizes = { cornerRadius: inches(0, 1, 2) };
    const [round] = boxOf('bag-topper', sizes, { corners: 'both' }).pieces;
    const [square] = boxOf('bag-topper', sizes, {}).pieces;
    const off = 2 * (1 - Math.PI / 4) * 12.7 ** 2;
    for (const panel of ['front', 'back']) {
      const lost = areaOf(square!, panel) - areaOf(round!, panel);
      // chords lie within 0.2 mm of the two quarter arcs
      expect(lost).toBeGreaterThanOrEqual(off - 0.1);
      expect(lost).toBeLessThan(off + 0.2 * Math.PI * 12.7);
    }
  });

  it('are stopped where they meet each other or a notch', () => {
    const codes = (options: Readonly<Record<string, string>>, cornerRadius: Ticks) => {
      const asked = { sizes: { cornerRadius, notchRadius: inches(1) }, caliperUm: 305, options };
      const { lengths } = nameValues(styleById('card-holder')!, asked);
      return checkLimits(styleById('card-holder')!, lengths, inches(0, 1, 16), options).map(
        ({ code }) => code,
      );
    };
    const [round, both] = [{ corners: 'front' }, { corners: 'front', notch: 'front' }];
    const { width } = {
      width: nameValues(styleById('card-holder')!, { sizes: {}, caliperUm: 305 }).lengths['coverAcross']!,
    };
    expect(codes(round, inches(1))).not.toContain('corners-meet');
    expect(codes(round, width)).toContain('corners-meet');
    // half the edge less the notch's 1 in and 1/8 in is what is left for a corner
    const left = (width / 2 - inches(1, 1, 8)) as Ticks;
    expect(codes(both, left)).not.toContain('corners-meet');
    expect(codes(both, (left + inches(0, 1, 16)) as Ticks)).toContain('corners-meet');
  });
});

describe('a thumb notch in the end of a pillow', () => {
  const sizes = { width: inches(3), height: inches(5), rise: inches(0, 1, 2), notchRadius: inches(0, 3, 8) };
  const [plain] = boxOf('pillow-pack', sizes, {}).pieces;
  const [notched] = boxOf('pillow-pack', sizes, { notch: 'one-end' }).pieces;

  it('takes off the flap what two circles share; school geometry', () => {
    // the flap’s edge is an arc of 3² / (8 · 1/2) + 1/4 = 2 1/2 in about a middle 2 1/2 in below its top, where the notch has its middle
    const [r, big] = [9.525, 63.5];
    const shared =
      r * r * Math.acos(r / (2 * big)) +
      big * big * Math.acos(1 - (r * r) / (2 * big * big)) -
      (r / 2) * Math.sqrt((2 * big) ** 2 - r * r);
    const lost = areaOf(plain!, 'frontLeft') - areaOf(notched!, 'frontLeft');
    expect(Math.abs(lost - shared)).toBeLessThan(0.2 * Math.PI * r);
    expect(lost).toBeGreaterThan(100);
    expect(areaOf(notched!, 'frontRight')).toBe(areaOf(plain!, 'frontRight'));
    expect(areaOf(notched!, 'backLeft')).toBe(areaOf(plain!, 'backLeft'));
  });

  it('is one arc of its radius between two arcs of the edge', () => {
    const radii = notched!.curves.map(({ radius }) => Number((radius / 320).toFixed(1)));
    expect(radii.filter((radius) => radius === 9.5)).toHaveLength(1);
    expect(radii.filter((radius) => radius === 63.5)).toHaveLength(9);
  });

  it('leaves a quarter inch of the flap below it: at most 3/4 in deep on ends that bow 1/2 in', () => {
    const told = (radius: Ticks) => {
      const options = { notch: 'both-ends' };
      const asked = { sizes: { ...sizes, width: inches(6), notchRadius: radius }, caliperUm: 305, options };
      const { lengths } = nameValues(styleById('pillow-pack')!, asked);
      return checkLimits(styleById('pillow-pack')!, lengths, inches(0, 1, 16), options).map(
        ({ code }) => code,
      );
    };
    expect(told(inches(0, 3, 4))).toEqual([]);
    expect(told(inches(0, 13, 16))).toContain('notch-too-large');
  });

  it('is cut by template on the card', () => {
    const box = boxOf('pillow-pack', sizes, { notch: 'one-end' });
    const cards = boxCards(box, trimmer).flatMap(({ steps }) => steps);
    const without = boxCards(boxOf('pillow-pack', sizes, {}), trimmer).flatMap(({ steps }) => steps);
    expect(cards.flatMap(({ template }) => template).join()).not.toBe(
      without.flatMap(({ template }) => template).join(),
    );
  });
});

describe('a ribbon pull', () => {
  const drawer = styleById('sleeve-drawer')!;
  const sizes = {
    width: inches(3),
    depth: inches(4),
    height: inches(1),
    pullApart: inches(0, 3, 4),
    pullHole: inches(0, 1, 8),
    pullLoop: inches(1),
    pullSlit: inches(0, 1, 2),
  };
  const told = (options: Readonly<Record<string, string>>, more: Readonly<Record<string, Ticks>>) => {
    const { lengths } = nameValues(drawer, { sizes: { ...sizes, ...more }, caliperUm: 305, options });
    return checkLimits(drawer, lengths, inches(0, 1, 16), options).map(({ code }) => code);
  };

  it('goes through two holes beside the middle of the drawer’s front', () => {
    const [piece] = boxOf('sleeve-drawer', sizes, { pull: 'drawer' }).pieces;
    // side wall 1 in and half of 3 in: the middle is at 2 1/2 in; the front lies 1 in high below the base
    const middles = faceOf(piece!, 'front').holes.map(middleOf);
    expect(middles.toSorted((p, q) => p[0]! - q[0]!)).toEqual([
      [inches(2, 1, 8), inches(0, 1, 2)],
      [inches(2, 7, 8), inches(0, 1, 2)],
    ]);
    // there and back 2 in, 3/4 in between the holes, 1 1/2 in for each knot
    expect(piece!.threads).toMatchObject([{ panel: 'front', length: inches(5, 3, 4) }]);
  });

  it('goes double through a slit, which is cut and falls apart nowhere', () => {
    const [piece] = boxOf('sleeve-drawer', sizes, { pull: 'drawer', pullWay: 'slit' }).pieces;
    const slits = piece!.edges.filter(({ kind, left, right }) => kind === 'slit' && left === right);
    expect(slits.map(({ a, b }) => Math.abs(a.x - b.x))).toEqual([inches(0, 1, 2)]);
    expect(piece!.threads).toMatchObject([{ length: inches(5) }]);
  });

  it('keeps a quarter inch of card round its openings, and stays clear of a hole or notch', () => {
    const holes = { pull: 'drawer', pullWay: 'holes' };
    expect(told(holes, {})).toEqual([]);
    // 3 in less 1/4 in on both sides less a hole of 1/8 in: 2 3/8 in
    expect(told(holes, { pullApart: inches(2, 3, 8) })).toEqual([]);
    expect(told(holes, { pullApart: inches(2, 7, 16) })).toContain('pull-holes-near-side');
    expect(told(holes, { pullApart: inches(0, 7, 16), pullHole: inches(0, 1, 4) })).toContain(
      'pull-holes-near-each-other',
    );
    expect(told(holes, { height: inches(0, 9, 16) })).toContain('pull-hole-near-edge');
    expect(told({ ...holes, pullWay: 'slit' }, { height: inches(0, 7, 16) })).toContain('pull-slit-too-long');
    expect(told({ ...holes, ribbon: 'drawer' }, {})).toContain('pull-meets-ribbon');
    expect(told({ ...holes, notch: 'drawer' }, {})).toContain('pull-meets-notch');
  });

  it('is a step of the card, with the length to cut', () => {
    const steps = boxCards(boxOf('sleeve-drawer', sizes, { pull: 'drawer' }), trimmer).flatMap(
      (card) => card.steps,
    );
    const step = steps.find(({ headline }) => headline.startsWith('Thread'));
    expect(step?.headline).toBe('Thread 5 3/4 in of ribbon through the front wall.');
    expect(step?.tips).toEqual(['Out through one hole and back through the other; knot each end inside.']);
  });
});
