import { describe, expect, test } from 'vitest';
import { setPanelSize } from '../../../src/core/draft/change-panel';
import { openDraft } from '../../../src/core/draft/edit-style';
import { emptyBase } from '../../../src/core/draft/first-draft';
import { lengthOfPull, pullAt, pullEdge, pulledForm, pullsOf, snapPull } from '../../../src/core/draft/pull';
import { layNet } from '../../../src/core/net';
import { inches, millimetres, type Ticks } from '../../../src/core/units';
import { drawn, HINGED_LID, TRAY } from './drawn-styles';

const floor = emptyBase('floor', 'Mine');
const SIXTEENTH = inches(0, 1, 16);

function at(text: string, panel: string, edge: string) {
  const open = openDraft(text);
  if (!open.ok) throw new Error('not read');
  const net = layNet(open.style, { sizes: {}, caliperUm: 305 });
  const pull = pullAt(open.draft, { piece: 'box', panel, edge });
  if (pull === null) throw new Error(`no pull at ${panel}.${edge}`);
  return {
    pull,
    draft: open.draft,
    values: net.values,
    long: lengthOfPull(pull, net.values),
    snap: (by: number, alone = false, finest: Ticks = SIXTEENTH) =>
      snapPull(open.draft, net.values, pull, { by, finest, alone }),
    pulled: (by: Ticks, alone = false) => drawn(text, [pullEdge(pull, net.values, by, alone)]),
  };
}
const draftOf = (text: string) => {
  const open = openDraft(text);
  if (!open.ok) throw new Error('not read');
  return open.draft;
};
const panelOf = (text: string, name: string) => draftOf(text).pieces?.['box']?.panels[name];

describe('a pull at an edge', () => {
  test('changes the size that the panel is as long as, on the marks of the tool and within its limits', () => {
    const { long, snap, pulled, pull } = at(floor, 'base', 'right');
    // By hand: the floor begins 4 in wide, and width may be 1 to 12 in.
    expect([pull.size, long]).toEqual(['width', inches(4)]);
    expect(snap(millimetres(2.6))).toBe(inches(0, 1, 8));
    expect(snap(millimetres(3.6), false, millimetres(1))).toBe(millimetres(105) - inches(4));
    expect(snap(inches(40))).toBe(inches(8));
    expect(snap(inches(-40))).toBe(inches(-3));
    expect(draftOf(pulled(inches(0, 1, 8))).symbols['width']?.default).toBe('4 1/8 in');
    expect(panelOf(pulled(inches(0, 1, 8)), 'base')).toMatchObject({ size: ['width', 'depth'] });
  });

  test('changes that panel alone where it is asked to, in the plain length of its sum', () => {
    const text = drawn(floor, [
      ...TRAY,
      setPanelSize({ piece: 'box', panel: 'front' }, 1, 'height + 1/8 in'),
    ]);
    const { snap, pulled, draft, values, pull } = at(text, 'front', 'down');
    expect(pull.size).toBe('height');
    expect(snap(inches(0, 3, 32), true)).toBe(inches(0, 1, 8));
    expect(pulledForm(draft, values, pull, inches(0, 1, 8), true)).toBe('height + 1/4 in');
    expect(panelOf(pulled(inches(0, 1, 8), true), 'front')).toMatchObject({
      size: ['width', 'height + 1/4 in'],
    });
    // It never gets shorter than one mark: 2 1/8 in less 2 1/16 in.
    expect(snap(inches(-40), true)).toBe(inches(-2, -1, 16));
  });

  test('at the start of a hinge moves the start along, so that the far edge stays', () => {
    // The upper edge of a floor runs from right to left, so its wall starts on the right.
    const text = drawn(floor, TRAY.slice(0, 4));
    const wider = at(text, 'back', 'right').pulled(inches(0, 1, 4), true);
    expect(panelOf(wider, 'back')).toMatchObject({ at: '-1/4 in', size: ['width + 1/4 in', 'height'] });
    const narrower = at(wider, 'back', 'right').pulled(inches(0, -1, 2), true);
    expect(panelOf(narrower, 'back')).toMatchObject({ at: '1/4 in', size: ['width - 1/4 in', 'height'] });
    const other = at(text, 'back', 'left').pulled(inches(0, 1, 4), true);
    expect(panelOf(other, 'back')).toMatchObject({ size: ['width + 1/4 in', 'height'] });
    expect(panelOf(other, 'back')).not.toHaveProperty('at');
  });

  test('is there for straight free edges alone', () => {
    const draft = draftOf(drawn(floor, HINGED_LID));
    const edges = (panel: string) => pullsOf(draft, { piece: 'box', panel }).map(({ side }) => side);
    expect(edges('base')).toEqual(['left', 'right', 'up', 'down']);
    expect(edges('back')).toEqual(['left', 'right', 'up']);
    // The tuck is drawn in at both ends.
    expect(edges('tuck')).toEqual(['up']);
    // The lid is as wide as a named sum, which is no size of its own.
    expect(pullAt(draft, { piece: 'box', panel: 'lid', edge: 'left' })?.size).toBeNull();
  });
});
