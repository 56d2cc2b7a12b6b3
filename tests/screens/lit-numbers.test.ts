import { describe, expect, it } from 'vitest';
import { type BenchOp, type BenchTool, boxCards } from '../../src/core/bench';
import { layNet, type PieceNet } from '../../src/core/net';
import { oneSetting } from '../../src/core/plan';
import { STYLES } from '../../src/core/styles';
import { litNumbers } from '../../src/screens/bench/bench-net';
import { trimmer } from '../core/bench/bench-tools';

/**
 * The number that is lit in the net against the score that the program makes. How the card lies is worked out anew: where the point of the net
 * comes to that the maker sees at her left, and which way she then reads along.
 */
type Spot = readonly [number, number];

/** From what the maker sees back to the net's own frame, each move undone in turn. */
function backToNet(ops: readonly BenchOp[], tool: BenchTool, { across, up }: { across: number; up: number }) {
  const undo: ((spot: Spot) => Spot)[] = [];
  let [wide, high] = [across, up];
  for (const op of ops) {
    const quarters = op.op === 'turn' ? (tool.fence === 'right' ? 4 - op.quarters : op.quarters) : 0;
    if (op.op === 'flip') {
      const w = wide;
      undo.unshift(([x, y]) => [w - x, y]);
    }
    for (let n = 0; n < quarters; n++) {
      // A quarter turn to the left takes (x, y) to (high − y, x).
      const h = high;
      undo.unshift(([x, y]) => [y, h - x]);
      [wide, high] = [high, wide];
    }
  }
  return { wide, high, toNet: (spot: Spot) => undo.reduce((at, step) => step(at), spot) };
}

/** Where a place of the net stands in the drawing: mirrored good side up, and upside down where else the tab were at the left or at the top. */
function placeDrawn({ blank: { across, up }, faces }: PieceNet, faceUp: 'inside' | 'outside', [x, y]: Spot) {
  const tabs = (at: (spot: { x: number; y: number }) => boolean) => {
    const there = faces.filter(({ ring }) => ring.filter(at).length > 1);
    return there.length > 0 && there.every(({ role }) => role === 'glueTab');
  };
  const [left, right] = [tabs((spot) => spot.x === 0), tabs((spot) => spot.x === across)];
  const [top, bottom] = [tabs((spot) => spot.y === up), tabs((spot) => spot.y === 0)];
  const over = faceUp === 'outside';
  const atLeft = over ? right && !left : left && !right;
  const turned = atLeft || (left === right && top && !bottom);
  return { left: over !== turned ? across - x : x, top: turned ? y : up - y };
}

const HANDS = { right: trimmer, left: { ...trimmer, fence: 'right' as const } };

describe.each(['right', 'left'] as const)('numbers lit for a %s-handed maker', (hand) => {
  const tool = HANDS[hand];
  it.each(STYLES.map((style) => [style.id, style] as const))(
    '%s: those of this step, all and only',
    (_, style) => {
      const net = layNet(style, { sizes: {}, caliperUm: 300 });
      for (const faceUp of ['inside', 'outside'] as const)
        for (const card of boxCards(net, tool, { faceUp })) {
          if (card.joins) continue;
          const { blank } = card.piece;
          for (const step of card.steps) {
            const lies = backToNet(card.program.ops.slice(0, step.ops.to), tool, blank);
            const seen = ([x, y]: Spot): Spot => [hand === 'left' ? lies.wide - x : x, y];
            /** How a line between two measured places is told in the drawing. */
            const told = (one: Spot, other: Spot): string => {
              const [a, b] = [one, other].map((spot) => lies.toNet(seen(spot))) as [Spot, Spot];
              const { left, top } = placeDrawn(card.piece, faceUp, a);
              return a[0] === b[0] ? `left ${left}` : `top ${top}`;
            };
            const upright = (x: number) => told([x, 0], [x, lies.high]);
            const level = (y: number) => (y > 0 && y < lies.high ? [told([0, y], [lies.wide, y])] : []);
            const wanted = card.program.ops.slice(step.ops.from, step.ops.to).flatMap((op): string[] => {
              if (op.op === 'blank') return [`left ${op.across}`, `top ${op.up}`];
              if (op.op === 'slit') return [upright(op.at), ...level(op.from), ...level(op.to)];
              if (op.op === 'score')
                return [upright(op.at), ...(op.span ? [...level(op.span.from), ...level(op.span.to)] : [])];
              if (op.op !== 'corner') return [];
              const x = op.corner.endsWith('left') ? op.across : lies.wide - op.across;
              const y = op.corner.startsWith('near') ? op.up : lies.high - op.up;
              return [upright(x), ...level(y)];
            });
            expect([step.headline, litNumbers(card, step, faceUp).toSorted()]).toEqual([
              step.headline,
              [...new Set(wanted)].toSorted(),
            ]);
            // In a batch the same distance may be set twice, the card turned between: its picture shows this setting alone.
            if (step.kind === 'score')
              for (const mark of step.marks.filter(({ reads }) => reads === 'from the fence')) {
                const alone = oneSetting(card, mark.at, step.lie);
                const scores = alone?.card.program.ops.slice(alone.step.ops.from, alone.step.ops.to);
                expect(scores?.length).toBeGreaterThan(0);
                expect(scores?.every((op) => op.op === 'score' && op.at === mark.at)).toBe(true);
                expect(alone?.step.marks.every(({ at }) => at === mark.at)).toBe(true);
                const moved = alone?.card.program.ops.slice(0, alone.step.ops.from) ?? [];
                const x = hand === 'left' ? lies.wide - mark.at : mark.at;
                expect(backToNet(moved, tool, blank).toNet([x, 0])).toEqual(lies.toNet([x, 0]));
              }
          }
        }
    },
  );
});
