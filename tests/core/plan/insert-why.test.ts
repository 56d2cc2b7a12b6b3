import { expect, it } from 'vitest';
import type { DressingPiece, PieceFit } from '../../../shared/workbook';
import { fitPiece } from '../../../src/core/dress';
import { layNet } from '../../../src/core/net';
import { sayReason } from '../../../src/core/plan';
import { whyPiece } from '../../../src/core/plan/why/dressing-why';
import { styleById } from '../../../src/core/styles';
import { inches, ticks, toMm } from '../../../src/core/units';

const mark = ticks(1);
// a tray 4 × 3 in of .5 mm card: inside 101.1 × 75.7 mm
const net = layNet(styleById('tray')!, {
  sizes: { width: inches(4), depth: inches(3), height: inches(1, 1, 2) },
  caliperUm: 500,
});

function why(fit: PieceFit): string {
  const piece: DressingPiece = {
    id: 'insert',
    kind: fit.rule === 'divides' ? 'divider' : 'raised-floor',
    name: 'Insert',
    widthMm: 50,
    heightMm: 20,
    perBox: 1,
    grain: 'free',
    paperId: null,
    fit,
  };
  const [first] = whyPiece(net, piece, fitPiece(net, piece, mark)!);
  return sayReason(first!, { length: (of) => `${toMm(of)} mm`, money: String });
}

// Two calipers of .5 mm are 1 mm and three 1.5 mm: less than that is never taken off, whatever the maker typed.
it.each([
  ['divides', 0.5, 'Across: 101.1 mm inside − 1 mm to slide in, cut 100.1 mm.'],
  ['divides', 2, 'Across: 101.1 mm inside − 2 mm to slide in, cut 99.1 mm.'],
  ['flat', 0.5, 'The floor is 101.1 mm × 75.7 mm inside, less 1 mm to go in.'],
  ['raised', 0.5, 'The floor is 101.1 mm × 75.7 mm inside, less 1.5 mm to go in.'],
] as const)('a %s insert with an ease of %f mm says what was taken off', (what, easeMm, says) => {
  const fit: PieceFit =
    what === 'divides'
      ? { rule: 'divides', runs: 'across', columns: 2, rows: 2, heightMm: 20, easeMm }
      : { rule: 'on-floor', easeMm, riseMm: what === 'raised' ? 10 : 0 };
  expect(why(fit)).toBe(says);
});
