import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type FavorEvent, type Guest, type WorkbookFile, workbookFile } from '../../../shared/workbook';
import { countedByGuests, planEvent, sayReason, tablesOf, withGuests } from '../../../src/core/plan';
import { allergensAsked, allergensUsual } from '../../../src/core/rows/allergens';

const saved = workbookFile.parse(JSON.parse(readFileSync('demo-data/seed-swap-supper.json', 'utf8')));
const guest = (name: string, more: Partial<Guest> = {}): Guest => ({
  id: name.toLowerCase(),
  name,
  table: '',
  needs: '',
  lineId: null,
  ...more,
});
const twoLines = (): FavorEvent => {
  const event = structuredClone(saved.events[0]!);
  const [line] = event.lines;
  return { ...event, lines: [line!, { ...line!, id: 'second' }] };
};

describe('counts that follow a guest list', () => {
  it('are how many guests get each line, the first where none is named', () => {
    const event = withGuests(twoLines(), [guest('Ana'), guest('Ben', { lineId: 'second' }), guest('Cy')]);
    expect(event.lines.map(({ count, byGuests }) => [count, byGuests])).toEqual([
      [2, true],
      [1, true],
    ]);
  });

  it('stay as they are for a line that no guest gets', () => {
    const event = withGuests(twoLines(), [guest('Ana')]);
    expect(event.lines.map(({ count, byGuests }) => [count, byGuests])).toEqual([
      [1, true],
      [40, undefined],
    ]);
    expect(withGuests(event, []).guests).toBeUndefined();
  });

  it('are said to differ where a list was merged from two tabs, and can be counted again', () => {
    const event = withGuests(twoLines(), [guest('Ana'), guest('Ben')]);
    const merged = { ...event, guests: [...event.guests!, guest('Cy')] };
    const found = (each: FavorEvent) =>
      planEvent({ ...saved, events: [each] }, each.id)!.findings.filter(
        ({ code }) => code === 'guests-differ',
      );
    expect(found(merged)).toMatchObject([{ facts: { guests: { count: 3 }, count: { count: 2 } } }]);
    expect(found(countedByGuests(merged))).toEqual([]);
  });
});

it('tables stand in the order of their numbers, guests without one last', () => {
  const event = withGuests(twoLines(), [
    guest('Ana', { table: '10' }),
    guest('Ben', { table: '2', lineId: 'second' }),
    guest('Cy'),
    guest('Di', { table: '2' }),
  ]);
  expect(tablesOf(event).map(({ table, guests, counts }) => [table, guests.length, counts.length])).toEqual([
    ['2', 2, 2],
    ['10', 1, 1],
    ['', 1, 1],
  ]);
});

describe('what guests ask for', () => {
  it('is heard in their own words', () => {
    expect(allergensAsked('no nuts please')).toEqual(['tree nuts', 'peanuts']);
    expect(allergensAsked('peanut allergy')).toEqual(['peanuts']);
    expect(allergensAsked('coeliac')).toEqual(['wheat']);
    expect(allergensAsked('Gluten-free, dairy-free')).toEqual(['milk', 'wheat']);
    expect(allergensAsked('wheelchair, sits by the door')).toEqual([]);
    expect(allergensUsual('Coconut soap')).toEqual([]);
    expect(allergensUsual('Butterfly seal')).toEqual([]);
    expect(allergensUsual('Candied almond')).toEqual(['tree nuts']);
  });

  /** The supper with one thing in its box and one guest. */
  function findings(
    needs: string,
    thing: Partial<WorkbookFile['recipes'][number]['contents'] & object>['items'],
  ) {
    const file = structuredClone(saved);
    const recipe = file.recipes.find(({ id }) => id === 'seed-box')!;
    recipe.contents = { items: thing!, clearanceMm: null };
    file.events[0] = withGuests(file.events[0]!, [guest('Ana', { needs })]);
    const { findings: all } = planEvent(file, 'seed-swap-supper')!;
    return all
      .filter(({ code }) => code.startsWith('guest-'))
      .map((each) => [each.about, sayReason(each, { length: String, money: String })]);
  }
  const thing = (name: string, more: object = {}) => [
    {
      id: 'one',
      name,
      size: { shape: 'sphere' as const, diameterMm: 20 },
      count: 1,
      wrapMm: 0,
      aboveRimMm: 0,
      thisWayUp: false,
      fragile: false,
      care: ['food' as const],
      gramsEach: null,
      ...more,
    },
  ];

  it('is held against what goes in, by name: the label first, the usual recipe next, and what nobody read', () => {
    expect(findings('no nuts', thing('Candied almond'))).toEqual([
      ['Ana', 'Asks for “no nuts”. Candied almond usually contains tree nuts.'],
    ]);
    expect(findings('no nuts', thing('Bonbon', { allergens: ['peanuts'] }))).toEqual([
      ['Ana', 'Asks for “no nuts”. The label of Bonbon, as you entered it, names peanuts.'],
    ]);
    expect(findings('no nuts', thing('Bonbon'))).toEqual([
      ['Ana', 'Asks for “no nuts”. We don’t know what Bonbon contains.'],
    ]);
  });

  it('is quiet where the label was read and names none of it, and where no food is asked about', () => {
    expect(findings('no nuts', thing('Candied almond', { allergens: [] }))).toEqual([]);
    expect(findings('by the door', thing('Candied almond'))).toEqual([]);
    expect(findings('no nuts', thing('Soap', { care: [] }))).toEqual([]);
  });
});
