import { describe, expect, it } from 'vitest';
import { layNet, newOptions, newSizes, type PieceNet } from '../../src/core/net';
import { type Chosen, defaultChoices, piecesOf, STYLES } from '../../src/core/styles';

/**
 * A favor is opened by whoever gets it, without tearing: common practice, no source. What is glued shut after everything else can only be
 * torn. Read off the closing itself; lids in a piece of their own come off.
 */
const gluedShut = ({ closing }: PieceNet): boolean => closing.at(-1)?.do === 'glue';

const closed = STYLES.filter(
  (style) => style.traits.includes('lid') && Object.keys(piecesOf(style, defaultChoices(style))).length === 1,
);

const made = (id: string, chosen: Chosen = {}): readonly PieceNet[] => {
  const style = STYLES.find((one) => one.id === id)!;
  const options = { ...defaultChoices(style), ...newOptions(style), ...chosen };
  return layNet(style, { sizes: newSizes(style), options, caliperUm: 300 }).pieces;
};

describe('a new box of one piece with a lid', () => {
  it.each(closed.map(({ id }) => id))('opens again: %s', (id) => {
    expect(made(id).filter(gluedShut)).toEqual([]);
  });

  it('is asked of the box styles that close by a tuck, a tie or a fold, of more than six', () => {
    expect(closed.length).toBeGreaterThan(6);
  });

  it('would be glued shut where the handle strips of a gable box are glued', () => {
    expect(made('gable-top', { ridge: 'glued' }).map(gluedShut)).toEqual([true]);
  });
});
