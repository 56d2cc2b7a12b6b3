import { describe, expect, it } from 'vitest';
import { dressSteps } from '../../src/core/dress';
import { layNet } from '../../src/core/net';
import { type BoxStyle, STYLES, styleById } from '../../src/core/styles';
import { inches, toMm } from '../../src/core/units';
import { handoutPage, printBenchCard, printHandout } from '../../src/print';
import { inputOf } from './handout-input';

const MARK = inches(0, 1, 16);
const piece = (kind: 'window' | 'liner', name: string, fit: object) => ({
  id: kind,
  kind,
  name,
  widthMm: 40,
  heightMm: 40,
  perBox: 1,
  grain: 'free' as const,
  paperId: null,
  fit: fit as never,
});
const film = piece('window', 'Film', { rule: 'over-window', panel: 'front', lapMm: 6.35 });
const liner = piece('liner', 'Seed card', { rule: 'behind', aboveRimMm: 12.7, easeMm: 3.175 });
const dressing = { id: 'plain', name: 'Plain', pieces: [film, liner] };
const boxWithWindow = layNet(styleById('open-top') as BoxStyle, {
  sizes: {},
  options: { window: 'front' },
  caliperUm: 300,
});

describe('what goes inside is drawn where it lies', () => {
  const [ofFilm, ofLiner] = dressSteps(boxWithWindow, dressing, MARK).map(({ inside }) => inside);
  const extent = (ring: readonly (readonly [number, number])[], way: 0 | 1) => ({
    least: Math.min(...ring.map((at) => at[way])),
    most: Math.max(...ring.map((at) => at[way])),
  });
  const faceOf = (panel: string) =>
    (boxWithWindow.pieces[0]?.faces.find((face) => face.panel === panel)?.ring ?? []).map(
      ({ x, y }) => [toMm(x), toMm(y)] as const,
    );

  it('film laps over its opening by 1/4 in on every side', () => {
    const hole = (boxWithWindow.pieces[0]?.faces.find(({ panel }) => panel === 'front')?.holes[0] ?? []).map(
      ({ x, y }) => [toMm(x), toMm(y)] as const,
    );
    expect(hole.length).toBeGreaterThan(3);
    for (const way of [0, 1] as const) {
      const [own, opening] = [extent(ofFilm?.ring ?? [], way), extent(hole, way)];
      // Cut on the next mark up, so up to 1/16 in more in all.
      for (const lap of [opening.least - own.least, own.most - opening.most]) {
        expect(lap).toBeGreaterThanOrEqual(6.35 - 0.01);
        expect(lap).toBeLessThan(6.35 + 1.6);
      }
    }
  });

  it('a liner stands on the bottom score of the back, 1/2 in above its rim', () => {
    const back = faceOf('back');
    const [own, wall] = [extent(ofLiner?.ring ?? [], 1), extent(back, 1)];
    expect(own.least).toBeCloseTo(wall.least, 6);
    // Rounded down to a mark of 1/16 in.
    expect(own.most - wall.most).toBeGreaterThan(12.7 - 1.6);
    expect(own.most - wall.most).toBeLessThanOrEqual(12.7);
    const [wide, across] = [extent(ofLiner?.ring ?? [], 0), extent(back, 0)];
    expect(wide.least - across.least).toBeCloseTo(across.most - wide.most, 6);
  });

  it('a liner stands with its foot on the bottom in every style that has a back', () => {
    let seen = 0;
    for (const style of STYLES) {
      const net = layNet(style, { sizes: {}, caliperUm: 300 });
      for (const { inside } of dressSteps(net, { ...dressing, pieces: [liner] }, MARK)) {
        if (!inside) continue;
        const owner = net.pieces.find(({ id }) => id === inside.part);
        const floor = owner?.edges.find(
          ({ kind, left, right }) =>
            kind === 'score' &&
            right !== null &&
            [left, right].some((face) => owner.faces[face]?.panel === 'back') &&
            [left, right].some((face) => /^(?:base|bottomFlap)$/.test(owner.faces[face]?.role ?? '')),
        );
        if (!floor) continue;
        seen++;
        const [a, b] = [floor.a, floor.b].map(({ x, y }) => [toMm(x), toMm(y)] as const) as [
          readonly [number, number],
          readonly [number, number],
        ];
        const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
        const off = inside.ring.map(
          ([x, y]) => Math.abs((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])) / long,
        );
        expect(Math.min(...off), style.id).toBeLessThan(0.01);
      }
    }
    expect(seen).toBeGreaterThan(8);
  });

  it('on the card, in either edition', () => {
    const { cards, ruler, stamp } = inputOf(styleById('open-top') as BoxStyle);
    for (const edition of ['compact', 'roomy'] as const) {
      const card = printBenchCard({
        recipeName: 'Seed box',
        styleName: 'Open-top box',
        inside: boxWithWindow.inside,
        cards,
        faceUp: 'outside',
        grain: null,
        ruler,
        paper: 'letter',
        notes: '',
        stamp,
        edition,
        dressed: { net: boxWithWindow, dressings: [dressing], mark: MARK },
      });
      const drawn = card.pages.flatMap(({ marks }) =>
        marks.filter((mark) => mark.kind === 'area' && mark.ink === 'covered'),
      );
      expect(drawn, edition).toHaveLength(2);
    }
  });

  it('on paper and on the phone, a picture a step', () => {
    const input = { ...inputOf(styleById('open-top') as BoxStyle), net: boxWithWindow };
    const dressed = { ...input, recipe: { ...input.recipe, dressings: [dressing] } };
    const covered = (recipe: typeof input) =>
      printHandout({ ...recipe, paper: 'letter' })
        .pages.flatMap(({ marks }) => marks)
        .filter(({ kind, ink }: { kind: string; ink?: string }) => kind === 'area' && ink === 'covered')
        .length;
    expect(covered(input)).toBe(0);
    expect(covered(dressed)).toBe(2);
    const page = handoutPage(dressed);
    for (const words of ['Film lies on the inside of the front', 'Seed card lies on the inside of the back'])
      expect(page).toContain(words);
  });
});
