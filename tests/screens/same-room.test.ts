import { expect, it } from 'vitest';
import type { Recipe } from '../../shared/workbook';
import { checkBox } from '../../src/core/checks';
import { layNet } from '../../src/core/net';
import { ticksOfMm } from '../../src/core/rows/lengths';
import { styleById } from '../../src/core/styles';
import { inches } from '../../src/core/units';
import { inStyle } from '../../src/screens/marks/same-room';

/** Room for a cube of so many inches. */
const inPyramid = (side: number) => {
  const style = styleById('square-pyramid')!;
  const room = { width: inches(side), depth: inches(side), height: inches(side) };
  const ruler = { unit: 'in', finest: inches(0, 1, 16) } as const;
  const { sizesMm, options } = inStyle({ caliperUm: 300 } as Recipe, style, room, ruler);
  const sizes = Object.fromEntries(Object.entries(sizesMm).map(([name, mm]) => [name, ticksOfMm(mm)]));
  const net = layNet(style, { sizes, options, caliperUm: 300, mark: ruler.finest });
  return { net, stops: checkBox(style, net).filter(({ severity }) => severity === 'stop') };
};

it('a tray of the same room gets the lid that a new one has: half as deep as the tray, on the marks', () => {
  const style = styleById('tray-lid')!;
  const room = { width: inches(3), depth: inches(2), height: inches(1, 3, 4) };
  const ruler = { unit: 'in', finest: inches(0, 1, 16) } as const;
  const { sizesMm } = inStyle({ caliperUm: 300 } as Recipe, style, room, ruler);
  // 1 3/4 in and a card of .3 mm: walls of 1 13/16, and half of that is 29/32, between 7/8 and 15/16
  expect(ticksOfMm(sizesMm['height'] ?? 0)).toBe(inches(1, 13, 16));
  expect([inches(0, 7, 8), inches(0, 15, 16)]).toContain(ticksOfMm(sizesMm['lip'] ?? 0));
});

// A side so steep is too narrow 7/8 in below its tip for a ribbon hole with a quarter inch of card beside it; glued it has no hole.
it.each([1, 2, 3])('the room of a %i in cube as a pyramid can be kept', (side) => {
  const { net, stops } = inPyramid(side);
  expect(stops).toEqual([]);
  expect(Math.min(net.inside.width, net.inside.depth, net.inside.height)).toBeGreaterThanOrEqual(
    inches(side),
  );
});
