import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readWorkbook } from '../../../shared/read-workbook';
import { foldTextOf } from '../../../src/core/net';
import { listRunSheet, netOfRecipe, planEvent } from '../../../src/core/plan';

const reading = readWorkbook(readFileSync('demo-data/lantern-evening.json', 'utf8'));
if (!reading.ok) throw new Error('the demo is refused');
const { file } = reading;
const [first] = file.recipes;
const asOwn = {
  ...file,
  recipes: file.recipes.map((recipe) =>
    recipe === first
      ? {
          ...recipe,
          styleId: 'own-net',
          sizesMm: {},
          options: {},
          ownNet: foldTextOf(netOfRecipe(recipe) ?? expect.fail(), 'Drawn elsewhere'),
        }
      : recipe,
  ),
};

describe('a net of the maker’s own in an event', () => {
  // The same box twice: from our style, and from the FOLD 1.2 file of its net. What is bought and done must not differ.
  const [ours, own] = [file, asOwn].map((rows) => planEvent(rows, 'lantern-evening') ?? expect.fail());

  it('takes the same sheets, parts, tape, ribbon, money and minutes', () => {
    expect({ ...own, lines: own?.lines.map((line) => ({ ...line, styleId: 'open-top' })) }).toEqual(ours);
  });

  it('is made in the same steps', () => {
    const steps = (plan: typeof ours, rows: typeof file) =>
      listRunSheet(plan ?? expect.fail(), rows, rows.tools[0]).steps.map(({ id, of }) => `${id} ${of}`);
    expect(steps(own, asOwn)).toEqual(steps(ours, file));
  });

  it('another net is counted otherwise', () => {
    const [recipe, ...others] = asOwn.recipes;
    const larger = first && { ...first, sizesMm: { ...first.sizesMm, height: 152.4 } }; // 6 in
    const text = foldTextOf((larger && netOfRecipe(larger)) ?? expect.fail(), 'Taller');
    const taller = recipe && { ...recipe, ownNet: text };
    const plan = planEvent({ ...asOwn, recipes: taller ? [taller, ...others] : others }, 'lantern-evening');
    expect(plan?.papers.map(({ plan: { sheets } }) => sheets)).not.toEqual(
      ours?.papers.map(({ plan: { sheets } }) => sheets),
    );
  });
});
