import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { workbookFile } from '../../../shared/workbook';
import { followShopping, planEvent, stockPaper, stockSupply, tickOff, unitsOf } from '../../../src/core/plan';

const saved = workbookFile.parse(JSON.parse(readFileSync('demo-data/lantern-evening.json', 'utf8')));
const plan = planEvent(saved, 'lantern-evening')!;
const rowOf = (id: string) => plan.shopping.find((row) => row.id === id)!;

it('ticks off packs and what is in them, and asks only for what is still short', () => {
  const toffees = rowOf('toffees');
  const entry = tickOff(toffees);
  expect(entry).toMatchObject({ of: 'toffees', units: toffees.bought, received: false });
  const [row] = followShopping([toffees], [entry]);
  expect(row).toMatchObject({ stillShort: 0, underway: entry, received: [] });
  // ten more are needed after the shop
  const [more] = followShopping([{ ...toffees, short: toffees.bought + 10 }], [entry]);
  expect(more?.stillShort).toBe(10);
  const [home] = followShopping([{ ...toffees, short: 0 }], [{ ...entry, received: true }]);
  expect(home).toMatchObject({ stillShort: 0, underway: null, received: [{ of: 'toffees' }] });
});

it('an entry from a list without units holds one unit a pack', () => {
  expect(unitsOf({ of: 'toffees', packs: 3, received: true })).toBe(3);
  const plain = { ...rowOf('toffees'), packs: [], bought: 0, short: 7 };
  expect(tickOff(plain)).toMatchObject({ packs: 7, units: 7 });
});

it('puts every kind of thing on hand in its own unit, and taking it back never goes below nothing', () => {
  const [paper] = saved.papers;
  expect(stockPaper(paper!, 25).onHandSheets).toBe(paper!.onHandSheets + 25);
  expect(stockPaper(paper!, -10_000).onHandSheets).toBe(0);
  for (const supply of saved.supplies) {
    const before = Object.entries(supply).find(([name]) => name.startsWith('onHand'));
    const after = Object.entries(stockSupply(supply, 4)).find(([name]) => name.startsWith('onHand'));
    expect(after).toEqual([before?.[0], Number(before?.[1]) + 4]);
  }
});

it('what was received is no longer short: the list comes out empty', () => {
  const file = structuredClone(saved);
  for (const { id, bought } of plan.shopping) {
    file.papers = file.papers.map((paper) => (paper.id === id ? stockPaper(paper, bought) : paper));
    file.supplies = file.supplies.map((supply) => (supply.id === id ? stockSupply(supply, bought) : supply));
  }
  const after = planEvent(file, 'lantern-evening')!;
  expect(after.shopping.map(({ short }) => short)).toEqual(after.shopping.map(() => 0));
  expect(after.cost.till.totalMinor).toBe(0);
});
