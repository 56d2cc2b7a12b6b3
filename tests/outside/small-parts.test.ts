import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cautionsOf, type Hazard } from '../../shared/catalogue';
import { ITEMS } from '../../shared/catalogue/items';
import type { CareFlag, Item, ItemShape } from '../../src/core/rows/contents';
import { callDesk } from '../desk/call-desk';

const thing = (name: string, size: ItemShape, care: readonly CareFlag[] = []): Item => ({
  id: 'thing',
  name,
  size,
  count: 1,
  wrapMm: 0,
  aboveRimMm: 0,
  thisWayUp: false,
  fragile: false,
  care: [...care],
  gramsEach: null,
});

const ball = (diameterMm: number, care: readonly CareFlag[] = []): Item =>
  thing('Ball', { shape: 'sphere', diameterMm }, care);
const hazardsOf = (item: Item): readonly Hazard[] =>
  cautionsOf({ items: [item], clearanceMm: null }).map(({ hazard }) => hazard);
const listed = (id: string): Item => {
  const { name, size, care } = ITEMS.find((each) => each.id === id)!;
  return thing(name, size, care);
};

// source: 16 CFR 1500.19(a)(2): a small ball passes a hole 1.75 in (44.4 mm) wide
describe('small balls', () => {
  it.each([
    [44.3, true],
    [44.4, false],
    [44.5, false],
    [25, true],
  ])('a ball of %d mm is one: %s', (diameterMm, isSmall) => {
    expect(hazardsOf(ball(diameterMm)).includes('small-ball')).toBe(isSmall);
  });

  it.each(['table-tennis-ball', 'golf-ball'])('the catalogue’s %s is one', (id) => {
    expect(hazardsOf(listed(id))).toContain('small-ball');
  });

  it('warns of a round sweet as food', () => {
    expect(hazardsOf(ball(28, ['food']))).toContain('choking-food');
    expect(hazardsOf(ball(28, ['food']))).not.toContain('small-ball');
  });
});

// source: advice of the American Academy of Pediatrics (from secondary texts); 16 CFR 1263; honey from memory
describe('what a child may choke on, swallow or fall ill with', () => {
  it.each([
    ['tealight-led', 'button-cell'],
    ['sugared-almond', 'choking-food'],
    ['truffle', 'choking-food'],
    ['sweets-bag', 'choking-food'],
  ] as const)('the catalogue’s %s: %s', (id, hazard) => {
    expect(hazardsOf(listed(id))).toContain(hazard);
  });

  it.each([
    ['Honey stick', 'honey'],
    ['Fairy lights', 'button-cell'],
    ['LED candle', 'button-cell'],
    ['Caramel popcorn', 'choking-food'],
    ['Roast nuts', 'choking-food'],
  ] as const)('a “%s” is known by its name: %s', (name, hazard) => {
    expect(hazardsOf(thing(name, { shape: 'soft', widthMm: 40, depthMm: 40, heightMm: 40 }))).toContain(
      hazard,
    );
  });

  it.each(['Doughnut', 'Coconut soap', 'Fled', 'Ginger biscuit'])('“%s” is not taken for one', (name) => {
    const hazards = hazardsOf(thing(name, { shape: 'soft', widthMm: 40, depthMm: 40, heightMm: 40 }));
    expect(hazards).toEqual(['load']);
  });
});

describe('the desk says the same as the page', () => {
  it.each([
    listed('table-tennis-ball'),
    listed('tealight-led'),
    listed('sugared-almond'),
    thing('Honey jar', { shape: 'cylinder', diameterMm: 40, heightMm: 40, lies: 'standing' }, ['food']),
  ])('about $name', async (item) => {
    const file = JSON.parse(readFileSync('demo-data/twelve-truffles.json', 'utf8')) as Record<
      string,
      unknown
    >;
    const contents = { items: [item], clearanceMm: null };
    const asked = JSON.stringify({ ...file, contents, styles: ['open-top'] });
    const { printed } = await callDesk(['fit', 'box.json'], { 'box.json': asked });
    const said = (JSON.parse(printed) as { cautions: readonly string[] }).cautions;
    expect(said).toEqual(cautionsOf(contents).map(({ says }) => says));
    expect(said.length).toBeGreaterThan(1);
  });
});
