import { describe, expect, it } from 'vitest';
import { checkBox } from '../../../src/core/checks';
import { checkNarrowPanels, checkToolReach } from '../../../src/core/checks/check-handling';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import { trayLid } from '../../../src/core/styles/boxes/tray-lid';
import { inches } from '../../../src/core/units/ticks';
import { boxOf } from './variant';

const tool = { finestMark: inches(0, 1, 16), reach: inches(12), longestCut: inches(12) };
const piece = (sizes: Readonly<Record<string, string>>) => {
  const [only] = boxOf(openTop, sizes).pieces;
  if (only === undefined) throw new Error('one piece');
  return only;
};

describe('what hands and tools can do', () => {
  it('a side 3/16 in between two scores is too narrow to fold; 1/4 in is not (common practice, no source)', () => {
    expect(checkNarrowPanels(piece({ depth: '3/16 in' }))[0]).toMatchObject({
      where: 'left',
      facts: { wide: inches(0, 3, 16), least: inches(0, 1, 4) },
    });
    expect(checkNarrowPanels(piece({ depth: '1/4 in' }))).toEqual([]);
  });

  it('a blank longer than the trimmer cuts is told, in inches of both', () => {
    // 2 × 4 1/2 + 2 × 1 1/2 + 1 = 13
    const [finding] = checkToolReach(piece({ width: '4 1/2 in' }), tool);
    expect(finding).toMatchObject({
      code: 'blank-longer-than-cut',
      facts: { long: inches(13), cut: inches(12) },
    });
    expect(checkToolReach(piece({ width: '4 in' }), tool)).toEqual([]); // 12 on the dot
  });

  it('a score farther from both edges than the fence reaches is told', () => {
    // blank 2 × 6 + 2 × 1 1/2 + 1 = 16; the score at 7 1/2 lies 7 1/2 from the left and 8 1/2 from the right
    const found = checkToolReach(piece({ width: '6 in' }), {
      ...tool,
      reach: inches(7),
      longestCut: inches(20),
    });
    expect(found).toMatchObject([
      { code: 'score-beyond-reach', facts: { far: inches(7, 1, 2), reach: inches(7) } },
    ]);
  });

  it('an opening too narrow for a hand brings the bone folder; a wide one, a low one, or a floor of one piece does not', () => {
    const notes = (style: typeof openTop | typeof trayLid, sizes: Readonly<Record<string, string>>) =>
      checkBox(style, boxOf(style, sizes))
        .map(({ code }) => code)
        .filter((code) => code !== 'truest-marks');
    expect(notes(openTop, { flap: '1 1/4 in' })).toEqual(['opening-narrow-for-hand']);
    expect(notes(openTop, { depth: '3 in', flap: '2 in' })).toEqual([]);
    expect(notes(openTop, { flap: '1 1/4 in', height: '1 in', tab: '3/4 in' })).toEqual([]);
    expect(notes(trayLid, { width: '2 in', depth: '2 in', height: '2 in', lip: '1 in' })).toEqual([]);
  });
});
