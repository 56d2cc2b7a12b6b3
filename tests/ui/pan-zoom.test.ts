import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keepInView, MOST_ZOOM, zoomAbout } from '../../src/ui/drawing/pan-zoom';
import { SEED } from '../seed';

const share = fc.double({ min: 0, max: 1, noNaN: true });
const gazes = fc.record({ u: share, v: share, zoom: fc.double({ min: 1, max: MOST_ZOOM, noNaN: true }) });

test('what lies under the finger stays under it while coming closer', () => {
  fc.assert(
    fc.property(gazes, share, share, fc.double({ min: 0.2, max: 5, noNaN: true }), (gaze, u, v, factor) => {
      const near = zoomAbout(gaze, factor, [u, v]);
      // Distance on the page from the middle of the window: (point − middle) × size of the drawing, which grows with the zoom.
      expect((u - near.u) * near.zoom).toBeCloseTo((u - gaze.u) * gaze.zoom, 9);
      expect((v - near.v) * near.zoom).toBeCloseTo((v - gaze.v) * gaze.zoom, 9);
    }),
    { seed: SEED },
  );
});

test('the window never leaves a drawing that is larger than it', () => {
  const side = fc.double({ min: 10, max: 5000, noNaN: true });
  fc.assert(
    fc.property(gazes, side, side, (gaze, drawn, window) => {
      const { u } = keepInView(gaze, { width: drawn, height: 100 }, { width: window, height: 100 });
      const [left, right] = [u * drawn - window / 2, u * drawn + window / 2];
      if (drawn >= window) {
        expect(left).toBeGreaterThanOrEqual(-1e-6);
        expect(right).toBeLessThanOrEqual(drawn + 1e-6);
      } else expect(u).toBe(0.5);
    }),
    { seed: SEED },
  );
});
