import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Tie, type WorkbookFile, workbookFile } from '../../../shared/workbook';
import { planEvent } from '../../../src/core/plan';
import { inches } from '../../../src/core/units';

const PULL: Tie = { id: 'pull', name: 'Pull', supplyId: 'moss-ribbon', wrap: 'pull', bow: null, perBox: 1 };

/** The example season with its first line made as drawers. */
function drawers(options: Readonly<Record<string, string>>, ties: readonly Tie[]) {
  const file: WorkbookFile = workbookFile.parse(
    JSON.parse(readFileSync('demo-data/orchard-season.json', 'utf8')),
  );
  const [event] = file.events;
  const [line] = event?.lines ?? [];
  const recipe = file.recipes.find(({ id }) => id === line?.recipeId);
  if (!event || !line || !recipe) throw new Error('the season has no event');
  const look = { id: 'look', name: 'Look', pieces: [], ties: [...ties], counted: [] };
  Object.assign(recipe, { styleId: 'sleeve-drawer', sizesMm: {}, options, dressings: [look] });
  event.lines = [{ ...line, dressingId: 'look' }];
  const plan = planEvent(file, event.id);
  if (!plan) throw new Error('no plan');
  return plan;
}
const pulled = { pull: 'drawer' };

describe('the ribbon of a drawer’s pull', () => {
  it('is counted for every box: 2 in of loop, 3/4 in between the holes, 3 in of ends', () => {
    const { rolls, lines } = drawers(pulled, [PULL]);
    const ribbon = rolls.find(({ supplyId }) => supplyId === 'moss-ribbon');
    expect(ribbon?.perBox).toBe(inches(5, 3, 4));
    expect(ribbon?.total).toBe(inches(5, 3, 4) * (lines[0]?.making ?? 0));
  });

  it('is asked for where the look has none, and only then', () => {
    const codes = (plan: ReturnType<typeof drawers>) => plan.findings.map(({ code }) => code);
    expect(codes(drawers(pulled, []))).toContain('pull-missing');
    expect(codes(drawers(pulled, [PULL]))).not.toContain('pull-missing');
    expect(codes(drawers({}, []))).not.toContain('pull-missing');
  });

  it('takes as long as a liner to put in, and is no bow', () => {
    const acts = (plan: ReturnType<typeof drawers>) => plan.lines[0]?.acts ?? {};
    const [plain, with1] = [acts(drawers({}, [])), acts(drawers(pulled, [PULL]))];
    expect((with1.place ?? 0) - (plain.place ?? 0)).toBe(1);
    expect(with1['tie-bow']).toBe(0);
  });
});
