import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { dxfOf, layNet, linesOf, svgOf } from '../../src/core/net';
import { trayLid } from '../../src/core/styles/boxes/tray-lid';

type Ends = readonly [number, number, number, number];

/** Lines by their ends, whichever way they run, in an order of their own. */
const byEnds = (lines: readonly Ends[]): string[] =>
  lines
    .map(([x1, y1, x2, y2]) =>
      [`${x1.toFixed(4)},${y1.toFixed(4)}`, `${x2.toFixed(4)},${y2.toFixed(4)}`].sort().join(' '),
    )
    .sort();

describe('several pieces, read by others', () => {
  // The lid lies beside the tray, 152.4 + 10 mm from the left.
  const box = layNet(trayLid, { sizes: {}, caliperUm: 305 });
  const mm = (ticks: number) => ticks / 320;
  const net = (layer: 'cut' | 'score' | 'slit') =>
    byEnds(
      box.pieces.flatMap((piece, place) =>
        linesOf(piece).flatMap(({ kind, from, to }): Ends[] => {
          const left = place === 0 ? 0 : 162.4;
          const named = kind === 'edge' ? 'cut' : kind;
          return named === layer ? [[mm(from.x) + left, mm(from.y), mm(to.x) + left, mm(to.y)]] : [];
        }),
      ),
    );

  it('every line of both stands in the DXF where the net has it: dxf-parser 1.1.2', () => {
    const read = new DxfParser().parseSync(dxfOf(box));
    for (const layer of ['cut', 'score', 'slit'] as const) {
      const lines = (read?.entities ?? []).flatMap((entity): Ends[] => {
        if (entity.layer !== layer.toUpperCase() || !('vertices' in entity)) return [];
        const [a, b] = entity.vertices as { x: number; y: number }[];
        return a && b ? [[a.x, a.y, b.x, b.y]] : [];
      });
      expect(net(layer), layer).not.toEqual([]);
      expect(byEnds(lines), layer).toEqual(net(layer));
    }
  });

  it('and in the SVG, piece by piece in named groups: jsdom 29.1.1', () => {
    const document = new DOMParser().parseFromString(svgOf(box, 'Tray'), 'image/svg+xml');
    const up = Math.max(...box.pieces.map(({ blank }) => mm(blank.up)));
    for (const layer of ['cut', 'score', 'slit'] as const) {
      const groups = [...document.querySelectorAll(`#${layer} > g`)];
      expect(groups.map((group) => group.querySelector('title')?.textContent)).toEqual(['Tray', 'Lid']);
      const lines = groups.flatMap((group) => {
        const path = group.querySelector('path')?.getAttribute('d') ?? '';
        return [...path.matchAll(/M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)/g)].map(([, ...ends]): Ends => {
          const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = ends.map(Number);
          return [x1, up - y1, x2, up - y2];
        });
      });
      expect(byEnds(lines), layer).toEqual(net(layer));
    }
  });
});
