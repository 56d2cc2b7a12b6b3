import { describe, expect, it } from 'vitest';
import { checkFits, closingShare, measureFits, truestMarks } from '../../../src/core/checks/check-fits';
import { layNet } from '../../../src/core/net';
import { type BoxStyle, STYLES } from '../../../src/core/styles';
import { sleeveDrawer } from '../../../src/core/styles/boxes/sleeve-drawer';
import { trayLid } from '../../../src/core/styles/boxes/tray-lid';
import { inches, ticks } from '../../../src/core/units/ticks';
import { swayFrom } from '../../../src/core/yield/stock/sway';
import { SEED } from '../../seed';

const boxOf = (style: BoxStyle, caliperUm = 300, mark = inches(0, 1, 16)) =>
  layNet(style, { sizes: {}, caliperUm, mark });
const fitting = STYLES.filter(({ fits = [] }) => fits.length > 0);

describe('what goes into or over what', () => {
  it('a lid left to right: growth 1/8 in less four cards of .3 mm leaves 1.975 mm', () => {
    const across = measureFits(trayLid, boxOf(trayLid)).find(({ fit }) => fit.what.includes('left to right'));
    // 3.175 - 4 x .3 = 1.975 mm, 632 ticks; four marks, 158 each
    expect(across).toMatchObject({ clear: 632, eachMark: 158 });
  });

  it.each(fitting.map((style) => [style.name, style] as const))(
    '%s keeps its ease in card of .2 to .5 mm on marks of 1/16 in, 1/8 in, .5 mm and 1 mm',
    (_, style) => {
      for (const caliperUm of [200, 300, 350, 390, 396, 400, 500])
        for (const mark of [inches(0, 1, 16), inches(0, 1, 8), ticks(160), ticks(320)])
          expect(checkFits(style, boxOf(style, caliperUm, mark))).toEqual([]);
    },
  );

  it('a lid that grows by two cards and the ease, as it did, jams in card of .5 mm left to right', () => {
    const before: BoxStyle = { ...trayLid, allowances: { growth: '2t + ease', growthDeep: '2t + ease' } };
    const box = layNet(before, { sizes: { ease: inches(0, 1, 64) }, caliperUm: 500, mark: inches(0, 1, 64) });
    expect(checkFits(before, box)).toMatchObject([
      { code: 'fit-jams', severity: 'stop', facts: { fit: 'lid over the tray, left to right' } },
    ]);
  });

  it('a sleeve that rises by one card and the ease is tight above the drawer', () => {
    const before: BoxStyle = { ...sleeveDrawer, allowances: { growth: '2t + ease', rise: 't + ease' } };
    const box = layNet(before, { sizes: {}, caliperUm: 400, mark: inches(0, 1, 64) });
    expect(checkFits(before, box).map(({ facts }) => facts['fit'])).toEqual([
      'drawer in its sleeve, up and down',
    ]);
  });
});

describe('every fit has a case that trips it', () => {
  it.each(fitting.map((style) => [style.name, style] as const))(
    '%s, cut for card of .3 mm and made of card of 4 mm, jams wherever card lies between',
    (_, style) => {
      const box = boxOf(style);
      const thick = { ...box, values: { ...box.values, t: ticks(1280) } };
      const jams = checkFits(style, thick).map(({ facts }) => facts['fit']);
      expect(jams).toEqual(measureFits(style, thick).map(({ fit }) => fit.what));
    },
  );
});

describe('the marks that must be truest', () => {
  it('a lid with .84 mm clear over four marks: each may be off by .21 mm, and so many close at 1/32 in', () => {
    const fit = {
      ...measureFits(trayLid, boxOf(trayLid))[0]?.fit,
      marks: 4,
      room: '0.84 mm',
      body: '0 in',
      card: '0 in',
    };
    const style = { ...trayLid, fits: [fit] } as BoxStyle;
    const told = truestMarks(style, layNet(style, { sizes: {}, caliperUm: 300 }), inches(0, 1, 32));
    // .84 mm are 269 ticks, a quarter of it 67; trials by a plain loop below
    expect(told).toMatchObject([{ code: 'truest-marks', severity: 'note', facts: { each: 67 } }]);
    const tried = closing(0.84, 4, 0.79375) / 100;
    const share = told[0]?.facts['share'] as { count: number } | undefined;
    expect(Math.abs((share?.count ?? 0) - tried)).toBeLessThan(1.5);
  });

  it.each(fitting.map((style) => [style.name, style] as const))(
    '%s: the share that closes is what independent trials give, at 1/64 and 1/32 in and at 1 mm',
    (_, style) => {
      const fits = measureFits(style, boxOf(style));
      for (const offByMm of [0.396875, 0.79375, 1]) {
        const said = closingShare(fits, ticks(offByMm * 320));
        const tried = fits.reduce(
          (share, { clear, fit }) => (share * closing(clear / 320, fit.marks, offByMm)) / 10_000,
          1,
        );
        expect(Math.abs(said - tried)).toBeLessThan(0.02);
      }
    },
  );

  it('the least slack a mark comes first, and a mark moved by a little more than its play jams the fit', () => {
    for (const style of fitting) {
      const fits = measureFits(style, boxOf(style));
      expect(fits.map(({ eachMark }) => eachMark)).toEqual(
        fits.map(({ eachMark }) => eachMark).sort((p, q) => p - q),
      );
      for (const { clear, eachMark, fit } of fits) {
        expect(clear - fit.marks * eachMark).toBeGreaterThanOrEqual(0);
        expect(clear - fit.marks * (eachMark + 1)).toBeLessThan(0);
      }
    }
  });
});

/** How many of 10,000 still close when each mark of a fit is off by up to .4 mm either way. */
function closing(clearMm: number, marks: number, offByMm = 0.4): number {
  const sway = swayFrom(SEED);
  let closes = 0;
  for (let trial = 0; trial < 10_000; trial++) {
    let left = clearMm;
    for (let mark = 0; mark < marks; mark++) left += offByMm * (2 * sway() - 1);
    if (left >= 0) closes++;
  }
  return closes;
}

describe('marks that are off by up to .4 mm', () => {
  it('the trials see a fit that is too tight: .84 mm clear over four marks, as the sleeve had', () => {
    expect(closing(0.84, 4)).toBeLessThan(9900);
    expect(closing(0.03, 4)).toBeLessThan(5500);
  });

  // Shares that close before these fits were reckoned with, by 400,000 trials of code that shares nothing with this project: lid over its tray
  // 75, 63 and 52 in a hundred in card of .3, .35 and .39 mm; drawer in its sleeve 93, 87 and 80; floor of prism 31.
  // The trials ask whether the ease outlasts the error; whether the layers are counted right they cannot tell.
  it.each(fitting.map((style) => [style.name, style] as const))(
    '%s: 99 of 100 close at its default sizes, in 10,000 trials a fit',
    (_, style) => {
      for (const caliperUm of [300, 350, 390])
        for (const { fit, clear } of measureFits(style, boxOf(style, caliperUm)))
          expect(closing(clear / 320, fit.marks), `${fit.what} in card of ${caliperUm} µm`).toBeGreaterThanOrEqual(9900); // biome-ignore format: one line
    },
  );
});
