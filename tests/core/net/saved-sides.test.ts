import { describe, expect, it } from 'vitest';
import { placePiece } from '../../../src/core/dress';
import { layNet } from '../../../src/core/net';
import type { DressingPiece } from '../../../src/core/rows';
import { styleById } from '../../../src/core/styles';
import { inches } from '../../../src/core/units';

const tag = (panel: string, part?: string): DressingPiece => ({
  id: 'tag',
  kind: 'tag',
  name: 'Tag',
  widthMm: 10,
  heightMm: 10,
  perBox: 1,
  grain: 'free',
  paperId: null,
  shape: 'rectangle',
  placed: { panel, ...(part === undefined ? {} : { part }), leftMm: 0, downMm: 0 },
});

const netOf = (id: string, options = {}) => layNet(styleById(id)!, { sizes: {}, options, caliperUm: 300 });

describe('a box saved while sides were named as seen from inside', () => {
  // the open-top box at its usual sizes, the front first: 3 1/2, 1 1/2, 3 1/2 and 1 1/2 in, and a tab of 1 in: 11 in across.
  // its second wall, saved as `right`, runs from 3 1/2 to 5 in; with the outside up its left edge is 11 − 5 = 6 in from the left
  it('keeps a tag on the panel it was put on, which is now called by its true side', () => {
    const placed = placePiece(netOf('open-top'), tag('right'), {
      across: inches(0, 1, 2),
      up: inches(0, 1, 2),
    });
    expect(placed).toMatchObject({ left: inches(6), panel: 'left', part: 'box' });
  });

  it('keeps its window in the wall it was cut in', () => {
    const faces = netOf('open-top', { window: 'right' }).pieces[0]?.faces ?? [];
    const cut = faces.filter(({ holes }) => holes.length > 0);
    expect(cut.map(({ panel, ring }) => [panel, ring[0]?.x])).toEqual([['left', inches(3, 1, 2)]]);
  });

  it('keeps a tag on a lid, which is worn the other way up, and one on its tray as it is', () => {
    const net = netOf('tray-lid');
    const size = { across: inches(0, 1, 2), up: inches(0, 1, 2) };
    expect(placePiece(net, tag('left', 'lid'), size)?.panel).toBe('right');
    expect(placePiece(net, tag('left', 'tray'), size)?.panel).toBe('left');
  });
});
