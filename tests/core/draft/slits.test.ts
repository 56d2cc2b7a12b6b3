import { describe, expect, test } from 'vitest';
import { checkOpenings } from '../../../src/core/checks/check-openings';
import { openDraft } from '../../../src/core/draft/edit-style';
import { emptyBase } from '../../../src/core/draft/first-draft';
import { addHole, removeHole, setHole, turnSlit } from '../../../src/core/draft/openings';
import { moveSlit, slitsOf, snapLength, snapMove } from '../../../src/core/draft/slits';
import { closePiece } from '../../../src/core/fold';
import { foldFileOf, layNet, svgOf } from '../../../src/core/net';
import { proveStyle } from '../../../src/core/proof';
import { readStyle } from '../../../src/core/style-file/read-style';
import { inches, ticks } from '../../../src/core/units';
import { SEED } from '../../seed';
import { drawn, TRAY } from './drawn-styles';

const floor = emptyBase('floor', 'Mine');
const [SIXTEENTH, EIGHTH] = [inches(0, 1, 16), inches(0, 1, 8)];
const open = (text: string) => {
  const opened = openDraft(text);
  if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
  return opened;
};
/** The slit as the draft says that it lies, and as it lies in the laid net: from the panel’s lower left corner. */
function slitOf(text: string, panel: string) {
  const { draft, style } = open(text);
  const net = layNet(style, { sizes: {}, caliperUm: 305 });
  const spec = draft.pieces?.['box']?.panels[panel];
  const piece = net.pieces[0];
  const face = piece?.faces.findIndex((each) => each.panel === panel) ?? -1;
  const ring = piece?.faces[face]?.ring ?? [];
  const [left, low] = [Math.min(...ring.map(({ x }) => x)), Math.min(...ring.map(({ y }) => y))];
  const laid = piece?.edges.filter(
    (edge) => edge.kind === 'slit' && edge.left === face && edge.right === face,
  );
  return {
    said: spec && 'size' in spec ? slitsOf(spec, net.values) : [],
    laid: laid?.map(({ a, b }) => ({
      from: [Math.min(a.x, b.x) - left, Math.min(a.y, b.y) - low],
      long: Math.abs(b.x - a.x) + Math.abs(b.y - a.y),
    })),
  };
}

describe('a slit set by hand', () => {
  test.each(['base', 'left', 'right', 'front', 'back'])(
    'lies in the %s where the net has it, moved and pulled',
    (panel) => {
      const at = { piece: 'box', panel };
      const whole = drawn(floor, [...TRAY, addHole(at, 'slit')]);
      const moved = drawn(whole, [moveSlit(at, 0, [EIGHTH, inches(0, -1, 4)])]);
      const longer = drawn(moved, [moveSlit(at, 0, [ticks(-EIGHTH), ticks(0)], EIGHTH)]);
      const turned = drawn(longer, [turnSlit(at, 0, 'up'), moveSlit(at, 0, [ticks(0), ticks(0)], EIGHTH)]);
      for (const text of [whole, moved, longer, turned]) {
        const { said, laid } = slitOf(text, panel);
        expect(said.map(({ from, long }) => ({ from, long }))).toEqual(laid);
        expect(laid).toHaveLength(1);
      }
      // By hand: it begins 1 in long in the middle; moved by an eighth it starts there; pulled at its left end it starts back where it was.
      const [a, b, c] = [whole, moved, longer].map((text) => slitOf(text, panel).laid?.[0]);
      expect(b?.from).toEqual([(a?.from[0] ?? 0) + EIGHTH, (a?.from[1] ?? 0) - inches(0, 1, 4)]);
      expect(c).toEqual({ from: [a?.from[0], b?.from[1]], long: inches(1, 1, 8) });
    },
  );

  test('comes to lie on marks, counted from the panel’s own edges', () => {
    const slit = { at: 0, runs: 'across', long: inches(1), from: [ticks(1000), ticks(508)] } as const;
    // 1000 and 300 ticks are 2.56 sixteenths of 508: the third is nearest.
    expect(snapMove(slit, [300, 0], SIXTEENTH)).toEqual([524, 0]);
    expect(snapLength(slit, inches(0, 3, 32), SIXTEENTH)).toBe(EIGHTH);
    expect(snapLength(slit, inches(-9), SIXTEENTH)).toBe(inches(0, -15, 16));
  });

  test('is a slit on the card, in the file and in every drawing, and the box passes the proof', {
    timeout: 60_000,
  }, () => {
    const at = { piece: 'box', panel: 'front' };
    const text = drawn(floor, [...TRAY, addHole(at, 'slit'), moveSlit(at, 0, [EIGHTH, EIGHTH])]);
    expect(JSON.parse(text)).toMatchObject({ schema: 3 });
    const read = readStyle(text);
    expect(read.ok).toBe(true);
    const { style } = open(text);
    expect(proveStyle(style, { boxes: 12, seed: SEED }).faults).toEqual([]);
    const net = layNet(style, { sizes: {}, caliperUm: 305 });
    const plain = layNet(open(drawn(floor, TRAY)).style, { sizes: {}, caliperUm: 305 });
    // One slit more, and nothing else of the net has changed.
    const count = (of: typeof net, kind: string) =>
      of.pieces[0]?.edges.filter((edge) => edge.kind === kind).length;
    expect(count(net, 'slit')).toBe((count(plain, 'slit') ?? 0) + 1);
    expect(net.pieces[0]?.faces).toEqual(plain.pieces[0]?.faces);
    expect(net.pieces[0]?.waste).toEqual(plain.pieces[0]?.waste);
    const cuts = (of: typeof net) => JSON.stringify(foldFileOf(of, 'box')).match(/"C"/g)?.length;
    expect(cuts(net)).toBe((cuts(plain) ?? 0) + 1);
    expect(svgOf(net, 'box')).not.toBe(svgOf(plain, 'box'));
    expect(drawn(text, [removeHole(at, 0)])).toBe(drawn(floor, TRAY));
  });

  test('too near an edge or past it is found', () => {
    const at = { piece: 'box', panel: 'base' };
    const codes = (along: string) => {
      const { style } = open(drawn(floor, [...TRAY, addHole(at, 'slit'), setHole(at, 0, 'along', along)]));
      const [piece] = layNet(style, { sizes: {}, caliperUm: 305 }).pieces;
      return piece && checkOpenings(closePiece(piece)).map(({ code }) => code);
    };
    // By hand: a slit 1 in long about 5/8 in begins 1/8 in from the edge; about 1/4 in it begins 1/4 in past it.
    expect(codes('2 in')).toEqual([]);
    expect(codes('5/8 in')).toEqual(['opening-near-edge']);
    expect(codes('1/4 in')).toEqual(['opening-crosses-edge']);
  });
});
