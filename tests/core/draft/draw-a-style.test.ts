import { describe, expect, test } from 'vitest';
import { openDraft } from '../../../src/core/draft/edit-style';
import { emptyBase } from '../../../src/core/draft/first-draft';
import { layNet } from '../../../src/core/net';
import { legalBoxes, notABox, proveStyle, sayProof } from '../../../src/core/proof';
import { type BoxStyle, styleById } from '../../../src/core/styles';
import { swayFrom } from '../../../src/core/yield/stock/sway';
import { SEED } from '../../seed';
import { drawn, HINGED_LID, OPEN_TOP, TRAY } from './drawn-styles';

function styleOf(text: string): BoxStyle {
  const open = openDraft(text);
  if (!open.ok) throw new Error(JSON.stringify(open.refusals));
  return open.style;
}

/** Corners and lines of a net, whatever order its panels were drawn in. */
const shapeOf = (style: BoxStyle, box: Parameters<typeof layNet>[1]) =>
  layNet(style, { ...box, options: {} }).pieces.map(({ blank, faces, edges, joints, seams }) => {
    const name = (face: number | null) => (face === null ? null : faces[face]?.panel);
    const spot = ({ x, y }: { x: number; y: number }) => `${x},${y}`;
    return {
      blank,
      faces: faces.map(({ panel, role, ring }) => `${panel} ${role} ${ring.map(spot).join(' ')}`).sort(),
      lines: edges
        .map(({ a, b, kind, foldDeg }) => `${[spot(a), spot(b)].sort().join(' ')} ${kind} ${foldDeg}`)
        .sort(),
      joints: joints.map(({ tab, target, lap, gap }) => `${name(tab)} ${name(target)} ${lap} ${gap}`).sort(),
      seams: seams.length,
    };
  });

describe.each([
  ['open-top', 'wall', OPEN_TOP],
  ['tray', 'floor', TRAY],
  ['hinged-lid', 'floor', HINGED_LID],
] as const)('%s, drawn from an empty base', (id, base, edits) => {
  const style = styleOf(drawn(emptyBase(base, 'Mine'), edits));
  const ours = styleById(id) as BoxStyle;

  test('is a box', () => {
    expect(notABox(style)).toEqual([]);
  });

  test('passes the published proof at 200 sizes', { timeout: 120_000 }, () => {
    expect(sayProof(proveStyle(style, { boxes: 200, seed: SEED }))).toEqual([
      'my-style: all is well at 200 boxes.',
    ]);
  });

  // The style of ours was worked by hand (`tests/fixtures/styles`), and was drawn without the editor.
  test('has the net of the style of ours to the tick, at each size that both allow', () => {
    const boxes = legalBoxes(style, 60, swayFrom(SEED));
    expect(boxes.length).toBeGreaterThan(40);
    for (const box of boxes) expect(shapeOf(style, box)).toEqual(shapeOf(ours, box));
  });
});
