import { describe, expect, it } from 'vitest';
import { drawFoldedBox } from '../../../src/core/draw/folded-drawing';
import { dressSteps, wornOf } from '../../../src/core/dress';
import { putOnPaper, seeBoxShut } from '../../../src/core/fold/seen/figure';
import { seeWorn, type Worn, wearersOf } from '../../../src/core/fold/seen/worn';
import { layNet } from '../../../src/core/net';
import { type At, areaOf } from '../../../src/core/plane';
import type { Dressing, DressingPiece } from '../../../src/core/rows';
import { STYLES, styleById } from '../../../src/core/styles/registry';
import { USUAL_FINEST } from '../../../src/core/units';

const netOf = (id: string) => layNet(styleById(id)!, { sizes: {}, caliperUm: 300 });
const asItIs = (point: At): At => point;

/** What each piece of a box wears, as it is seen, with the share of its panel that each part covers. */
function seen(id: string, worn: readonly Worn[]) {
  const placed = seeBoxShut(netOf(id));
  const wearers = wearersOf(placed);
  return placed.flatMap(({ figure }, at) => {
    const { covers } = putOnPaper(figure, asItIs);
    return seeWorn(figure, worn, asItIs, covers, wearers[at]!).map((area) => ({
      ...area,
      piece: figure.piece.id,
      panel: area.face === null ? null : figure.piece.faces[area.face]!.panel,
      share: area.face === null ? 0 : Math.abs(areaOf(area.ring)) / Math.abs(areaOf(covers[area.face]!.ring)),
    }));
  });
}

const strip = (way: 'walls' | 'front' | 'sides', widthMm: number): Worn => ({
  kind: 'strip',
  id: 's',
  of: 'card',
  way,
  widthMm,
});

describe('what a closed box wears', () => {
  it('is a band as wide as it is cut, on every wall that is seen: 19.05 mm of 76.2 is a quarter of each', () => {
    // A parallel picture keeps shares of an area.
    const band = seen('open-top', [strip('walls', 19.05)]).filter(
      ({ panel }) => panel === 'front' || panel === 'right' || panel === 'left',
    );
    expect(band.length).toBeGreaterThanOrEqual(2);
    for (const { share } of band) expect(share).toBeCloseTo(0.25, 6);
  });

  it('goes over a roof: ribbon 12.7 mm wide covers a sixth of a roof 76.2 mm wide', () => {
    const roof = seen('house', [strip('front', 12.7)]).filter(({ panel }) =>
      panel?.toLowerCase().includes('roof'),
    );
    expect(roof.length).toBeGreaterThan(0);
    for (const { share } of roof) expect(share).toBeCloseTo(1 / 6, 6);
  });

  it('lies under what is put on later: a band hides the middle of the tag below it', () => {
    const tag: Worn = {
      kind: 'patch',
      id: 'tag',
      part: 'box',
      panel: 'front',
      outline: [
        [30, 50],
        [50, 50],
        [50, 110],
        [30, 110],
      ],
    };
    const long = (areas: ReturnType<typeof seen>) =>
      areas
        .filter(({ id }) => id === 'tag')
        .flatMap(({ edges }) => edges)
        .reduce((sum, [[ax, ay], [bx, by]]) => sum + Math.hypot(bx - ax, by - ay), 0);
    const bare = long(seen('open-top', [tag]));
    expect(bare).toBeGreaterThan(0);
    expect(long(seen('open-top', [tag, strip('walls', 19.05)]))).toBeLessThan(bare);
    expect(long(seen('open-top', [strip('walls', 19.05), tag]))).toBeCloseTo(bare, 6);
  });

  it('has one bow, on the lid where there is one, and on the sleeve, not the drawer', () => {
    const bow: Worn = { kind: 'bow', id: 'bow', on: 'top', loops: 2, loopMm: 30, tailMm: 30, widthMm: 10 };
    const pieces = (id: string) => [...new Set(seen(id, [bow]).map(({ piece }) => piece))];
    expect(pieces('tray-lid')).toEqual(['lid']);
    expect(pieces('sleeve-drawer')).toEqual(['sleeve']);
    // Two tails, two loops, a knot.
    expect(seen('open-top', [bow])).toHaveLength(5);
  });

  it('is drawn for every style, and shows nothing on the far side', () => {
    for (const { id } of STYLES) {
      const drawing = drawFoldedBox(netOf(id), { widthMm: 80, heightMm: 60 }, [
        strip('walls', 5),
        strip('front', 5),
      ]);
      expect(Number.isFinite(drawing.widthMm + drawing.heightMm), id).toBe(true);
      expect(drawing.marks.length, id).toBeGreaterThan(4);
    }
    expect(seen('open-top', [strip('walls', 10)]).some(({ panel }) => panel === 'back')).toBe(false);
  });
});

describe('a look as steps', () => {
  const piece = (id: string, kind: DressingPiece['kind'], more: Partial<DressingPiece>): DressingPiece => ({
    id,
    kind,
    name: id,
    widthMm: 30,
    heightMm: 20,
    perBox: 1,
    grain: 'free',
    paperId: null,
    ...more,
  });
  const look: Dressing = {
    id: 'look',
    name: 'Look',
    pieces: [
      piece('band', 'band', { fit: { rule: 'around', heightMm: 20, lapMm: 12.7 } }),
      piece('tag', 'tag', { placed: { panel: 'front', leftMm: 10, downMm: 10 } }),
      piece('gone', 'layer', { fit: { rule: 'on-panel', panel: 'no-such-panel', revealMm: 3 } }),
    ],
    ties: [
      {
        id: 'ribbon',
        name: 'Ribbon',
        supplyId: null,
        wrap: 'over-front',
        bow: { loops: 2, loopMm: 40, tailMm: 40, knotMm: 20 },
        perBox: 1,
      },
    ],
  };

  it('sticks on first, then bands, then ties; a piece without a place is left out', () => {
    const steps = dressSteps(netOf('open-top'), look, USUAL_FINEST.in);
    expect(steps.map(({ id }) => id)).toEqual(['tag', 'band', 'ribbon']);
    expect(steps.map(({ says }) => says)).toEqual([
      'Stick {name} on the {panel}.',
      'Wrap {name} around the walls. Overlap the ends and join them.',
      'Take {name} once around, under the bottom and up. Tie the bow on top.',
    ]);
    expect(steps.map(({ worn }) => worn.length)).toEqual([1, 2, 4]);
    expect(wornOf(netOf('open-top'), look, USUAL_FINEST.in)).toEqual(steps.at(-1)?.worn);
  });

  it('mirrors a tag from the outside of the panel to its inside', () => {
    // Outside up, the front of the 11 in blank begins 7 1/2 in from the left; the tag 10 mm further. Inside up it ends 10 mm before the front's right edge.
    const [step] = dressSteps(netOf('open-top'), look, USUAL_FINEST.in);
    const front = netOf('open-top').pieces[0]!.faces.find(({ panel }) => panel === 'front')!;
    const right = Math.max(...front.ring.map(({ x }) => x)) / 320;
    const [patch] = step!.worn;
    const outline = patch?.kind === 'patch' ? patch.outline : [];
    expect(Math.max(...outline.map(([x]) => x))).toBeCloseTo(right - 10, 2);
  });
});
