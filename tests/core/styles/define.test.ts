import { describe, expect, it } from 'vitest';
import {
  type BoxStyle,
  defineStyle,
  everyChoice,
  type PieceSpec,
  piecesOf,
  STYLES,
  StyleError,
  styleById,
} from '../../../src/core/styles';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import { checkOnce } from '../../../src/core/styles/language/check-style';

const style: BoxStyle = openTop;
const box = piecesOf(style)['box'] as PieceSpec;
const withBox = (part: Partial<PieceSpec>): BoxStyle => ({ ...style, pieces: { box: { ...box, ...part } } });
const withPanel = (name: string, panel: unknown): BoxStyle =>
  withBox({ panels: { ...box.panels, [name]: panel } as PieceSpec['panels'] });
const [bound] = style.constraints;
if (bound === undefined) throw new Error('the open-top box has limits');

describe('a style’s declaration', () => {
  it.each<[string, BoxStyle, RegExp]>([
    ['an id with a space', { ...style, id: 'Open top' }, /id/],
    ['a length made of a name nobody declared', { ...style, lets: { lap: '2 falp' } }, /falp/],
    ['a length that is no sum', { ...style, lets: { lap: '2 * flap' } }, /linear form/],
    ['a name declared twice', { ...style, lets: { flap: 'depth' } }, /flap is declared twice/],
    ['a name that is a unit', { ...style, lets: { mm: 'depth' } }, /mm cannot/],
    [
      'a panel on an edge there is not',
      withPanel('tab', { role: 'glueTab', size: ['tab', 'height'], on: 'left.e4' }),
      /left\.e4/,
    ],
    [
      'a panel on a panel declared later',
      withPanel('right', { role: 'wall', size: ['depth', 'height'], on: 'tab.right' }),
      /after it/,
    ],
    [
      'a second panel that hangs on nothing',
      withPanel('right', { role: 'wall', size: ['depth', 'height'] }),
      /hangs on nothing/,
    ],
    ['a fold by an angle nobody declared', withPanel('tab', { ...box.panels['tab'], fold: 'lean' }), /lean/],
    [
      'a joint of a panel there is not',
      withBox({ joints: [{ panel: 'lid', onto: 'front', lap: 'inside' }] }),
      /no panel lid/,
    ],
    [
      'a glue step without its joint',
      withBox({ closing: [{ do: 'glue', panel: 'tab', onto: 'back' }] }),
      /without a joint/,
    ],
    [
      'a closing step of a panel there is not',
      withBox({ closing: [{ do: 'fold', panels: ['lid'] }] }),
      /no panel lid/,
    ],
    ['a seam at an edge there is not', withBox({ seams: [['front.e0', 'left.right']] }), /front\.e0/],
    [
      'a limit on a name that is no size',
      { ...style, constraints: [{ ...bound, symbol: 'lap' }] },
      /no symbol/,
    ],
    [
      'a limit with no bound',
      { ...style, constraints: [(({ atLeast: _, ...rest }) => rest)(bound)] },
      /needs one bound/,
    ],
    [
      'a sentence with a number nobody declared',
      { ...style, constraints: [{ ...bound, says: 'Too {much}.' }] },
      /\{much\}/,
    ],
    [
      'a fit said by a limit there is not',
      { ...style, fits: (style.fits ?? []).map((fit) => ({ ...fit, saidBy: 'lid-jams' })) },
      /lid-jams/,
    ],
    [
      'a promise about a piece there is not',
      { ...style, promises: [{ claim: 'covers', piece: 'lid', panels: [], area: ['width', 'depth'] }] },
      /lid/,
    ],
  ])('is refused before it is laid for %s', (_, broken, why) => {
    const declared = defineStyle(broken);
    expect(() => checkOnce(declared)).toThrow(StyleError);
    expect(() => checkOnce(declared)).toThrow(why);
  });

  it('is met again by its id, and every id is its own', () => {
    for (const known of STYLES) expect(styleById(known.id)).toBe(known);
    expect(new Set(STYLES.map(({ id }) => id)).size).toBe(STYLES.length);
    expect(styleById('no-such-box')).toBeUndefined();
  });

  it('names every way its options combine', () => {
    const choices = (ids: string[]) => ({
      label: '',
      help: '',
      choices: ids.map((id) => ({ id, label: id })),
    });
    const all = everyChoice({
      ...style,
      options: { seam: choices(['back', 'side']), tab: choices(['left', 'right']) },
    });
    expect(all.map(({ seam, tab }) => `${seam} ${tab}`)).toEqual([
      'back left',
      'back right',
      'side left',
      'side right',
    ]);
  });
});

it.each(STYLES.map((one) => [one.id, one] as const))(
  '%s: ties nothing to a choice that it does not offer',
  (_, { symbols, options = {}, constraints, fits = [] }) => {
    const tied = [...Object.values(symbols), ...Object.values(options), ...constraints, ...fits];
    const strangers = tied.flatMap(({ given = [] }) =>
      given
        .flatMap((way) => Object.entries(way))
        .filter(([option, choice]) => !options[option]?.choices.some(({ id }) => id === choice)),
    );
    expect(strangers).toEqual([]);
  },
);
