import { describe, expect, it } from 'vitest';
import { BLEED, drawDecorateMap } from '../../../src/core/draw/net/decorate-map';
import { hiddenAreas } from '../../../src/core/draw/net/keep-free';
import { closingStates, dot, insideOf, placeOf, posesOf } from '../../../src/core/fold';
import { panelWays } from '../../../src/core/fold/panel-way';
import { layNet } from '../../../src/core/net';
import { areaOf, counterClockwise } from '../../../src/core/plane';
import { STYLES } from '../../../src/core/styles';
import { styleById } from '../../../src/core/styles/registry';
import { inches, toMm, USUAL_FINEST } from '../../../src/core/units';

const ruler = { unit: 'in', finest: USUAL_FINEST.in } as const;
const piecesOf = (style: string) => layNet(styleById(style)!, { sizes: {}, caliperUm: 300 }).pieces;
const [trade] = piecesOf('open-top');
const wayOf = (piece: NonNullable<typeof trade>, panel: string) =>
  panelWays(piece)[piece.faces.findIndex((face) => face.panel === panel)];

describe('the map for decorating while flat', () => {
  it('knows which way is up on the walls of a box that is wrapped round', () => {
    for (const wall of ['front', 'left', 'back', 'right'])
      expect(wayOf(trade!, wall)).toMatchObject({
        stands: 'upright',
        up: [expect.closeTo(0), expect.closeTo(1)],
      });
  });

  it('turns the walls of a tray outwards: each one away from the base', () => {
    const [tray] = piecesOf('tray-lid');
    // Inside up, the wall on the right of the base has its rim on the right.
    expect(wayOf(tray!, 'front')?.up).toEqual([expect.closeTo(0), expect.closeTo(-1)]);
    expect(wayOf(tray!, 'back')?.up).toEqual([expect.closeTo(0), expect.closeTo(1)]);
    expect(wayOf(tray!, 'base')?.stands).toBe('bottom');
  });

  it('turns a piece over where its style declares a lid, whatever it is called', () => {
    const [tray, lid] = piecesOf('tray-lid');
    expect(lid).toMatchObject({ id: 'lid', lid: true });
    expect(wayOf(lid!, 'base')?.stands).toBe('top');
    expect(wayOf({ ...tray!, id: 'cover', lid: true }, 'base')?.stands).toBe('top');
    const { lid: _, ...unnamed } = lid!;
    expect(wayOf(unnamed, 'base')?.stands).toBe('bottom');
  });

  it('points up in space on every upright face of every style', () => {
    for (const { id } of STYLES)
      for (const piece of piecesOf(id).filter(({ lid }) => !lid)) {
        const poses = posesOf(piece, closingStates(piece).at(-1) ?? []);
        const ways = panelWays(piece);
        const bottom = piece.faces.findIndex(({ role }) => role === 'base');
        if (bottom < 0) continue;
        ways.forEach(({ stands, up: [x, y] }, face) => {
          if (stands !== 'upright') return;
          const from = placeOf(poses[face]!, 0, 0);
          const to = placeOf(poses[face]!, x, y);
          const rise = dot([to[0] - from[0], to[1] - from[1], to[2] - from[2]], insideOf(poses[bottom]!));
          expect(rise, `${id} ${piece.faces[face]!.panel}`).toBeGreaterThan(0.5);
        });
      }
  });

  it('keeps the tab of the trade box bare, whole: 1 × 2 15/16 in less two corners 1 × 5/16', () => {
    const tab = trade!.faces.findIndex(({ panel }) => panel === 'tab');
    const [area] = hiddenAreas(trade!).filter(({ face }) => face === tab);
    expect(area?.glued).toBe(true);
    expect(area && areaOf(counterClockwise(area.ring))).toBeCloseTo(25.4 ** 2 * (2.9375 - 0.3125), 3);
  });

  it('hides no part of a wall that stands alone', () => {
    const front = trade!.faces.findIndex(({ panel }) => panel === 'front');
    expect(hiddenAreas(trade!).some(({ face, glued }) => face === front && glued)).toBe(false);
  });

  it('never hides more of a face than there is of it', () => {
    for (const { id } of STYLES)
      for (const piece of piecesOf(id))
        for (const { face, ring } of hiddenAreas(piece)) {
          const whole = piece.faces[face]!.ring.map(({ x, y }) => [toMm(x), toMm(y)] as const);
          expect(areaOf(counterClockwise(ring))).toBeLessThanOrEqual(areaOf(whole) * 1.0001);
        }
  });

  it('draws the outside at true size with the bleed, the seam and a name on every panel', () => {
    const map = drawDecorateMap(trade!, { ruler, scale: 1, textMm: 4.6 });
    const texts = map.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
    expect(texts).toEqual(expect.arrayContaining(['front', 'back', 'left', 'right', 'seam', 'leave plain']));
    const across = map.marks.filter((mark) => mark.kind === 'line' && mark.ink === 'bleed');
    const xs = across.flatMap((mark) => (mark.kind === 'line' ? mark.points.map(([x]) => x) : []));
    // 11 in of card and 1/8 in of bleed at both ends.
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(toMm(inches(11)) + 2 * toMm(BLEED), 6);
  });
});
