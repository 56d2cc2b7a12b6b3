import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { workbookFile } from '../../../shared/workbook';
import { printWayOf, printWayOn, turnedPrint } from '../../../src/core/dress';
import { layNet } from '../../../src/core/net';
import { planEvent } from '../../../src/core/plan';
import { STYLES, styleById } from '../../../src/core/styles/registry';
import { inches } from '../../../src/core/units';
import { planSheets } from '../../../src/core/yield';
import { quartersOf } from '../../../src/core/yield/interlock/outline';
import { LETTER, partOf, toolOf } from '../yield/sheets-at-hand';

const netOf = (id: string) => layNet(styleById(id)!, { sizes: {}, caliperUm: 300 });

describe('paper printed one way', () => {
  it('stands on the front, and is turned on the panels that hang on the other sides of a base', () => {
    // Drawn on paper: the four walls of a tube stand side by side in its net; those of a tray hang on the four sides of its base.
    expect(turnedPrint(netOf('open-top'))).toEqual([]);
    expect(turnedPrint(netOf('tray'))).toEqual([
      { panel: 'left', lies: 'sideways' },
      { panel: 'right', lies: 'sideways' },
      { panel: 'back', lies: 'upside-down' },
    ]);
    expect(turnedPrint(netOf('pillow-pack'))).toEqual([{ panel: 'back', lies: 'upside-down' }]);
  });

  it('never turns the front of any style', () => {
    for (const { id } of STYLES)
      expect(
        turnedPrint(netOf(id)).map(({ panel }) => panel),
        id,
      ).not.toContain('front');
  });

  it('runs up a band round the walls and along one that goes over the top; along the panel under a layer', () => {
    const piece = {
      id: 'p',
      name: 'P',
      widthMm: 10,
      heightMm: 10,
      perBox: 1,
      grain: 'free',
      paperId: null,
    } as const;
    const way = (fit: Parameters<typeof printWayOn>[1]['fit']) =>
      printWayOn(netOf('tray'), { ...piece, kind: 'band', ...(fit && { fit }) });
    expect(way({ rule: 'around', heightMm: 20, lapMm: 10 })).toBe('up');
    expect(way({ rule: 'around', heightMm: 20, lapMm: 10, way: 'front' })).toBe('across');
    expect(way({ rule: 'on-panel', panel: 'left', revealMm: 2 })).toBe('across');
    expect(way({ rule: 'on-panel', panel: 'front', revealMm: 2 })).toBe('up');
    expect(printWayOf(netOf('open-top').pieces[0]!)).toBe('up');
  });

  it('takes twice the sheets where a piece may not be turned: 5 × 4 in from letter, two to a sheet and not four', () => {
    // Upright: 8 1/2 / 5 = 1 across and 11 / 4 = 2 up. Turned: 2 across and 2 up.
    const part = { ...partOf('card', inches(5), inches(4), 8), grain: 'up' } as const;
    const free = planSheets([{ ...part, grain: 'free' }], LETTER, toolOf());
    const oneWay = planSheets([part], { ...LETTER, grain: 'up', oneWay: true }, toolOf());
    expect([free.sheets, oneWay.sheets, oneWay.proven]).toEqual([2, 4, true]);
  });

  it('is not laid on its head by the search that nests outlines', () => {
    expect(quartersOf('up', { grain: 'up' })).toEqual([0, 2]);
    expect(quartersOf('up', { grain: 'up', oneWay: true })).toEqual([0]);
    expect(quartersOf('across', { grain: 'up', oneWay: true })).toEqual([1]);
  });

  it('is told of by panel, for every box that is cut from it', () => {
    const file = workbookFile.parse(JSON.parse(readFileSync('demo-data/seed-swap-supper.json', 'utf8')));
    const [event] = file.events;
    event!.lines[0]!.recipeId = 'bean-pillow';
    event!.lines[0]!.dressingId = null;
    const turned = () => planEvent(file, event!.id)!.findings.filter(({ code }) => code === 'print-turned');
    expect(turned()).toEqual([]);
    for (const paper of file.papers) paper.oneWay = true;
    expect(turned().map(({ facts }) => facts['panels'])).toEqual([['back']]);
    // Panels are named as a maker says them.
    const [pillow] = file.recipes.filter(({ id }) => id === 'bean-pillow');
    Object.assign(pillow!, { styleId: 'envelope-box', sizesMm: {}, options: {} });
    expect(turned().flatMap(({ facts }) => facts['panels'])).toContain('right spine');
  });
});
