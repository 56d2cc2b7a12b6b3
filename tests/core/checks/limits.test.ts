import { describe, expect, it } from 'vitest';
import { checkBox } from '../../../src/core/checks';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import { pillowPack } from '../../../src/core/styles/boxes/pillow-pack';
import { inches, ticks } from '../../../src/core/units/ticks';
import { boxOf } from './variant';

describe('sizes that break a style’s limits', () => {
  it('bottom flaps 3/4 in on a box 1 3/4 deep leave a hole 1/4 in wide; at least 7/8 in', () => {
    // 1 3/4 − 2 × 3/4 = 1/4; half of 1 3/4 is 7/8
    const [finding, ...others] = checkBox(openTop, boxOf(openTop, { depth: '1 3/4 in', flap: '3/4 in' }));
    expect(finding).toEqual({
      code: 'bottom-leaves-hole',
      severity: 'stop',
      where: 'flap',
      facts: { flap: inches(0, 3, 4), hole: inches(0, 1, 4), limit: inches(0, 7, 8) },
      says: 'Bottom flaps {flap} leave a hole {hole} wide.',
      remedy: 'Make them at least {limit}.',
      fix: { symbol: 'flap', value: inches(0, 7, 8) },
    });
    expect(others.map(({ code }) => code)).toEqual(['bottom-laps-little']);
    expect(
      checkBox(openTop, boxOf(openTop, { depth: '1 3/4 in', flap: '7/8 in' })).map(
        ({ severity }) => severity,
      ),
    ).not.toContain('stop');
  });

  it('come back as the nearest legal mark of the maker’s own ruler', () => {
    // half of 45 mm is 22.5: up to 23 on millimetre marks, up to 15/16 in (23.8 mm) on sixteenths
    const box = boxOf(openTop, { depth: '45 mm', flap: '20 mm' });
    const on = (finestMark: number) =>
      checkBox(openTop, box, { finestMark: ticks(finestMark), reach: inches(12), longestCut: inches(12) })[0]
        ?.fix?.value;
    expect(on(320)).toBe(23 * 320);
    expect(on(508)).toBe(inches(0, 15, 16));
  });

  it('a rise over .207 of the width cannot stand: 3 in wide takes 5/8 less a sixteenth', () => {
    // .207 × 3 = .621 in, down to 9/16
    const [finding] = checkBox(pillowPack, boxOf(pillowPack, { rise: '3/4 in' }));
    expect(finding).toMatchObject({
      code: 'ends-cannot-stand',
      fix: { symbol: 'rise', value: inches(0, 9, 16) },
    });
  });

  it('a size outside the style’s range is stopped at its bound', () => {
    expect(checkBox(openTop, boxOf(openTop, { width: '1/4 in' }))[0]).toMatchObject({
      code: 'size-beyond-least',
      where: 'width',
      fix: { value: inches(0, 1, 2) },
    });
    expect(checkBox(openTop, boxOf(openTop, { width: '20 in' }))[0]).toMatchObject({
      code: 'size-beyond-most',
      where: 'width',
      fix: { value: inches(12) },
    });
  });

  it('never throw, whatever the sizes: the net is drawn and the finding says what is wrong', () => {
    for (const size of ['0', '-1 in', '1/64 in', '300 in'])
      for (const symbol of ['width', 'depth', 'height', 'tab', 'flap']) {
        const box = boxOf(openTop, { [symbol]: size });
        expect(checkBox(openTop, box)[0]?.severity).toBe('stop');
      }
  });
});
