import { describe, expect, it } from 'vitest';
import { layNet } from '../../../src/core/net';
import { tapeJoints } from '../../../src/core/net/joint-tape';
import { fillRolls } from '../../../src/core/plan/buying/rolls';
import { STYLES, styleById } from '../../../src/core/styles';
import { inches } from '../../../src/core/units';

const openTop = layNet(styleById('open-top')!, { sizes: { flap: inches(1, 1, 2) }, caliperUm: 300 });

const tapesOf = (id: string) =>
  layNet(styleById(id)!, { sizes: {}, caliperUm: 300 }).pieces.flatMap((piece) => tapeJoints(piece));

describe('tape on glue joints', () => {
  it('takes 9 7/16 in for the 3 1/2 × 1 1/2 × 3 box, one strip a joint, and 377 1/2 in for 40', () => {
    // common practice, no source: side 2 15/16 in + bottom 3 1/2 in + 2 × 1 1/2 in
    const strips = openTop.pieces.flatMap((piece) => tapeJoints(piece, 1));
    const total = strips.reduce((sum, strip) => sum + strip.length * strip.strips, 0);
    expect(total).toBe(inches(9, 7, 16));
    expect(40 * total).toBe(inches(377, 1, 2));
  });

  it('doubles only the joints under load', () => {
    const strips = openTop.pieces.flatMap((piece) => tapeJoints(piece));
    expect(strips.map(({ panel, onto, length, strips: count }) => [panel, onto, length, count])).toEqual([
      ['tab', 'front', inches(2, 15, 16), 1],
      ['frontFlap', 'leftFlap', inches(1, 1, 2), 2],
      ['frontFlap', 'rightFlap', inches(1, 1, 2), 2],
      ['backFlap', 'frontFlap', inches(3, 1, 2), 2],
    ]);
  });

  it('knows how deep the glued panel is, so that tape can be narrower', () => {
    expect(openTop.pieces.flatMap((piece) => tapeJoints(piece)).map(({ depth }) => depth)).toEqual([
      inches(1),
      inches(1, 1, 2),
      inches(1, 1, 2),
      inches(1, 1, 2),
    ]);
  });

  it.each(STYLES.map((style) => style.id))('gives every joint of a %s a strip of a sensible length', (id) => {
    for (const piece of layNet(styleById(id)!, { sizes: {}, caliperUm: 300 }).pieces) {
      const strips = tapeJoints(piece);
      const panels = new Set(
        piece.joints.map(({ tab, target }) => `${piece.faces[tab]!.panel} ${piece.faces[target]!.panel}`),
      );
      expect(strips).toHaveLength(panels.size);
      for (const strip of strips) {
        expect(strip.length).toBeGreaterThan(inches(0, 1, 8));
        expect(strip.length).toBeLessThanOrEqual(Math.hypot(piece.blank.across, piece.blank.up));
        expect(strip.depth).toBeGreaterThan(0);
      }
    }
  });

  it('takes a bent tab for one joint, however many facets draw it', () => {
    // 5 in long and 1/2 in deep; common practice, no source
    const strips = tapesOf('pillow-pack');
    expect(strips.map(({ panel, length, strips: count }) => [panel, length, count])).toEqual([
      ['tab', inches(5), 1],
    ]);
    expect(strips[0]?.depth).toBeGreaterThan(inches(0, 7, 16));
  });

  it('runs along the seam on a tab that carries another one on', () => {
    // The roof's tab stands on the wall's: 1 1/2 in of roof, not the 1 in across it.
    const roof = tapesOf('gable-top').find(({ panel }) => panel === 'roofTab');
    expect(roof).toMatchObject({ length: inches(1, 1, 2), depth: inches(1) });
  });

  it('lays no strip longer than a mitred corner has card for', () => {
    // A triangle 31.4 mm long and 7.9 mm high is 31.4 × (7.9 − 6.35) / 7.9 = 6.2 mm long a tape's width in.
    const corners = tapesOf('crash-lock').filter(({ panel }) => panel.endsWith('Corner'));
    for (const { length } of corners) expect(length).toBeLessThan(7 * 320);
    expect(corners).toHaveLength(2);
  });

  it('fits 40 boxes’ strips on the fewest rolls of 5 yd', () => {
    const pieces = openTop.pieces
      .flatMap((piece) => tapeJoints(piece, 1))
      .map(({ length, strips }) => ({ length, count: 40 * strips }));
    // 380 in on rolls of 180 in: 2.1, so 3
    expect(fillRolls(pieces, inches(180))).toMatchObject({ rolls: 3, lowerBound: 3 });
  });
});
