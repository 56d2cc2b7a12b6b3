import { describe, expect, it } from 'vitest';
import { outsideOf } from '../../../src/core/draw/step/outside-at-most';
import { foldPiece, insideOf, placeOf } from '../../../src/core/fold';
import { layersInside } from '../../../src/core/fold/layers';
import { outsideExtent, roomExtent, solidFigure } from '../../../src/core/fold/solid-figure';
import { asItStands, layNet } from '../../../src/core/net';
import { STYLES } from '../../../src/core/styles';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import { tray } from '../../../src/core/styles/boxes/tray';

const CALIPER_UM = 300;
const pieceOf = (style: (typeof STYLES)[number]) =>
  asItStands(layNet(style, { sizes: {}, options: {}, caliperUm: CALIPER_UM }))[0]!;

describe('a piece to be turned in the hand', () => {
  it('the trade box stands 3 1/2 wide, 1 1/2 deep and 3 in high, with a caliper of card outside it all round', () => {
    const piece = pieceOf(openTop);
    const figure = solidFigure(piece, CALIPER_UM);
    const { low, high } = outsideExtent(piece, figure);
    const [wide, deep, tall] = [0, 1, 2].map((at) => high[at]! - low[at]!);
    // 3.5 in = 88.9 mm and 1.5 in = 38.1 mm from score to score, and 0.3 mm of card on both sides; 3 in = 76.2 mm and one floor.
    expect(wide).toBeCloseTo(88.9 + 0.6, 6);
    expect(deep).toBeCloseTo(38.1 + 0.6, 6);
    expect(tall).toBeCloseTo(76.2 + 0.3, 6);
    const room = roomExtent(piece, figure);
    expect(room.high[0] - room.low[0]).toBeCloseTo(88.9, 6);
    expect(room.high[2] - room.low[2]).toBeCloseTo(76.2, 6);
  });

  it('its frame is right-handed and square, front towards the viewer, for every style', () => {
    for (const style of STYLES) {
      const piece = pieceOf(style);
      const [right, back, up] = solidFigure(piece, CALIPER_UM).standing;
      const cross = [
        right[1] * back[2] - right[2] * back[1],
        right[2] * back[0] - right[0] * back[2],
        right[0] * back[1] - right[1] * back[0],
      ];
      for (const at of [0, 1, 2]) expect(cross[at], style.id).toBeCloseTo(up[at]!, 6);
      expect(Math.hypot(...up), style.id).toBeCloseTo(1, 6);
    }
  });

  it('lies flat at 0, is the closed box at the end, and goes between them without a jump, for every style', () => {
    for (const style of STYLES) {
      const piece = pieceOf(style);
      const figure = solidFigure(piece, CALIPER_UM);
      for (const pose of figure.posesAt(0)) expect(insideOf(pose), style.id).toEqual([0, 0, 1]);
      const closed = figure.posesAt(figure.acts).flat();
      for (const [i, part] of foldPiece(piece)
        .flatMap(({ pose }) => [...pose])
        .entries())
        expect(closed[i], style.id).toBeCloseTo(part, 9);
      for (let act = 1; act < figure.acts; act++) {
        const [before, after] = [figure.posesAt(act - 1e-6), figure.posesAt(act)];
        figure.faces.forEach(({ ring: [[x, y] = [0, 0]] }, at) => {
          const [a, b] = [placeOf(before[at]!, x, y), placeOf(after[at]!, x, y)];
          expect(Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]), `${style.id} act ${act}`).toBeLessThan(
            0.01,
          );
        });
      }
    }
  });

  it('puts the front flap of the trade box outside the side flaps, and the back flap outside that', () => {
    const piece = pieceOf(openTop);
    const layers = layersInside(piece);
    const layer = (panel: string) => layers.get(piece.faces.findIndex((face) => face.panel === panel)) ?? 0;
    expect(layer('rightFlap')).toBeLessThan(layer('frontFlap'));
    expect(layer('frontFlap')).toBeLessThan(layer('backFlap'));
  });

  it('things go into a tray when it is closed, and under a tucked lid before it is tucked', () => {
    const flat = solidFigure(pieceOf(tray), CALIPER_UM);
    expect(flat.openUntil).toBe(flat.acts);
    const tuck = STYLES.find(({ id }) => id === 'straight-tuck')!;
    const lidded = solidFigure(pieceOf(tuck), CALIPER_UM);
    expect(lidded.openUntil).toBe(lidded.acts - 1);
  });
});

describe('what the closed box takes up', () => {
  it('a tuck box stands on its lower lid: outside as wide, deep and high as its room, and card round it', () => {
    for (const id of ['straight-tuck', 'reverse-tuck']) {
      const net = layNet(STYLES.find((style) => style.id === id)!, { sizes: {}, caliperUm: CALIPER_UM });
      const figure = solidFigure(net.pieces[0]!, CALIPER_UM);
      const { low, high } = outsideExtent(net.pieces[0]!, figure);
      const [wide, deep, tall] = [0, 1, 2].map((at) => high[at]! - low[at]!);
      // 3 1/2 × 1 1/2 × 3 in from score to score, and card of 0.3 mm on both sides.
      expect([wide, deep, tall].map((mm) => Number(mm!.toFixed(3)))).toEqual([89.5, 38.7, 76.8]);
    }
  });

  it('is named as its room is, for every style', () => {
    for (const style of STYLES) {
      const net = layNet(style, { sizes: {}, caliperUm: CALIPER_UM });
      const { width, depth, height } = net.inside;
      const pieces = asItStands(net);
      const piece = pieces.find(({ shell }) => shell.length > 0) ?? pieces[0]!; // a lid is less high than the room
      const sides = outsideOf(net, outsideExtent(piece, solidFigure(piece, CALIPER_UM)));
      const around = sides[0] >= width && sides[1] >= depth && sides[2] >= height;
      expect(around, style.id).toBe(true);
    }
  });
});
