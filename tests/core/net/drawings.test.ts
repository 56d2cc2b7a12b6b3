import { describe, expect, it } from 'vitest';
import { dxfOf, layNet, linesOf, svgOf } from '../../../src/core/net';
import type { BoxStyle } from '../../../src/core/styles';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import { pillowPack } from '../../../src/core/styles/boxes/pillow-pack';
import { trayLid } from '../../../src/core/styles/boxes/tray-lid';
import { inches } from '../../../src/core/units/ticks';

const boxOf = (style: BoxStyle) =>
  layNet(style, { sizes: style === openTop ? { flap: inches(1, 1, 2) } : {}, caliperUm: 305 });

/** DXF is pairs of lines, a group code and its value; this reads them back into entities. */
function entitiesOf(text: string): Record<number, string>[] {
  const rows = text.split('\r\n');
  const entities: Record<number, string>[] = [];
  for (let at = 0; at + 1 < rows.length; at += 2) {
    const [code, value] = [Number(rows[at]), rows[at + 1] ?? ''];
    if (code === 0) entities.push({});
    const last = entities[entities.length - 1];
    if (last !== undefined) last[code] = value;
  }
  return entities;
}

describe('a net as DXF', () => {
  it('has every line of the trade box on its layer, in millimetres', () => {
    const lines = entitiesOf(dxfOf(boxOf(openTop))).filter((entity) => entity[0] === 'LINE');
    const on = (layer: string) =>
      lines
        .filter((line) => line[8] === layer)
        .map((line) => [10, 20, 11, 21].map((code) => Number(line[code])));
    // scores at 3 1/2, 5, 8 1/2 and 10 in from 1 1/2 up to 4 1/2, and across at 1 1/2: × 25.4
    expect(on('SCORE')).toEqual([
      [88.9, 38.1, 88.9, 114.3],
      [127, 38.1, 127, 114.3],
      [215.9, 38.1, 215.9, 114.3],
      [254, 39.6875, 254, 114.3],
      [0, 38.1, 254, 38.1],
    ]);
    expect(on('SLIT').map(([x]) => x)).toEqual([88.9, 127, 215.9]);
    // 1/32 in off both sides of the flaps that fold in first: right, left and front
    expect(on('PARE').map(([x]) => x)).toEqual([
      89.69375, 126.20625, 216.69375, 253.20625, 0.79375, 88.10625,
    ]);
  });

  it('opens and ends its sections, and names only layers it declares', () => {
    const entities = entitiesOf(dxfOf(boxOf(trayLid)));
    const kinds = entities.map((entity) => entity[0]);
    expect(kinds.filter((kind) => kind === 'SECTION')).toHaveLength(3);
    expect(kinds.filter((kind) => kind === 'ENDSEC')).toHaveLength(3);
    expect(kinds[kinds.length - 1]).toBe('EOF');
    const layers = new Set(entities.filter((entity) => entity[0] === 'LAYER').map((entity) => entity[2]));
    for (const entity of entities.filter(({ 0: kind }) => kind === 'LINE' || kind === 'ARC'))
      expect(layers).toContain(entity[8]);
  });

  it('keeps curved scores as true arcs that end where the net’s curves end', () => {
    const box = boxOf(pillowPack);
    const arcs = entitiesOf(dxfOf(box)).filter((entity) => entity[0] === 'ARC' && entity[8] === 'SCORE');
    expect(arcs).toHaveLength(4);
    const ends = arcs.flatMap((arc) =>
      [50, 51].map((code) => {
        const [x, y, radius, angle] = [10, 20, 40, code].map((group) => Number(arc[group]));
        const turn = ((angle ?? 0) * Math.PI) / 180;
        return [(x ?? 0) + (radius ?? 0) * Math.cos(turn), (y ?? 0) + (radius ?? 0) * Math.sin(turn)]
          .map((mm) => (Math.round(mm * 100) / 100 + 0).toFixed(2))
          .join();
      }),
    );
    // tips at 1/2 and 5 1/2 in across, 0, 3 and 6 in up
    expect(new Set(ends)).toEqual(
      new Set([12.7, 139.7].flatMap((x) => [0, 76.2, 152.4].map((y) => `${x.toFixed(2)},${y.toFixed(2)}`))),
    );
    // counter-clockwise from start to end, each spans twice 36.87 degrees, not the other way round
    for (const arc of arcs) expect((Number(arc[51]) - Number(arc[50]) + 360) % 360).toBeCloseTo(73.74, 2);
  });
});

describe('a net as SVG', () => {
  it('is true size, with one group each for cut, score, slit, what is pared off and glue', () => {
    const svg = svgOf(boxOf(openTop), 'Tea & <soap>');
    expect(svg).toContain('width="279.4mm" height="114.3mm" viewBox="0 0 279.4 114.3"');
    expect([...svg.matchAll(/<g id="(\w+)">/g)].map(([, id]) => id)).toEqual([
      'cut',
      'score',
      'slit',
      'pare',
      'glue',
    ]);
    expect(svg).toContain('<title>Tea &amp; &lt;soap&gt;</title>');
    // y runs down: the bottom score, 38.1 up, is drawn 76.2 from the top
    expect(svg).toContain('M0 76.2L254 76.2');
  });

  it('lays lid beside tray, 10 mm apart: 152.4 + 10 + 155.575 mm', () => {
    expect(svgOf(boxOf(trayLid), 'tray')).toContain('width="317.975mm"');
  });

  it('bows the pillow’s scores inwards as the net does', () => {
    const [piece] = boxOf(pillowPack).pieces;
    const arc = /M12\.7 [\d.]+A63\.5 63\.5 0 0 0 12\.7 [\d.]+/.exec(svgOf(boxOf(pillowPack), 'pillow'));
    expect(arc).not.toBeNull();
    expect(piece?.curves).toHaveLength(8);
  });
});

describe('the lines of a net, for the table beside it', () => {
  it('are merged along their carrier, and each edge is in one line only', () => {
    for (const style of [openTop, trayLid, pillowPack] as BoxStyle[])
      for (const piece of boxOf(style).pieces) {
        const drawn = linesOf(piece).flatMap(({ edges }) => edges);
        const all = piece.edges.flatMap(({ kind }, at) => (kind === 'join' ? [] : [at]));
        expect(drawn.sort((p, q) => p - q)).toEqual(all);
      }
  });

  it('name scores before slits, slits before cuts, cuts before edges, upright ones first from the left', () => {
    const [piece] = boxOf(openTop).pieces;
    if (piece === undefined) throw new Error('one piece');
    const lines = linesOf(piece);
    expect(lines.map(({ kind }) => kind)).toEqual([
      ...Array<string>(5).fill('score'),
      ...Array<string>(3).fill('slit'),
      ...Array<string>(3).fill('cut'),
      ...Array<string>(4).fill('edge'),
    ]);
    expect(lines.slice(0, 4).map(({ from }) => from.x / 8128)).toEqual([3.5, 5, 8.5, 10]);
  });

  it('measure a curve along its arc: radius 2 1/2 in over 73.74° is 3.2175 in', () => {
    const [piece] = boxOf(pillowPack).pieces;
    const curve = piece && linesOf(piece).find((line) => line.curve !== null);
    expect((curve?.length ?? 0) / 8128).toBeCloseTo(3.2175, 4);
  });
});
