import { describe, expect, test } from 'vitest';
import { addPanel } from '../../../src/core/draft/add-panel';
import { setPanelTaper } from '../../../src/core/draft/change-panel';
import { canCut, setCut } from '../../../src/core/draft/cuts';
import type { Edit } from '../../../src/core/draft/draft';
import { editStyle, openDraft } from '../../../src/core/draft/edit-style';
import { emptyBase } from '../../../src/core/draft/first-draft';
import { setNotch } from '../../../src/core/draft/openings';
import { layNet } from '../../../src/core/net';
import { looseEnds, notABox, proveStyle, sayProof } from '../../../src/core/proof';
import { inches } from '../../../src/core/units';
import { sayReason } from '../../../src/core/units/reason';
import { SEED } from '../../seed';
import { drawn, HINGED_LID } from './drawn-styles';

const floor = emptyBase('floor', 'Mine');
/** The lid ends in a tuck, whose free edges are its two ends and the one that goes in; here it ends square. */
const lidded = drawn(floor, [...HINGED_LID, setPanelTaper({ piece: 'box', panel: 'tuck' }, '')]);
const on = (panel: string) => ({ piece: 'box', panel });

function open(text: string) {
  const opened = openDraft(text);
  if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
  return opened;
}

/** A panel at 4 × 3 × 2 in, as its corners lie from its own lower left. */
function ringOf(text: string, panel: string) {
  const sizes = { width: inches(4), depth: inches(3), height: inches(2) };
  const net = layNet(open(text).style, { sizes, caliperUm: 300, options: {} }).pieces[0];
  const ring = net?.faces.find(({ name }) => name === panel)?.ring ?? [];
  const [left, low] = [Math.min(...ring.map(({ x }) => x)), Math.min(...ring.map(({ y }) => y))];
  return { ring: ring.map(({ x, y }) => ({ x: x - left, y: y - low })), curves: net?.curves ?? [] };
}

/** Area of a ring in square inches, by the shoelace rule. */
const areaOf = (ring: readonly { readonly x: number; readonly y: number }[]): number =>
  ring.reduce((sum, p, at) => {
    const q = ring[(at + 1) % ring.length] ?? p;
    return sum + (p.x * q.y - q.x * p.y) / 2;
  }, 0) /
  8128 ** 2;

/** Area of a segment of a circle by its chord and rise: R²/2 (2θ - sin 2θ), where R = chord²/8 rise + rise/2 and sin θ = chord/2R. From memory. */
function segmentOf(chord: number, rise: number): number {
  const radius = chord ** 2 / (8 * rise) + rise / 2;
  const angle = 2 * Math.asin(chord / 2 / radius);
  return (radius ** 2 / 2) * (angle - Math.sin(angle));
}

const refusalOf = (edit: Edit, text = lidded): string => {
  const edited = editStyle(text, edit);
  if (edited.ok) throw new Error('it was made');
  const [refusal] = edited.refusals;
  return refusal ? sayReason(refusal, { length: String, money: String }) : '';
};

const round = (size: string): readonly Edit[] => [
  setCut(on('tuck'), 'up', 'round', 'corner', size),
  setCut(on('tuck'), 'left', 'round', 'corner', size),
];

describe('cut corners and curved edges', () => {
  const square = areaOf(ringOf(lidded, 'tuck').ring);

  test('a round corner takes r² (1 - π/4) off, within the chords’ tolerance', () => {
    const { ring, curves } = ringOf(drawn(lidded, round('3/8 in')), 'tuck');
    // 0.375² × 0.2146 = 0.03018 sq in a corner; chords stand off the arc by 0.2 mm at most, along 0.59 in of it: 0.003 sq in
    expect(square - areaOf(ring)).toBeGreaterThan(2 * 0.03018 - 0.0001);
    expect(square - areaOf(ring)).toBeLessThan(2 * (0.03018 + 0.0032));
    expect(curves.map(({ radius, kind }) => [radius, kind])).toEqual([
      [0.375 * 8128, 'cut'],
      [0.375 * 8128, 'cut'],
    ]);
  });

  test('a slanted corner takes s² / 2 off, to the tick', () => {
    const { ring } = ringOf(drawn(lidded, [setCut(on('tuck'), 'up', 'slant', 'corner', '1/4 in')]), 'tuck');
    expect(square - areaOf(ring)).toBeCloseTo(0.25 ** 2 / 2, 9);
  });

  test('a scoop keeps the ends of its edge and takes a segment of a circle off; an arch keeps its middle', () => {
    const wall = areaOf(ringOf(lidded, 'front').ring);
    const scooped = ringOf(
      drawn(floor, [...HINGED_LID.slice(0, 8), setCut(on('front'), 'down', 'scoop', 'edge', '1/2 in')]),
      'front',
    );
    // chord 4 in, rise 1/2 in: 1.3499 sq in. Chords stand off the arc by 0.2 mm at most, along 4.17 in of it: 0.033 sq in
    expect(segmentOf(4, 1 / 2)).toBeCloseTo(1.3499, 4);
    expect(wall - areaOf(scooped.ring)).toBeLessThan(1.35);
    expect(wall - areaOf(scooped.ring)).toBeGreaterThan(1.3499 - 0.033);
    expect(Math.min(...scooped.ring.map(({ y }) => y))).toBe(0);
    const arched = ringOf(drawn(lidded, [setCut(on('tuck'), 'up', 'arch', 'edge', '1/4 in')]), 'tuck').ring;
    const whole = ringOf(lidded, 'tuck').ring;
    const [high, wide] = [Math.max(...whole.map(({ y }) => y)), Math.max(...whole.map(({ x }) => x)) / 8128];
    expect(Math.max(...arched.map(({ y }) => y))).toBe(high);
    // What is left of a strip 1/4 in deep along the edge is the segment under the arch.
    const taken = square - areaOf(arched);
    expect(taken).toBeGreaterThan(wide / 4 - segmentOf(wide, 1 / 4) - 0.001);
    expect(taken).toBeLessThan(wide / 4 - segmentOf(wide, 1 / 4) + 0.033);
  });

  test('such a box passes the whole proof, card and FOLD file among it', { timeout: 120_000 }, () => {
    const style = open(
      drawn(lidded, [
        ...round('1/4 in'),
        setCut(on('front'), 'down', 'scoop', 'edge', '1/4 in'),
        setCut(on('leftDust'), 'left', 'slant', 'corner', '1/4 in'),
        setCut(on('rightDust'), 'right', 'round', 'corner', '3/8 in'),
      ]),
    ).style;
    expect(notABox(style)).toEqual([]);
    expect(looseEnds(style)).toEqual([]);
    expect(sayProof(proveStyle(style, { boxes: 60, seed: SEED }))).toEqual([
      'my-style: all is well at 60 boxes.',
    ]);
  });

  test('a corner larger than its panel is told by its name', () => {
    const style = open(drawn(lidded, round('3 in'))).style;
    expect(notABox(style).map(({ code, path }) => `${code} ${path}`)).toEqual([
      'panel-crosses-itself box.tuck',
    ]);
  });
});

describe('what can’t be cut', () => {
  const { draft } = open(lidded);
  const box = draft.pieces?.['box'];

  test('corners and edges that a panel hangs on or a seam closes at stay as they are, and it is said why', () => {
    expect(refusalOf(setCut(on('front'), 'left', 'round', 'corner'))).toContain('has to stay square');
    expect(refusalOf(setCut(on('left'), 'left', 'arch', 'edge'))).toContain('has to stay straight');
    expect(refusalOf(setCut(on('tuck'), 'down', 'scoop', 'edge'))).toContain('has to stay straight');
    expect(refusalOf(setCut(on('tuck'), 'up', 'round', 'corner', 'wdth'))).toContain('wdth');
    expect(box && canCut(box, 'tuck', 'up', 'round')).toBe(true);
  });

  test('two cuts do not meet: an arched edge has no corners to round', () => {
    const arched = drawn(lidded, [setCut(on('tuck'), 'up', 'arch', 'edge')]);
    expect(refusalOf(setCut(on('tuck'), 'up', 'round', 'corner'), arched)).toContain('has to stay square');
    expect(refusalOf(setNotch(on('tuck'), 'up'), arched)).toContain('needs a free straight edge');
    const rounded = drawn(lidded, round('1/4 in'));
    expect(refusalOf(setCut(on('tuck'), 'up', 'scoop', 'edge'), rounded)).toContain('has to stay straight');
  });

  test('a cut changes its kind and its size, and goes; a panel added on its edge makes it square again', () => {
    const slanted = drawn(lidded, [...round('1/4 in'), setCut(on('tuck'), 'up', 'slant', 'corner')]);
    const cuts = (text: string) => {
      const tuck = open(text).draft.pieces?.['box']?.panels['tuck'];
      return tuck && 'cuts' in tuck ? tuck.cuts : undefined;
    };
    expect(cuts(slanted)).toEqual([
      { at: 'left', cut: 'round', size: '1/4 in' },
      { at: 'up', cut: 'slant', size: '1/4 in' },
    ]);
    expect(
      cuts(
        drawn(slanted, [
          setCut(on('tuck'), 'up', null, 'corner'),
          setCut(on('tuck'), 'left', null, 'corner'),
        ]),
      ),
    ).toBeUndefined();
    expect(cuts(drawn(slanted, [addPanel('box', 'tuck', 'up', 'hangTab')]))).toBeUndefined();
    expect(JSON.parse(slanted).schema).toBe(3);
    expect(JSON.parse(lidded).schema).toBe(1);
  });
});
