import { describe, expect, it } from 'vitest';
import { checkClosingProgram } from '../../../src/core/checks/check-closing-program';
import { asItStands, layNet, type PieceNet } from '../../../src/core/net';
import { type BoxStyle, STYLES } from '../../../src/core/styles';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import { tray } from '../../../src/core/styles/boxes/tray';

const pieceOf = (style: BoxStyle): PieceNet => {
  const [piece] = layNet(style, { sizes: {}, caliperUm: 305 }).pieces;
  if (piece === undefined) throw new Error('no piece');
  return piece;
};
const codesOf = (piece: PieceNet) => checkClosingProgram(piece).map(({ code, where }) => [code, where]);

describe('the acts of closing as a program', () => {
  it.each(STYLES.map((style) => [style.name, style] as const))(
    '%s: glued when it touches, nothing left open',
    (_, style) => {
      const box = layNet(style, { sizes: {}, caliperUm: 305 });
      expect(asItStands(box).flatMap(checkClosingProgram)).toEqual([]);
    },
  );

  it('glue before the walls are up: the first tab does not touch its wall yet', () => {
    const piece = pieceOf(tray);
    const glue = piece.closing.filter((act) => act.do === 'glue');
    const folds = piece.closing.filter((act) => act.do !== 'glue');
    const [first, ...others] = glue;
    if (first === undefined) throw new Error('nothing is glued');
    expect(codesOf({ ...piece, closing: [first, ...folds, ...others] })).toEqual([
      ['glued-before-touching', 'frontLeftTab'],
    ]);
  });

  it('a fold left out: the left flap of the bottom stays flat', () => {
    const piece = pieceOf(openTop);
    const closing = piece.closing.filter((act) => act.do === 'glue' || !act.panels.includes('leftFlap'));
    const told = codesOf({ ...piece, closing });
    expect(told).toContainEqual(['fold-left-out', 'leftFlap']);
    // what is glued onto it finds nothing there
    expect(told).toContainEqual(['glued-before-touching', 'frontFlap']);
  });

  it('a joint that nothing glues', () => {
    const piece = pieceOf(tray);
    const [, ...kept] = piece.closing.filter((act) => act.do === 'glue');
    const folds = piece.closing.filter((act) => act.do !== 'glue');
    expect(codesOf({ ...piece, closing: [...folds, ...kept] })).toEqual([
      ['joint-left-open', 'frontLeftTab'],
    ]);
  });
});
