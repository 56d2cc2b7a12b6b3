import { describe, expect, it } from 'vitest';
import { checkBox } from '../../../src/core/checks';
import { newWay } from '../../../src/core/checks/new-way';
import { type BoxNet, layNet, metricSizes, newOptions, newSizes } from '../../../src/core/net';
import { STYLES, styleById } from '../../../src/core/styles';
import { inches, USUAL_FINEST } from '../../../src/core/units';

const begun = (id: string): BoxNet => {
  const style = styleById(id)!;
  return layNet(style, { sizes: newSizes(style), options: newOptions(style), caliperUm: 300 });
};
/** A saved box that names no size and no option. */
const saved = (id: string): BoxNet => layNet(styleById(id)!, { sizes: {}, caliperUm: 300 });

describe('a new box of a style whose first sizes or ways were changed', () => {
  it.each(STYLES.map((style) => [style.id, style] as const))(
    '%s: nothing stops it, in inches and metric',
    (id, style) => {
      for (const [sizes, mark] of [
        [newSizes(style), inches(0, 1, 16)],
        [metricSizes(style), USUAL_FINEST.mm],
      ] as const) {
        const net = layNet(style, { sizes, options: newOptions(style), caliperUm: 300, mark });
        expect(
          checkBox(style, net).filter(({ severity }) => severity === 'stop'),
          id,
        ).toEqual([]);
      }
    },
  );

  it('a lid half as deep as its tray, with a thumb notch in both ends', () => {
    const { values, options, pieces } = begun('tray-lid');
    // tray 1 in high: lid 1/2; growth 4 x .3 mm + 3/64 in = 2.39 mm, up to a mark 1/8 in; blank 4 1/8 + 2 x 1/2 across
    expect(values['lip']).toBe(inches(0, 1, 2));
    expect(options['notch']).toBe('lid-ends');
    expect(values['notchRadius']).toBe(inches(0, 1, 4));
    const across = pieces.find(({ id }) => id === 'lid')!.faces.flatMap(({ ring }) => ring.map(({ x }) => x));
    expect(Math.max(...across) - Math.min(...across)).toBe(inches(5, 1, 8));
  });

  it('a pyramid tied with a ribbon, its hole 3/8 in below the tip where a bow gathers all four', () => {
    const { values, options } = begun('square-pyramid');
    expect(options['edges']).toBe('ribbon');
    expect(values['holeBelow']).toBe(inches(0, 3, 8));
    // the side is 3/8 x (3/2)/3.57946 = .1571 in wide there, square to its edge; less half a hole of 1/8 in .0946 in of card is left
    expect(checkBox(styleById('square-pyramid')!, begun('square-pyramid')).map(({ code }) => code)).toEqual(
      [],
    );
  });

  it('a cake slice with its seam beside the back, where a finger gets in', () => {
    const tabOn = ({ pieces: [slice] }: BoxNet) => {
      const tab = slice?.faces.findIndex(({ panel }) => panel === 'tab');
      return slice?.faces[slice.hinges.find(({ child }) => child === tab)?.parent ?? -1]?.panel;
    };
    expect(tabOn(begun('wedge'))).toBe('back');
    expect(tabOn(saved('wedge'))).toBe('right');
  });

  it('a tray too low for a notch in its lid goes without', () => {
    const style = styleById('tray-lid')!;
    // 3/4 in: the lid is 3/8, and a notch of 1/4 leaves 1/8 in of card below it where 1/4 is wanted
    expect(newWay(style, { height: inches(0, 3, 4) }, 300)).toEqual({});
    expect(newWay(style, { height: inches(2) }, 300)).toEqual({ notch: 'lid-ends' });
    expect(newSizes(style, { height: inches(0, 1, 2) })['lip']).toBe(inches(0, 3, 8));
  });

  it('what was saved without them is made as it was', () => {
    expect(saved('tray-lid').values).toMatchObject({ lip: inches(1) });
    expect(saved('tray-lid').options['notch']).toBe('none');
    expect(saved('square-pyramid').options['edges']).toBe('glued');
    expect(saved('square-pyramid').values['holeBelow']).toBe(inches(0, 7, 8));
    expect(saved('fin-top').values['width']).toBe(inches(2, 1, 2));
  });
});
