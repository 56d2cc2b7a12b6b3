import { describe, expect, test } from 'vitest';
import { type BenchFaultCode, type BenchOp, canonicalCard, runProgram } from '../../../src/core/bench';
import { inches, type Ticks } from '../../../src/core/units';
import { trimmer } from './bench-tools';

const inch = (length: number): Ticks => inches(length);
const at = (x: number, y: number) => ({ x: inch(x), y: inch(y) });

/** A card 6 wide and 4 up; a score at 2, a corner cut, and the like. */
const blank: BenchOp = { op: 'blank', across: inch(6), up: inch(4) };
const score = (place: number, from?: number, to?: number): BenchOp => ({
  op: 'score',
  at: inch(place),
  span: from === undefined || to === undefined ? null : { from: inch(from), to: inch(to) },
});
const slit = (place: number, from: number, to: number): BenchOp => ({
  op: 'slit',
  at: inch(place),
  from: inch(from),
  to: inch(to),
});
const corner: BenchOp = { op: 'corner', corner: 'near-left', across: inch(1), up: inch(1) };
const crease: BenchOp = { op: 'crease', over: 'bead' };
const close: BenchOp = { op: 'close', panels: ['wing'], by: 'fold', way: 'in', tip: null };

/** Every guard with an act that trips it. */
const STOPPED: Readonly<
  Record<Exclude<BenchFaultCode, 'between-marks' | 'cut-longer-than-tool'>, readonly BenchOp[]>
> = {
  'no-blank': [score(2)],
  'second-blank': [blank, blank],
  'fence-edge-gone': [blank, corner, score(2)],
  'near-edge-gone': [blank, { ...corner, corner: 'near-right' }, score(2, 0, 3)],
  'off-card': [blank, score(6)],
  'beyond-reach': [{ ...blank, across: inch(20) }, score(13)],
  'empty-span': [blank, score(2, 3, 3)],
  'slit-severs-card': [blank, slit(2, 0, 4)],
  'rise-is-not-the-curve': [
    blank,
    { op: 'scoreCurve', points: [at(0, 1), at(3, 2), at(6, 1)], rise: inch(2) },
  ],
  'cut-not-from-edge': [blank, { op: 'snip', a: at(1, 1), b: at(6, 2) }],
  'cut-crosses-edge': [blank, corner, { op: 'snip', a: at(2, 0), b: at(0, 1.5) }],
  'hole-not-inside': [blank, { op: 'window', ring: [at(5, 1), at(7, 1), at(5, 2)], hole: 'window' }],
  'no-score-to-fold': [blank, crease],
  'outside-is-up': [blank, score(2), { op: 'flip' }, crease],
  'folded-already': [blank, score(2), crease, crease],
  'card-is-folded': [blank, score(2), crease, score(3)],
  'card-is-flat': [blank, score(2), close],
};

describe('the bench stops at what hands cannot do', () => {
  test.each(Object.entries(STOPPED))('%s', (code, ops) => {
    expect(runProgram(ops, trimmer)).toEqual({ ok: false, fault: { code, op: ops.length - 1 } });
    // All but the last act can be done.
    if (ops.length > 1) expect(runProgram(ops.slice(0, -1), trimmer)).toMatchObject({ ok: true });
  });

  test('a place between the marks and a cut longer than the blade are remarks, and the work goes on', () => {
    const long: BenchOp = { op: 'blank', across: inch(14), up: inch(4) };
    expect(
      runProgram([long, { op: 'score', at: (inch(2) + 10) as Ticks, span: null }], trimmer),
    ).toMatchObject({
      ok: true,
      remarks: [
        { code: 'cut-longer-than-tool', op: 0 },
        { code: 'between-marks', op: 1 },
      ],
    });
  });
});

describe('what lies on the bench', () => {
  const flip: BenchOp = { op: 'flip' };
  const formOf = (...ops: readonly BenchOp[]): readonly string[] => {
    const isFlipped = ops.filter(({ op }) => op === 'flip').length % 2 === 1;
    const run = runProgram([blank, ...ops, ...(isFlipped ? [flip] : []), crease], trimmer);
    return run.ok ? canonicalCard(run.card) : [run.fault.code];
  };

  test('a score on waste is gone, and a slit is a slit even where it was scored', () => {
    // A corner 1 × 1 goes: the score at 1/2 in is left only above it, from 1 to 4 in.
    const cornerCut = formOf(score(0.5), corner);
    expect(cornerCut).toContainEqual('0,1,-4064 score out: 8128..32512');
    const slitLower = formOf(score(2), slit(2, 0, 1));
    expect(slitLower).toContainEqual('0,1,-16256 score out: 8128..32512');
    expect(slitLower).toContainEqual('0,1,-16256 slit: 0..8128');
  });

  test('a score ends exactly where a slanted cut passes, as a fraction of a tick', () => {
    // The cut from (0, 3) to (5, 0) stands 3 − 3/5 = 12/5 in up at 1 in: 12/5 × 8128 = 97536/5 ticks. The larger part is above it.
    const snip: BenchOp = { op: 'snip', a: at(0, 3), b: at(5, 0) };
    expect(formOf(score(1), snip)).toContainEqual('0,1,-8128 score out: 97536/5..32512');
    expect(formOf(score(1), { ...snip, a: snip.b, b: snip.a })).toEqual(formOf(score(1), snip));
    const below = formOf(score(1), { ...snip, keeps: 'smaller' });
    expect(below).toContainEqual('0,1,-8128 score out: 0..97536/5');
  });

  test('card folds away from the face it was pressed on, and never both ways', () => {
    expect(formOf(flip, score(2))).toContainEqual('0,1,-32512 score in: 0..32512');
    expect(formOf(score(4), flip, score(2))).toContainEqual('0,1,-32512 score both: 0..32512');
  });

  test('the order and the pieces a line was made in make no difference', () => {
    expect(formOf(score(2, 0, 1), score(2, 1, 4))).toEqual(formOf(score(2)));
    expect(formOf(score(2), { op: 'turn', quarters: 2 }, score(2))).toEqual(
      formOf(score(4), { op: 'turn', quarters: 2 }, score(4)),
    );
  });

  test('flipping twice and turning four times changes nothing', () => {
    const turn: BenchOp = { op: 'turn', quarters: 1 };
    expect(formOf(flip, turn, flip, turn, score(2), corner)).toEqual(formOf(score(2), corner));
    expect(formOf(turn, turn, turn, turn, score(2))).toEqual(formOf(score(2)));
  });
});
