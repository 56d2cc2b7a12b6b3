import { describe, expect, it } from 'vitest';
import { checkClosingPath, checkGeometry } from '../../../src/core/checks';
import type { BoxStyle } from '../../../src/core/styles';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import { pillowPack } from '../../../src/core/styles/boxes/pillow-pack';
import { squarePyramid } from '../../../src/core/styles/boxes/square-pyramid';
import { trayLid } from '../../../src/core/styles/boxes/tray-lid';
import { inches, toMm } from '../../../src/core/units/ticks';
import { boxOf, withPanel, withPiece } from './variant';

const codes = (style: BoxStyle, sizes?: Readonly<Record<string, string>>) =>
  checkGeometry(style, boxOf(style, sizes)).map(({ code }) => code);
const first = (style: BoxStyle, code: string, sizes?: Readonly<Record<string, string>>) =>
  checkGeometry(style, boxOf(style, sizes)).find((finding) => finding.code === code);

describe('a box that closes', () => {
  it.each(
    [openTop, trayLid, pillowPack, squarePyramid].map((style) => [style.name, style as BoxStyle] as const),
  )('has nothing found in it: %s', (_, style) => {
    expect(codes(style)).toEqual([]);
    expect(checkClosingPath(boxOf(style))).toEqual([]);
  });
});

describe('a box whose panels do not add up', () => {
  it('has its tab 1/16 in off the front when the last side is drawn 1/16 too wide', () => {
    const detuned = withPanel(openTop, 'box', 'right', { size: ['depth + 1/16 in', 'height'] });
    expect(first(detuned, 'tab-off-its-wall')).toMatchObject({
      where: 'tab',
      facts: { off: inches(0, 1, 16) },
    });
    expect(first(detuned, 'seam-gapes')).toMatchObject({ facts: { apart: inches(0, 1, 16) } });
  });

  it('has a tab that sticks out of a front narrower than it, by as much', () => {
    expect(first(openTop, 'tab-sticks-out', { width: '2 in', tab: '2 1/8 in' })).toMatchObject({
      where: 'tab',
      facts: { out: inches(0, 1, 8) },
    });
  });

  it('has flaps that miss one another when told to lap and too short to', () => {
    const unlapped = withPiece(openTop, 'box', ({ joints }) => ({
      joints: joints.map(({ when: _, unless: __, ...joint }) => joint),
    }));
    expect(first(unlapped, 'flap-misses', { flap: '1/2 in' })).toMatchObject({
      where: 'backFlap',
      facts: { short: inches(0, 1, 2) },
    }); // 1 1/2 − 2 × 1/2
  });

  it('has a seam that gapes where two slanted sides are folded to different slopes', () => {
    const leaning = withPanel(squarePyramid, 'pyramid', 'front', { fold: 100 });
    expect(codes(leaning)).toContain('seam-gapes');
  });

  it('shows where a bent end does not meet itself', () => {
    const box = boxOf(pillowPack);
    const [piece] = box.pieces;
    if (piece === undefined) throw new Error('one piece');
    const hinges = piece.hinges.map((hinge) =>
      hinge.panel === 'frontLeft' ? { ...hinge, restDeg: 90 } : hinge,
    );
    expect(
      checkGeometry(pillowPack, { ...box, pieces: [{ ...piece, hinges }] }).map(({ code }) => code),
    ).toContain('seam-gapes');
  });

  it('holds another room than its formula when a wall leans', () => {
    const leaning = withPanel(
      withPiece(openTop, 'box', () => ({ joints: [], seams: [], overlaps: [] })),
      'box',
      'left',
      { fold: 80 },
    );
    expect(codes(leaning)).toContain('room-differs');
  });
});

describe('panels in one place', () => {
  it('One piece can’t have both', () => {
    const wide = withPanel(openTop, 'box', 'leftFlap', { size: ['depth + 1/8 in', 'flap'] });
    expect(first(wide, 'panels-overlap-flat')).toMatchObject({ facts: { deep: inches(0, 1, 8) } });
  });

  it('a tab whose slanted ends pass one another cannot be cut: 1 in of taper at both ends of 1 1/2', () => {
    const crossed = withPanel(openTop, 'box', 'tab', { taper: '1 in' });
    expect(first(crossed, 'panel-crosses-itself', { height: '1 1/2 in' })).toMatchObject({ where: 'tab' });
    expect(codes(crossed, { height: '3 in' })).not.toContain('panel-crosses-itself');
  });

  it('a bottom flap 1 9/16 on a depth of 1 1/2 runs under the far wall and is caught only because its layer is lifted', () => {
    expect(codes(openTop, { flap: '1 1/2 in' })).not.toContain('panels-collide');
    const found = first(openTop, 'panels-collide', { flap: '1 9/16 in' });
    expect(toMm(Number(found?.facts['deep']))).toBeGreaterThan(0.25);
    expect(codes(openTop, { flap: '1 9/16 in' })).toContain('panels-collide');
  });

  it('four flaps of one floor take the same place, pair by pair, unless they are declared to lap', () => {
    // of six pairs only the two side flaps, 3 1/2 in apart at their hinges, stay clear: 2 × 1 1/2 < 3 1/2
    const undeclared = withPiece(openTop, 'box', ({ joints }) => ({
      overlaps: [],
      joints: joints.slice(0, 1),
    }));
    expect(codes(undeclared).filter((code) => code === 'panels-overlap-closed')).toHaveLength(5);
  });

  it('corner tabs of a tray that are longer than half its side run over one another', () => {
    const long = withPiece(trayLid, 'tray', ({ panels }) => ({
      panels: Object.fromEntries(
        Object.entries(panels).map(([name, panel]) => [
          name,
          name.endsWith('Tab') ? { ...panel, size: ['height', 'height'] } : panel,
        ]),
      ),
    }));
    expect(first(long, 'panels-overlap-closed', { height: '1 1/2 in', depth: '2 in' })).toMatchObject({
      facts: { deep: inches(1) },
    }); // 2 × 1 1/2 − 2
  });

  it('all four bottom flaps folded at once collide on the way; side flaps first, they do not', () => {
    const together = withPiece(openTop, 'box', ({ closing }) => ({
      closing: [
        ...closing.slice(0, 4),
        { do: 'fold', panels: ['leftFlap', 'rightFlap', 'frontFlap', 'backFlap'] },
      ],
    }));
    expect(checkClosingPath(boxOf(openTop))).toEqual([]);
    expect(checkClosingPath(boxOf(together)).map(({ code }) => code)).toContain('panels-collide-closing');
  });
});

describe('what a style promises', () => {
  it('flaps that should cover the floor leave a hole of depth less both flaps', () => {
    expect(first(openTop, 'panels-leave-hole', { depth: '1 3/4 in', flap: '3/4 in' })).toMatchObject({
      facts: { hole: inches(0, 1, 4) },
    });
  });

  it('a lid no larger than its tray does not go over it', () => {
    const small: BoxStyle = {
      ...trayLid,
      lets: { lidWidth: 'width', lidDepth: 'depth' },
    };
    expect(first(small, 'pieces-do-not-nest')).toMatchObject({ where: 'lid', facts: { play: 0 } });
  });
});
