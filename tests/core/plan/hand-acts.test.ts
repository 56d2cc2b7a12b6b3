import { describe, expect, it } from 'vitest';
import { boxPrograms } from '../../../src/core/bench';
import { layNet } from '../../../src/core/net';
import { countBoxActs } from '../../../src/core/plan/run/hand-acts';
import { styleById } from '../../../src/core/styles';
import { trimmer } from '../bench/bench-tools';

const netOf = (id: string) => layNet(styleById(id)!, { sizes: {}, caliperUm: 300 });
const actsOf = (id: string) =>
  countBoxActs({ net: netOf(id), dressing: null, pieces: [] }, trimmer, [], () => false);
const opsOf = (id: string, ...names: readonly string[]) =>
  boxPrograms(netOf(id), trimmer)
    .flatMap(({ program }) => program.ops)
    .filter(({ op }) => names.includes(op)).length;

describe('how long cuts and scores take', () => {
  it('counts an outline stroke by stroke, and not as one snip', () => {
    // Both lids and four dust flaps of a tuck box are outlines of five or more straight strokes each; common practice, no source.
    const outlines = opsOf('straight-tuck', 'cutPath', 'corner', 'snip', 'slit', 'slitLine');
    expect(actsOf('straight-tuck').slit).toBeGreaterThanOrEqual(2 * outlines);
  });

  it('takes a slanted score for four at the fence', () => {
    // a gable's two upside-down Vs: four slanted scores; 15 to 20 s each from memory, against 5 s at the fence
    const slanted = opsOf('gable-top', 'scoreLine');
    expect(slanted).toBeGreaterThan(0);
    expect(actsOf('gable-top').score).toBe(opsOf('gable-top', 'score') + 4 * slanted);
    expect(actsOf('gable-top').fold).toBe(opsOf('gable-top', 'score') + slanted);
  });

  it('takes a curved score for one long one, not for its chords', () => {
    const curved = opsOf('pillow-pack', 'scoreCurve');
    expect(curved).toBeGreaterThan(0);
    expect(actsOf('pillow-pack').score).toBe(opsOf('pillow-pack', 'score') + 4 * curved);
  });
});
