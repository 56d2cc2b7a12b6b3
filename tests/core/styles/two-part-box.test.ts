import { describe, expect, it } from 'vitest';
import { checkClosingPath, checkGeometry } from '../../../src/core/checks';
import { checkParts } from '../../../src/core/checks/check-parts';
import { foldPiece, roomInside } from '../../../src/core/fold';
import { type BoxNet, layNet, type PieceNet } from '../../../src/core/net';
import type { BoxStyle, PanelSpec, PieceSpec } from '../../../src/core/styles';
import { twoPartBox } from '../../../src/core/styles/boxes/two-part-box';
import { inches } from '../../../src/core/units/ticks';
import { readFixture, sizingOf } from '../../styles/fixture';

const style: BoxStyle = twoPartBox;
const [worked] = readFixture('two-part-box').cases;
const trade = sizingOf(worked ?? expect.fail());
const wholeOf = (box: BoxNet): PieceNet => {
  if (box.whole === undefined) throw new Error('the halves make nothing');
  return box.whole;
};
const withWhole = (panels: Readonly<Record<string, Partial<PanelSpec>>>): BoxStyle => {
  const whole = style.whole as PieceSpec;
  const changed = Object.entries(whole.panels).map(([name, panel]) => [name, { ...panel, ...panels[name] }]);
  return { ...style, whole: { ...whole, panels: Object.fromEntries(changed) as PieceSpec['panels'] } };
};
const codes = (broken: BoxStyle) => checkGeometry(broken, layNet(broken, trade)).map(({ code }) => code);

describe('two halves glued to one box', () => {
  it('hold what the trade box holds: 3 1/2 × 1 1/2 × 3 = 15 3/4 in³', () => {
    const whole = wholeOf(layNet(style, trade));
    expect(roomInside(foldPiece(whole), whole.shell, 0.05) / 25.4 ** 3).toBeCloseTo(15.75, 6);
  });

  it('are one net twice: what is glued on the left is glued on the right', () => {
    const [front, back] = layNet(style, trade).pieces;
    expect(front?.faces.map(({ ring }) => ring)).toEqual(back?.faces.map(({ ring }) => ring));
  });

  it('close as one', () => {
    const box = layNet(style, trade);
    expect([...checkGeometry(style, box), ...checkClosingPath(box)]).toEqual([]);
  });

  it('do not, and are told so, if the whole needs a panel of another size', () => {
    expect(codes(withWhole({ right: { size: ['depth + 1/8 in', 'height'] } }))).toEqual(
      expect.arrayContaining(['seam-gapes', 'part-differs']),
    );
    expect(codes(withWhole({ frontTab: { fold: 80 } }))).toContain('tab-off-its-wall');
  });

  it('are measured panel by panel: a tab 1/16 in wider than the whole shows', () => {
    const box = layNet(style, trade);
    const wider = layNet(style, { ...trade, sizes: { ...trade.sizes, tab: inches(1, 1, 16) } });
    const found = checkParts({ ...box, pieces: wider.pieces });
    expect(found.map(({ code, where, facts }) => [code, where, facts['off']])).toEqual([
      ['part-differs', 'frontTab', inches(0, 1, 16)],
      ['part-differs', 'backTab', inches(0, 1, 16)],
    ]);
    expect(checkParts(box)).toEqual([]);
  });
});
