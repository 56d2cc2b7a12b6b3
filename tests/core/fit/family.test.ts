import { describe, expect, it } from 'vitest';
import { outsideAtMost } from '../../../src/core/draw/step/outside-at-most';
import { type FamilyQuestion, findFamily } from '../../../src/core/fit';
import { foldPiece } from '../../../src/core/fold';
import { layNet } from '../../../src/core/net';
import { styleById } from '../../../src/core/styles';
import { inches, ticks, toMm } from '../../../src/core/units';

const none = ticks(0);
const CALIPER_UM = 300;
const questionFor = (styleId: string, given: Partial<FamilyQuestion> = {}): FamilyQuestion => {
  const style = styleById(styleId);
  if (!style) throw new Error(`no ${styleId}`);
  return {
    style,
    caliperUm: CALIPER_UM,
    need: [inches(2), inches(1, 1, 2), inches(1, 1, 2)],
    slack: inches(0, 1, 2),
    held: {},
    heldOptions: {},
    paper: {
      id: 'press',
      across: inches(12),
      up: inches(18),
      grain: 'none',
      squaring: { left: none, right: none, near: none, far: none },
      onHand: 0,
    },
    tool: { longestCut: null, kerf: none, stack: 1, stages: 'free' },
    ruler: { unit: 'in', finest: inches(0, 1, 16) },
    reach: inches(18),
    members: 2,
    rule: { rule: 'nested', air: inches(0, 1, 16) },
    ...given,
  };
};
const familyOf = (question: FamilyQuestion) => [
  ...findFamily(question, (box) => outsideAtMost(box, CALIPER_UM)),
];

describe('a family of boxes that go into one another', () => {
  // Seen from outside the search: the closed box is folded, its corners measured, and card added on both sides.
  it.each(['open-top', 'straight-tuck', 'tray', 'gable-top', 'sleeve-drawer'])(
    'of the style %s: every corner of the one before, card and all, has room in the next',
    (styleId) => {
      const question = questionFor(styleId);
      const [inner, outer] = familyOf(question).flatMap(({ row }) => row ?? []);
      if (!inner || !outer) throw new Error('not two of them');
      const net = layNet(question.style, {
        sizes: inner.sizes,
        options: inner.options,
        caliperUm: CALIPER_UM,
        mark: question.ruler.finest,
      });
      const spans = net.pieces.map((piece) => {
        const corners = foldPiece(piece).flatMap(({ ring }) => ring);
        return [0, 1, 2]
          .map((axis) => corners.map((corner) => corner[axis] ?? 0))
          .map((along) => Math.max(...along) - Math.min(...along))
          .sort((a, b) => a - b);
      });
      const room = outer.inside.map(toMm).sort((a, b) => a - b);
      for (const span of spans)
        for (const [axis, side] of span.entries())
          expect(side + (2 * CALIPER_UM) / 1000).toBeLessThanOrEqual(room[axis] ?? 0);
    },
  );

  it('ends with an empty place where the sheet is too small for the next', () => {
    const small = { ...questionFor('tray').paper, across: inches(6), up: inches(6) };
    const family = familyOf(questionFor('tray', { paper: small, members: 5 }));
    expect(family.length).toBeLessThan(5);
    expect(family.at(-1)?.row).toBeNull();
    expect(family[0]?.row).not.toBeNull();
  });
});

describe('where a family ends', () => {
  const endOf = (question: FamilyQuestion) => familyOf(question).at(-1)?.ends;
  const tall = [inches(2), inches(1, 1, 2), inches(8)] as const;
  it('the sheet: a tray with walls of 8 in is wider than a sheet of 12 in', () => {
    expect(endOf(questionFor('tray', { need: tall, members: 1 }))?.because).toBe('limits'); // a tray is at most 6 in high
    const open = endOf(questionFor('open-top', { need: [inches(6), inches(5), inches(8)], members: 1 }));
    expect(open?.because).toBe('sheet'); // 2 × 6 + 2 × 5 and a tab are over 22 in
  });

  it('turned, where that was tried and fits: 10 in round is 20 in and more, 10 in high is not', () => {
    const ends = endOf(questionFor('open-top', { need: [inches(10), inches(2), inches(2)], members: 1 }));
    const turned = ends?.ways.find((way) => way.kind === 'turned');
    expect(turned?.kind === 'turned' && turned.need[2]).toBe(inches(10));
  });

  it('the tool, where every size within the style has a score beyond its reach', () => {
    expect(endOf(questionFor('open-top', { reach: inches(1), members: 1 }))?.because).toBe('marks');
  });
});
