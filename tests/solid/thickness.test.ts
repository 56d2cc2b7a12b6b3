import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { checkLimits } from '../../src/core/checks/check-limits';
import { type BoxNet, layNet, nameValues } from '../../src/core/net';
import type { AskedBox } from '../../src/core/proof/legal-boxes';
import { type BoxStyle, evaluateForm, formOf, STYLES } from '../../src/core/styles';
import { openTop } from '../../src/core/styles/boxes/open-top';
import { sleeveDrawer } from '../../src/core/styles/boxes/sleeve-drawer';
import { trayLid } from '../../src/core/styles/boxes/tray-lid';
import { inches, ticks } from '../../src/core/units/ticks';
import { SEED } from '../seed';
import { recordStyle } from '../setup/style-record';
import { legalBoxes } from '../styles/legal-sizes';
import { type Body, type Built, build, clashesIn } from './clashes';
import { solids } from './kit';
import { NESTS, tightIn } from './nest';
import { isLeftOut, NOT_MODELLED } from './not-modelled';

/** Sizes a style: few in the gate, 200 in `npm run fuzz`. */
const SIZES = Number(process.env['SOLID_SIZES'] ?? 8);
const MARKS = [inches(0, 1, 16), inches(0, 1, 8), ticks(320)];

afterEach(() => solids.free());

/** All that runs into one another or has too little ease in a closed box, in words. */
function tooTight(style: BoxStyle, box: BoxNet): readonly string[] {
  const caliperMm = box.caliperUm / 1000;
  const leftOut = (one: string, other: string) => isLeftOut(style.id, one, other);
  const built = new Map<string, Built>();
  const clashes = [...(box.whole ? [box.whole] : box.pieces)].flatMap((piece) => {
    const stands = build(piece, caliperMm, solids, leftOut);
    built.set(piece.id, stands);
    const { bodies } = stands;
    const folds = NOT_MODELLED[style.id]?.folds;
    const isFold = ({ faces }: Body) =>
      faces.length > 1 && faces.every((face) => folds?.test(piece.faces[face]?.panel ?? ''));
    const asked = bodies.filter((body) => !isFold(body));
    return clashesIn({ ...stands, bodies: asked }, solids, leftOut).map(
      ({ one, other, deepMm }) => `${piece.id}: ${one} into ${other}, ${deepMm.toFixed(2)} mm`,
    );
  });
  const easeMm = (words: string): number => {
    const fit = style.fits?.find(({ what }) => what.includes(words));
    return fit === undefined ? 0 : evaluateForm(formOf(fit.ease), box.values) / 320;
  };
  const tight = (NESTS[style.id] ?? []).flatMap((nest) => {
    const [outer, inner] = [built.get(nest.outer), built.get(nest.inner)];
    return outer && inner ? tightIn(nest, outer, inner, easeMm, solids) : [];
  });
  return [...clashes, ...tight];
}

/** The style's defaults in light, usual and heavy card, then any legal size. */
const sizesOf = (style: BoxStyle): readonly AskedBox[] =>
  [
    ...[200, 350, 500].map(
      (caliperUm): AskedBox => ({ sizes: {}, options: {}, caliperUm, mark: inches(0, 1, 16) }),
    ),
    ...fc.sample(legalBoxes(style, MARKS), { seed: SEED, numRuns: Math.max(1, SIZES - 3) }),
  ].map((asked) => heeding(style, asked));

/** Says of a size that card that thick binds there. */
const BINDS = /-binds$/;

/** A box as a maker makes it who heeds what is said of flaps that bind. */
function heeding(style: BoxStyle, asked: AskedBox): AskedBox {
  const { lengths } = nameValues(style, asked);
  const told = checkLimits(style, lengths, asked.mark, asked.options).filter(({ code }) => BINDS.test(code));
  const least = told.flatMap(({ fix }) => (fix ? [fix] : [])).sort((p, q) => p.value - q.value)[0];
  return least ? { ...asked, sizes: { ...asked.sizes, [least.symbol]: least.value } } : asked;
}

/**
 * Every panel a plate of its caliper at its place in the stack, its middle on the score lines: nothing reaches into anything by more than
 * 0.05 mm, and what slides or drops in has its ease. Solids and what they share: npm `manifold-3d`; places: npm `three`.
 */
describe.each(STYLES.map((style) => [style.name, style] as const))(
  '%s in card of .2 to .5 mm',
  (_, style) => {
    it('has room for every layer', { timeout: 600_000 }, (test) => {
      const boxes = sizesOf(style);
      for (const asked of boxes) {
        expect(tooTight(style, layNet(style, asked)), JSON.stringify(asked)).toEqual([]);
        solids.free();
      }
      const why = NOT_MODELLED[style.id]?.why;
      recordStyle(test, { style: style.id, check: 'solid card', tried: boxes.length, worst: why ?? 'clear' });
    });
  },
);

describe('the solids see a box that is made too tight', () => {
  const mark = inches(0, 1, 64);

  it('bottom flaps as long as the box is deep meet the far wall, by half a card', () => {
    const sizes = { width: inches(3), depth: inches(1, 1, 2), flap: inches(1, 1, 2) };
    expect(tooTight(openTop, layNet(openTop, { sizes, caliperUm: 300 }))).toContain(
      'box: frontFlap into back|backFlap, 0.15 mm',
    );
  });

  it('a glue tab as wide as the side it lies on strikes the front', () => {
    const sizes = { depth: inches(1), tab: inches(1), flap: inches(0, 3, 4) };
    const told = tooTight(openTop, layNet(openTop, { sizes, caliperUm: 300, options: { order: 'side' } }));
    expect(told).toEqual([expect.stringMatching(/^box: .*front.* into .*tab.*, 0\.1\d mm$/)]);
  });

  it('a lid that grows by two cards and a hair, as it once did, jams on the tray', () => {
    const style: BoxStyle = { ...trayLid, allowances: { growth: '2t + ease', growthDeep: '2t + ease' } };
    const told = tooTight(style, layNet(style, { sizes: { ease: mark }, caliperUm: 500, mark }));
    // however far it is moved front to back
    expect(told).toHaveLength(2);
    expect(told[0]).toMatch(/^tray in lid, left to right: 0\.\d\d mm too tight$/);
  });

  it('a sleeve without room for its own tab', () => {
    const style: BoxStyle = { ...sleeveDrawer, allowances: { growth: '2t + ease', rise: '3/2 t + ease' } };
    const told = tooTight(style, layNet(style, { sizes: {}, caliperUm: 400, mark }));
    expect(told).toEqual([expect.stringMatching(/^drawer in sleeve, up and down/)]);
  });
});
