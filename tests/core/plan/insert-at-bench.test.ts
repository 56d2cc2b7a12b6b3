import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { type WorkbookFile, workbookFile } from '../../../shared/workbook';
import { listRunSheet, planEvent } from '../../../src/core/plan';
import { sayRunStep } from '../../../src/core/plan/run/run-words';
import { printLength } from '../../../src/core/units';

/** The example season with forty of its tray, which no event of it makes. */
function withTrays(dressingId: string) {
  const file: WorkbookFile = workbookFile.parse(
    JSON.parse(readFileSync('demo-data/orchard-season.json', 'utf8')),
  );
  const [event] = file.events;
  const [line] = event?.lines ?? [];
  if (!event || !line) throw new Error('the season has no event');
  event.lines = [{ ...line, recipeId: 'sampler-tray', dressingId, paperId: 'russet-square' }];
  const plan = planEvent(file, event.id);
  if (!plan) throw new Error('no plan');
  const sheet = listRunSheet(plan, file, file.tools[0]);
  const ruler = { unit: 'in', finest: 508 } as const;
  const said = (of: (typeof sheet.steps)[number]) =>
    sayRunStep(of, { length: (length) => printLength(length, ruler as never).text, money: String });
  return sheet.steps.filter(({ act }) => act === 'place').map(said);
}

it('says on the batch sheet where each divider is slotted, how deep and how wide', () => {
  // inside 6 × 4 in less .011 in of card and 1/16 in of ease, on eighths: 5 7/8 and 3 7/8.
  // Three cells of 5 7/8: every 2 in, the first at (5 7/8 − 2) / 2; two cells of 3 7/8: one slot in the middle. Half of 1 1/4 in deep.
  // .011 + 1/64 = .0266 in, which is nearest to two 64ths
  const wide = 'Cut each slot 1/32 in wide: the thickness of the cardstock and a hair more.';
  expect(withTrays('six-cells')).toEqual([
    {
      headline: 'Divider across: 1 per box.',
      details: [
        'Each is 5 7/8 in × 1 1/4 in.',
        '2 slots from the top edge, 5/8 in deep: the first at 1 15/16 in from the left end, then every 2 in.',
        wide,
      ],
    },
    {
      headline: 'Divider front to back: 2 per box.',
      details: [
        'Each is 3 7/8 in × 1 1/4 in.',
        'Slot from the bottom edge at 1 15/16 in from the left end, 5/8 in deep.',
        wide,
      ],
    },
  ]);
});

it('says how a raised floor is scored and where its holes are', () => {
  const [floor] = withTrays('cups');
  // 6 and 4 in less .011 and 1/16 in: 5 7/8 and 3 7/8 (on sixteenths 5 15/16 − 1/16), and 3/4 in folded down on every side
  expect(floor?.details).toContain(
    'Score 3/4 in from every edge, cut the four corners away, and fold the sides down.',
  );
  expect(floor?.details.join(' ')).toContain('3 × 2 round holes, 1 3/8 in wide.');
});
