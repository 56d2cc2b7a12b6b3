import { describe, expect, it } from 'vitest';
import { checkLapOrder } from '../../../src/core/checks/check-lap-order';
import { asItStands, type PieceNet } from '../../../src/core/net';
import type { BoxStyle } from '../../../src/core/styles';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import { snapLock } from '../../../src/core/styles/boxes/snap-lock';
import { straightTuck } from '../../../src/core/styles/boxes/straight-tuck';
import { wallet } from '../../../src/core/styles/boxes/wallet';
import { boxOf, sayIt } from './variant';

const pieceOf = (style: BoxStyle): PieceNet => asItStands(boxOf(style))[0] ?? expect.fail();
const told = (piece: PieceNet) => checkLapOrder(piece).map(sayIt);

/** The same piece with the acts that move two panels in each other's place. */
function swapped(piece: PieceNet, one: string, other: string): PieceNet {
  const actOf = (panel: string) =>
    piece.closing.findIndex((act) => act.do !== 'glue' && act.panels.includes(panel));
  const [a, b] = [actOf(one), actOf(other)];
  const closing = [...piece.closing];
  [closing[a], closing[b]] = [closing[b] ?? expect.fail(), closing[a] ?? expect.fail()];
  return { ...piece, closing };
}

describe('the order of layers and the order of closing', () => {
  it.each([openTop, straightTuck, snapLock, wallet])('agree in $name', (style) => {
    expect(told(pieceOf(style))).toEqual([]);
  });

  it('a dust flap folded in after the lid would lie on top of it', () => {
    const [first] = told(swapped(pieceOf(straightTuck), 'topLeftDust', 'topLid'));
    expect(first).toMatch(/top left dust should be inside the top lid/);
  });

  it('a tab folded over after the pocket it hangs on would lie outside the cover', () => {
    expect(told(swapped(pieceOf(wallet), 'frontPocket', 'frontTab')).join()).toMatch(
      /front tab .* inside the front,/,
    );
  });

  it('no two flaps of a glued bottom can change places in the layers', () => {
    const piece = pieceOf(openTop);
    const [bottom = []] = piece.overlaps;
    expect(bottom).toHaveLength(4);
    bottom.forEach((_, at) => {
      const layers = [...bottom];
      layers.splice(at, 2, ...layers.slice(at, at + 2).reverse());
      if (at < 3) expect(told({ ...piece, overlaps: [layers] })).not.toEqual([]);
    });
  });
});
