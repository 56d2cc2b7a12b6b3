import { describe, expect, it } from 'vitest';
import type { DressingPiece, PieceFit } from '../../../shared/workbook';
import { bandLength, fitPiece, layerOn, outsideSize, panelSize } from '../../../src/core/dress';
import { layNet } from '../../../src/core/net';
import { styleById } from '../../../src/core/styles';
import { inches, markAbove, millimetres, ticks, toInches, USUAL_FINEST } from '../../../src/core/units';

const net = layNet(styleById('open-top')!, { sizes: { flap: inches(1, 1, 2) }, caliperUm: 305 }); // .012 in
const sixteenth = USUAL_FINEST.in;

const piece = (fit?: PieceFit): DressingPiece => ({
  id: 'piece',
  kind: 'layer',
  name: 'Piece',
  widthMm: 50.8,
  heightMm: 25.4,
  perBox: 1,
  grain: 'free',
  paperId: null,
  ...(fit && { fit }),
});

describe('layers, bands and liners from the box', () => {
  it('leaves 1/8 in all round: 4 1/4 × 5 1/2 takes 4 × 5 1/4', () => {
    // common practice, no source: a "1/4 in mat"
    expect(layerOn({ across: inches(4, 1, 4), up: inches(5, 1, 2) }, inches(0, 1, 8))).toEqual({
      across: inches(4),
      up: inches(5, 1, 4),
    });
  });

  it.each([
    ['front', 3.25, 2.75],
    ['right', 1.25, 2.75],
  ])('fits a layer to the %s panel of the 3 1/2 × 1 1/2 × 3 box: %d × %d', (panel, across, up) => {
    const size = fitPiece(net, piece({ rule: 'on-panel', panel, revealMm: 3.175 }), sixteenth);
    expect(size && [size.across, size.up].map(toInches)).toEqual([across, up]);
  });

  it('goes round with four calipers and a lap: 10.548 in, so 10 5/8 on eighths', () => {
    // girth 2 × (3 1/2 + 1 1/2) = 10; t .012; lap 1/2. Derived
    const length = bandLength(inches(10), millimetres(0.3048), inches(0, 1, 2));
    expect(toInches(length)).toBeCloseTo(10.548, 3);
    expect(markAbove(length, inches(0, 1, 8))).toBe(inches(10, 5, 8));
    const band = piece({ rule: 'around', heightMm: 25.4, lapMm: 12.7 });
    expect(fitPiece(net, band, inches(0, 1, 8))).toEqual({ across: inches(10, 5, 8), up: inches(1) });
  });

  it('keeps a liner narrower than the room, and stands it above the rim', () => {
    const size = fitPiece(net, piece({ rule: 'behind', aboveRimMm: 76.2, easeMm: 0 }), sixteenth);
    expect(size?.across).toBe(inches(3, 7, 16)); // the room is 3 1/2 − .012
    expect(size?.up).toBeLessThanOrEqual(net.inside.height + inches(3));
  });

  it('takes a typed size as it is', () => {
    expect(fitPiece(net, piece(), sixteenth)).toEqual({ across: inches(2), up: inches(1) });
  });

  it('has no size on a panel that is gone, or where nothing is left', () => {
    expect(fitPiece(net, piece({ rule: 'on-panel', panel: 'gone', revealMm: 0 }), sixteenth)).toBeNull();
    expect(fitPiece(net, piece({ rule: 'on-panel', panel: 'right', revealMm: 30 }), sixteenth)).toBeNull();
  });

  it('measures panels as they lie and the box as it stands', () => {
    expect(panelSize(net, 'tab')).toEqual({ across: inches(1), up: inches(2, 15, 16) });
    const t = ticks(98); // 305 µm is 97.6 ticks, taken up
    expect(outsideSize(net).width).toBe(inches(3, 1, 2) + t);
  });
});
