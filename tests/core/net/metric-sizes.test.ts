import { describe, expect, it } from 'vitest';
import { checkBox } from '../../../src/core/checks';
import { fillSizes, layNet, metricSizes } from '../../../src/core/net';
import { STYLES, styleById } from '../../../src/core/styles';
import { inches, isOnMark, millimetres, toMm, USUAL_FINEST } from '../../../src/core/units';

describe('a box begun at a metric bench', () => {
  it('begins at 90 × 40 × 80 mm with a 25 mm tab where inches begin at 3 1/2 × 1 1/2 × 3 and 1', () => {
    const sizes = fillSizes(styleById('open-top')!, metricSizes(styleById('open-top')!));
    const mm = Object.fromEntries(Object.entries(sizes).map(([name, length]) => [name, toMm(length)]));
    expect(mm).toMatchObject({ width: 90, depth: 40, height: 80, tab: 25 });
    expect(inches(3, 1, 2)).not.toBe(millimetres(90));
  });

  it.each(STYLES.map((style) => [style.id, style] as const))(
    '%s: every size on whole millimetres, and nothing stops it',
    (_, style) => {
      const sizes = metricSizes(style);
      const filled = fillSizes(style, sizes);
      for (const [name, length] of Object.entries(filled))
        expect([name, isOnMark(length, USUAL_FINEST.mm)]).toEqual([name, true]);
      const net = layNet(style, { sizes, caliperUm: 300, mark: USUAL_FINEST.mm });
      expect(checkBox(style, net).filter(({ severity }) => severity === 'stop')).toEqual([]);
    },
  );
});
