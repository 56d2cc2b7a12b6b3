import { describe, expect, it } from 'vitest';
import { checkBox } from '../../../src/core/checks';
import { newSizesForRoom } from '../../../src/core/fit';
import { layNet } from '../../../src/core/net';
import { styleById } from '../../../src/core/styles';
import { inches, type Ticks, ticks } from '../../../src/core/units';

const RULER = { unit: 'in', finest: inches(0, 1, 16) } as const;

function begunFor(id: string, need: readonly [Ticks, Ticks, Ticks]) {
  const style = styleById(id);
  if (!style) throw new Error(id);
  const asked = { style, caliperUm: 300, need, slack: ticks(0), ruler: RULER, held: {} };
  const sizes = newSizesForRoom(asked);
  return { sizes, findings: checkBox(style, layNet(style, { sizes, caliperUm: 300 })) };
}

describe('a new box for a room', () => {
  it.each([
    // flaps of 1 1/4 in left a hole of 1 9/16 in in the bottom
    ['open-top', [inches(4), inches(4), inches(3)]],
    // and are longer than a box 1 in deep
    ['open-top', [inches(3), inches(1), inches(3)]],
    // a tab of 1 in is wider than a wall 5/8 in high allows
    ['lid-flap', [inches(3), inches(2), inches(0, 5, 8)]],
  ] as const)('%s %j: flaps and tabs follow, and nothing binds', (id, need) => {
    const { findings } = begunFor(id, need);
    expect(findings.filter(({ severity }) => severity === 'stop')).toEqual([]);
    expect(findings.filter(({ code }) => code.endsWith('-binds'))).toEqual([]);
  });

  it('a bottom flap of a box 4 1/16 in deep reaches an eighth past the middle: 2 3/16 in on a sixteenth', () => {
    // room 4 in and half a card of .3 mm at each side: 4 1/16; half of it and 1/8 is 2 5/32, up to 2 3/16
    expect(begunFor('open-top', [inches(4), inches(4), inches(3)]).sizes['flap']).toBe(inches(2, 3, 16));
  });
});
