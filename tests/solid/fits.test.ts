import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { measureFits } from '../../src/core/checks/check-fits';
import { type BoxNet, layNet } from '../../src/core/net';
import type { AskedBox } from '../../src/core/proof/legal-boxes';
import { type BoxStyle, STYLES } from '../../src/core/styles';
import { openTop } from '../../src/core/styles/boxes/open-top';
import { wedge } from '../../src/core/styles/boxes/wedge';
import { inches, ticks } from '../../src/core/units/ticks';
import { SEED } from '../seed';
import { legalBoxes } from '../styles/legal-sizes';
import { BETWEEN, clearBetween } from './clear-between';
import { solids } from './kit';
import { NESTS } from './nest';
import { isLeftOut } from './not-modelled';
import { standsOf } from './places';
import { stackOf } from './stack';

const SIZES = Number(process.env['SOLID_SIZES'] ?? 8);

afterEach(() => solids.free());

/** Every fit of a box that is within one piece: what the style counts as clear, and what the folded card has, mm. */
function twice(style: BoxStyle, box: BoxNet) {
  const caliperMm = box.caliperUm / 1000;
  const leftOut = (one: string, other: string) => isLeftOut(style.id, one, other);
  const piece = box.whole ?? box.pieces[0]!;
  const stands = standsOf(piece);
  const shifts = stackOf(piece, stands, caliperMm, solids, leftOut);
  return measureFits(style, box).flatMap(({ fit, clear }) => {
    const lines = BETWEEN[fit.what];
    return lines ? [{ what: fit.what, said: clear / 320, has: clearBetween(piece, stands, shifts, caliperMm, lines) }] : []; // biome-ignore format: one line
  });
}

/** Rounding of lengths to ticks, and of what a style counts in whole cards. */
const WITHIN_MM = 0.06;

const measured = STYLES.filter(({ fits = [] }) => fits.some(({ what }) => what in BETWEEN));

/** Places of panels: npm `three`; which layers lie on which: npm `manifold-3d`. Nothing of how the core counts a fit is asked. */
describe.each(measured.map((style) => [style.name, style] as const))('%s, folded of card', (_, style) => {
  it('has clear what its fits say, or up to a card more', { timeout: 600_000 }, () => {
    const boxes = [
      ...[200, 350, 500].map(
        (caliperUm): AskedBox => ({ sizes: {}, options: {}, caliperUm, mark: inches(0, 1, 16) }),
      ),
      ...fc.sample(legalBoxes(style, [inches(0, 1, 16), ticks(320)]), { seed: SEED, numRuns: SIZES }),
    ];
    const seen = new Set<string>();
    for (const asked of boxes) {
      for (const { what, said, has } of twice(style, layNet(style, asked))) {
        seen.add(what);
        const where = `${what}: ${said} and ${has}, ${JSON.stringify(asked)}`;
        expect(said - has, where).toBeLessThan(WITHIN_MM);
        // a style may count a card too many, never one too few
        expect(has - said, where).toBeLessThan(asked.caliperUm / 1000 + WITHIN_MM);
      }
      solids.free();
    }
    const within = (style.fits ?? []).map(({ what }) => what).filter((what) => what in BETWEEN);
    expect([...seen].sort()).toEqual([...new Set(within)].sort());
  });
});

describe('the measure sees a fit that counts too little card', () => {
  const wrong = (style: BoxStyle, card: string): BoxStyle => ({
    ...style,
    fits: (style.fits ?? []).map((fit) => ({ ...fit, card })),
  });

  it.each([
    ['a bottom flap that forgets the wall', openTop],
    ['lid tabs that forget the wall they lie in', wedge],
  ] as const)('%s', (_, style) => {
    const box = layNet(style, { sizes: {}, caliperUm: 500 });
    const off = twice(wrong(style, '0 in'), box).map(({ said, has }) => said - has);
    expect(Math.min(...off)).toBeGreaterThan(0.2);
  });

  it('every fit of a style is measured here, is between two pieces, or is listed', () => {
    const elsewhere = STYLES.flatMap(({ id, fits = [] }) =>
      fits.flatMap(({ what }) => (what in BETWEEN || id in NESTS ? [] : [`${id}: ${what}`])),
    );
    // of these the layers alone are checked, by the clashes of solid card
    expect(elsewhere).toEqual([
      'snap-lock: tongue through its notch',
      'hinged-lid: lid ends inside the side walls and their corner tabs',
      'opening-out: lid over the box, left to right',
      'opening-out: lid over the box, front to back',
      'double-wall: corner tabs between the two walls of a side',
      'double-wall: inner walls between front and back',
      'web-pail: lid between back and front',
      'wallet: pockets beside the spine',
      'card-holder: liner beside the spine',
    ]);
  });
});
