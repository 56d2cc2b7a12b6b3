import { describe, expect, it } from 'vitest';
import { layNet } from '../../../src/core/net';
import { benchToolOf, cuttingToolOf } from '../../../src/core/plan';
import { factsOfStyle } from '../../../src/core/plan/event/style-facts';
import { type BoxStyle, STYLES, styleById } from '../../../src/core/styles';
import { inches, ticks } from '../../../src/core/units';

const none = ticks(0);
const letter = {
  id: 'letter',
  across: inches(8, 1, 2),
  up: inches(11),
  grain: 'none',
  squaring: { left: none, right: none, near: none, far: none },
  onHand: 0,
} as const;
const asked = {
  sizes: {},
  caliperUm: 305,
  sheet: letter,
  cutting: cuttingToolOf(undefined),
  bench: benchToolOf(undefined),
};
const factsOf = (id: string, change: object = {}) =>
  factsOfStyle(styleById(id) as BoxStyle, { ...asked, ...change });

describe('what a maker picks a style by', () => {
  // Common practice, no source: the trade box is an 11 × 4 1/2 in blank with every score across the card; a letter sheet gives one, turned on its side.
  it('is read off the net and its program', () => {
    const { merits, sheetsPerFavor } = factsOf('open-top', {
      sizes: {
        width: inches(3, 1, 2),
        depth: inches(1, 1, 2),
        height: inches(3),
        flap: inches(1, 1, 2),
        nothing: inches(1),
      },
    });
    expect(merits.has('trimmer-only')).toBe(true);
    expect(merits.has('no-glue')).toBe(false);
    expect(merits.has('lid')).toBe(false);
    expect(sheetsPerFavor).toBe(1);
  });

  it('two pieces add up, and a piece larger than the sheet fits on none', () => {
    const tray = factsOf('tray-lid', { sheet: { ...letter, across: inches(40), up: inches(40) } });
    expect(tray.sheetsPerFavor).toBeGreaterThan(0);
    expect(tray.sheetsPerFavor).toBeLessThan(1);
    expect(tray.merits.has('one-sheet')).toBe(true);
    const small = factsOf('tray-lid', { sheet: { ...letter, across: inches(2), up: inches(2) } });
    expect(small.sheetsPerFavor).toBeNull();
    expect(small.merits.has('one-sheet')).toBe(false);
  });

  it.each(STYLES.map((style) => [style.id, style] as const))(
    'says that no glue is needed only where none is: %s',
    (_, style) => {
      const { merits } = factsOfStyle(style, asked);
      const glues = layNet(style, asked).pieces.some(({ closing }) =>
        closing.some((act) => act.do === 'glue'),
      );
      if (glues) expect(merits.has('no-glue')).toBe(false);
    },
  );

  // A slanted score and a curved one cannot be pressed along a fence.
  it.each(['gable-top', 'pillow-pack', 'square-pyramid', 'flared-bowl'])(
    'is not scored across the whole card on every style: %s',
    (id) => {
      expect(factsOf(id).merits.has('trimmer-only')).toBe(false);
    },
  );
});
