import { expect, it } from 'vitest';
import { checkGeometry } from '../../../src/core/checks';
import { checkLimits } from '../../../src/core/checks/check-limits';
import { layNet, nameValues } from '../../../src/core/net';
import { gableTop } from '../../../src/core/styles/boxes/gable-top';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import { millimetres } from '../../../src/core/units';

it('is refused where a glue tab lies behind it: sides 44 mm wide, tab 33 mm, slot 31 mm', () => {
  const sizes = {
    width: millimetres(163),
    depth: millimetres(44),
    height: millimetres(79),
    tab: millimetres(33),
    flap: millimetres(44),
    slotLength: millimetres(31),
    slotHeight: millimetres(21),
  };
  const options = { order: 'front', tab: 'left', slot: 'sides' };
  const asked = { sizes, options, caliperUm: 493, mark: millimetres(1) };
  expect(checkGeometry(openTop, layNet(openTop, asked)).map(({ code }) => code)).toContain(
    'opening-glued-over',
  );
  const told = checkLimits(openTop, nameValues(openTop, asked).lengths, millimetres(1), options);
  expect(told.map(({ code }) => code)).toContain('slot-too-long');
  // clear of it: 44 − 2 × 11 = 22 mm with a tab of 11
  const clear = { ...sizes, tab: millimetres(11), slotLength: millimetres(22), slotHeight: millimetres(11) };
  const fine = checkLimits(
    openTop,
    nameValues(openTop, { ...asked, sizes: clear }).lengths,
    millimetres(1),
    options,
  );
  expect(fine.map(({ code }) => code)).not.toContain('slot-too-long');
  expect(checkGeometry(openTop, layNet(openTop, { ...asked, sizes: clear }))).toEqual([]);
});

it('goes through both strips of a handle that are glued to one another: 2 in on a strip 3 in wide', () => {
  const asked = { sizes: {}, options: { slot: 'handle' }, caliperUm: 305, mark: millimetres(1) };
  const told = checkLimits(gableTop, nameValues(gableTop, asked).lengths, millimetres(1), asked.options);
  expect(told.map(({ code }) => code)).toEqual([]);
});
