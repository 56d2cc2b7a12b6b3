import { describe, expect, it } from 'vitest';
import { boxCards } from '../../../src/core/bench';
import { pictureOfStep } from '../../../src/core/draw/step/step-picture';
import { textWidthMm } from '../../../src/core/draw/strokes/letters';
import type { Drawing, Mark } from '../../../src/core/draw/strokes/types';
import { layNet } from '../../../src/core/net';
import { STYLES } from '../../../src/core/styles';
import { trimmer } from '../bench/bench-tools';

/**
 * A picture holds its own words. How far a word reaches is worked out here, turned as it is drawn; how far letters stand up and hang down is
 * from memory of such faces, shares of the type size.
 */
const [UP, DOWN] = [0.76, 0.24];
type Text = Extract<Mark, { kind: 'text' }>;

function reachOf({ text, at: [x, y], sizeMm, anchor, bold, turnDeg = 0 }: Text) {
  const wide = textWidthMm(text, sizeMm, bold);
  const from = anchor === 'start' ? 0 : anchor === 'middle' ? -wide / 2 : -wide;
  const turn = (turnDeg * Math.PI) / 180;
  const corners = [from, from + wide].flatMap((a) =>
    [-DOWN * sizeMm, UP * sizeMm].map((b) => [
      x + a * Math.cos(turn) - b * Math.sin(turn),
      y + a * Math.sin(turn) + b * Math.cos(turn),
    ]),
  );
  return extent(corners as [number, number][]);
}

const extent = (points: readonly (readonly [number, number])[]) => ({
  left: Math.min(...points.map(([x]) => x)),
  right: Math.max(...points.map(([x]) => x)),
  low: Math.min(...points.map(([, y]) => y)),
  high: Math.max(...points.map(([, y]) => y)),
});

/** Letters of one word over another's, by more than the room round them. */
const overlap = (a: ReturnType<typeof extent>, b: ReturnType<typeof extent>): boolean =>
  Math.min(a.right, b.right) - Math.max(a.left, b.left) > SLACK_MM &&
  Math.min(a.high, b.high) - Math.max(a.low, b.low) > SLACK_MM;
const SLACK_MM = 0.6;

/** The pictures of the compact card, of the roomy one, and of a phone. */
const ROOMS = [
  { space: { widthMm: 27, heightMm: 15 }, textMm: 3.2, plain: true },
  { space: { widthMm: 62, heightMm: 46 }, textMm: 4.5, plain: false },
  { space: { widthMm: 90, heightMm: 34 }, textMm: 4.5, plain: false },
] as const;

const texts = ({ marks }: Drawing): readonly Text[] =>
  marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
/** The fence's bar is the one ring that is drawn as a guide line. */
const bars = ({ marks }: Drawing) =>
  marks.flatMap((mark) =>
    mark.kind === 'line' && mark.ink === 'guide' && mark.points.length === 5 ? [extent(mark.points)] : [],
  );

describe('no word of a step’s picture leaves it, or lies over another', () => {
  it.each(STYLES.map((style) => [style.id, style] as const))('%s', (_, style) => {
    const net = layNet(style, { sizes: {}, caliperUm: 300 });
    for (const fence of ['left', 'right'] as const)
      for (const faceUp of ['inside', 'outside'] as const)
        for (const card of boxCards(net, { ...trimmer, fence }, { faceUp }))
          for (const step of card.steps)
            for (const { space, ...type } of ROOMS) {
              const picture = pictureOfStep(card, step, space, type);
              if (!picture) continue;
              const where = `${card.piece.label}, ${step.headline} (${fence}, ${faceUp}, ${space.widthMm})`;
              expect(picture.widthMm, where).toBeLessThanOrEqual(space.widthMm * 1.001);
              expect(picture.heightMm, where).toBeLessThanOrEqual(space.heightMm * 1.001);
              const words = texts(picture);
              for (const [i, text] of words.entries()) {
                const reach = reachOf(text);
                const word = `${text.text}: ${where}`;
                expect(reach.left, word).toBeGreaterThanOrEqual(0);
                expect(reach.low, word).toBeGreaterThanOrEqual(0);
                expect(reach.right, word).toBeLessThanOrEqual(picture.widthMm);
                expect(reach.high, word).toBeLessThanOrEqual(picture.heightMm);
                const under = words.slice(i + 1).find((other) => overlap(reach, reachOf(other)));
                expect(under?.text, word).toBeUndefined();
                const [bar] = bars(picture);
                if (text.text !== 'fence' || !bar) continue;
                expect(reach.low, word).toBeGreaterThanOrEqual(bar.low);
                expect(reach.high, word).toBeLessThanOrEqual(bar.high);
              }
            }
  });
});
