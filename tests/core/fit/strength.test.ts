import { describe, expect, it } from 'vitest';
import { bottomPlate, estimateBottom, sagMm, stiffnessOf } from '../../../src/core/fit/strength';
import { layNet } from '../../../src/core/net';
import { styleById } from '../../../src/core/styles';

describe('how stiff card is', () => {
  // Plate strip of the textbooks: S = E t³/12 at 5 GPa; the column of a handbook table, re-derived.
  it.each([
    [200, 3.33],
    [250, 6.51],
    [300, 11.25],
    [350, 17.86],
    [400, 26.67],
  ])('card %i µm thick has %f mN·m at 5 GPa', (caliperUm, expected) => {
    expect(stiffnessOf(caliperUm, 5).milliNewtonMetres).toBeCloseTo(expected, 2);
  });

  it('doubling the caliper is eight times as stiff', () => {
    expect(stiffnessOf(400, 5).milliNewtonMetres / stiffnessOf(200, 5).milliNewtonMetres).toBeCloseTo(8, 12);
  });
});

describe('how far a bottom sags', () => {
  it('250 g/m² card of 11.25 mN·m over 150 mm sags 1.437 mm under its own weight', () => {
    // Textbook: 5 q L⁴ / 384 S with q = 0.25 kg/m² × 9.81 = 2.4525 Pa.
    expect(sagMm(150, 2.4525, 11.25)).toBeCloseTo(1.437, 3);
  });

  it('advises, and never calls a load safe', () => {
    const floor = { widthMm: 120, depthMm: 90, layers: 1 };
    const doubled = { ...floor, layers: 2 };
    const heavy = estimateBottom(floor, { caliperUm: 250, modulusGpa: null }, 400);
    expect(heavy.stiffness.typical).toBe(true);
    expect(heavy.advice).toEqual(['double-the-bottom', 'heavier-card', 'trial-box-first']);
    const light = estimateBottom(doubled, { caliperUm: 300, modulusGpa: 5 }, 5);
    expect(light.advice).toEqual([]);
    expect(estimateBottom(doubled, { caliperUm: 300, modulusGpa: 5 }, null).advice).toContain(
      'weigh-contents',
    );
  });
});

describe('which bottom carries as one plate', () => {
  const plateOf = (id: string) => bottomPlate(layNet(styleById(id)!, { sizes: {}, caliperUm: 300 }));

  it('spans the box’s own sides, not the room the contents need', () => {
    // 3 1/2 × 1 1/2 in from score to score, four flaps glued two deep
    expect(plateOf('open-top')).toEqual({ widthMm: 88.9, depthMm: 38.1, layers: 2 });
  });

  it.each(['tray', 'tray-lid', 'double-wall', 'sleeve-drawer', 'square-pyramid'])(
    '%s: one sheet with walls',
    (id) => {
      expect(plateOf(id)?.layers).toBe(1);
    },
  );

  it.each([
    'star-box',
    'prism-lid',
    'snap-lock',
    'crash-lock',
    'straight-tuck',
    'reverse-tuck',
    'pillow-pack',
    'cornet',
    'wedge',
  ])('%s: a loose floor, halves that lock or a tuck are not estimated', (id) => {
    expect(plateOf(id)).toBeNull();
    const bottom = estimateBottom(plateOf(id), { caliperUm: 300, modulusGpa: null }, 100);
    expect(bottom).toMatchObject({ sag: null, advice: ['trial-box-first'] });
  });
});
