import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BenchOp,
  type BenchProgram,
  canonicalCard,
  canonicalNet,
  deriveProgram,
  runProgram,
  toBench,
  toNet,
} from '../../../src/core/bench';
import { groupActs } from '../../../src/core/bench/words/group-acts';
import { layNet, type PieceNet, type Point } from '../../../src/core/net';
import { STYLES } from '../../../src/core/styles';
import { type Ticks, ticks } from '../../../src/core/units';
import { SEED } from '../../seed';
import { trimmer } from './bench-tools';
import { notched, pierced } from './hand-laid-nets';
import { type Mutant, mutantsOf } from './mutants';
import { randomBox } from './random-boxes';

/** How many mutants were refused by a guard, made another card, or made the same one; the last by what was changed. */
interface Fate {
  refused: number;
  other: number;
  readonly same: Mutant[];
}

function tryMutants(piece: PieceNet, program: BenchProgram): Fate {
  const designed = canonicalNet(piece).join('\n');
  const fate: Fate = { refused: 0, other: 0, same: [] };
  for (const mutant of mutantsOf(program.ops)) {
    const run = runProgram(mutant.ops, trimmer);
    if (!run.ok) fate.refused++;
    else if (canonicalCard(run.card).join('\n') !== designed) fate.other++;
    else fate.same.push(mutant);
  }
  return fate;
}

const isHarmless = (piece: PieceNet, program: BenchProgram, mutant: Mutant): boolean =>
  isOverWaste(piece, program, mutant) ||
  isTurnOfSymmetry(piece, program, mutant) ||
  isMoreWaste(piece, program, mutant);

/** True if the blank only grew on a side that the finished card touches with no more than a corner: the strip falls away with the waste. */
function isMoreWaste({ blank, edges }: PieceNet, program: BenchProgram, { ops, op }: Mutant): boolean {
  const [before, after] = [program.ops[op], ops[op]];
  if (before?.op !== 'blank' || after?.op !== 'blank') return false;
  const trimmed = (side: 'x' | 'y', far: Ticks): boolean =>
    edges.some(({ a, b, right }) => right === null && a[side] === far && b[side] === far);
  return (
    (after.across === before.across || (after.across > before.across && !trimmed('x', blank.across))) &&
    (after.up === before.up || (after.up > before.up && !trimmed('y', blank.up)))
  );
}

/** True if the card is turned otherwise, but looks the same turned so. */
function isTurnOfSymmetry(piece: PieceNet, program: BenchProgram, { ops, op }: Mutant): boolean {
  const [before, after] = [program.ops[op], ops[op]];
  if (before?.op !== 'turn' || after?.op !== 'turn') return false;
  const quarters = ((after.quarters - before.quarters + 4) % 4) as 1 | 2 | 3;
  const turn = (point: Point): Point => toBench(piece.blank, { quarters, mirrored: false }, point);
  const turned = {
    ...piece,
    edges: piece.edges.map((edge) => ({ ...edge, a: turn(edge.a), b: turn(edge.b) })),
  };
  return canonicalNet(turned).join() === canonicalNet(piece).join();
}

/** True if the change only moves one end of a score or slit along its line, over waste or a slit: checked on the net's own faces. */
function isOverWaste(piece: PieceNet, program: BenchProgram, { ops, op }: Mutant): boolean {
  const [before, after] = [endsOf(program.ops[op]), endsOf(ops[op])];
  const lie = groupActs(program, trimmer).find(({ from, to }) => from <= op && op < to)?.lie;
  if (!before || !after || !lie) return false;
  const isSame = (p: Point, q: Point): boolean => p.x === q.x && p.y === q.y;
  const kept = before.find((end) => after.some((other) => isSame(end, other)));
  const [was, is] = [before, after].map((ends) => ends.find((end) => kept && !isSame(end, kept)));
  if (!kept || !was || !is) return false;
  const inLine = (was.x - kept.x) * (is.y - kept.y) === (was.y - kept.y) * (is.x - kept.x);
  const middle = { x: ticks((was.x + is.x) / 2), y: ticks((was.y + is.y) / 2) };
  return inLine && !isOnCard(piece, toNet(piece.blank, lie, middle));
}

function endsOf(act: BenchOp | undefined): readonly Point[] | null {
  const upright = (at: Ticks, from: Ticks, to: Ticks): readonly Point[] => [
    { x: at, y: from },
    { x: at, y: to },
  ];
  switch (act?.op) {
    case 'slit':
      return upright(act.at, act.from, act.to);
    case 'score':
      return act.span && upright(act.at, act.span.from, act.span.to);
    case 'scoreLine':
    case 'slitLine':
      return [act.a, act.b];
    default:
      return null;
  }
}

/** What makes the same card without being harmless, in words for a failing test. */
const harmful = (piece: PieceNet, program: BenchProgram, same: readonly Mutant[]): readonly string[] =>
  same
    .filter((mutant) => !isHarmless(piece, program, mutant))
    .map(
      ({ op, path }) =>
        `${path} of ${JSON.stringify(program.ops[op])} in a blank ${JSON.stringify(piece.blank)}`,
    );

/** On whole card: inside a face, or between two that a slit does not part. Even-odd rule a quarter tick to either side. */
function isOnCard(piece: PieceNet, point: Point): boolean {
  const faceAt = (off: number): number =>
    piece.faces.findIndex(({ ring }) => {
      let inside = false;
      ring.forEach((a, i) => {
        const b = ring[(i + 1) % ring.length] ?? a;
        const [px, py] = [point.x + off, point.y + off * 0.37];
        if (a.y > py !== b.y > py && px < a.x + ((b.x - a.x) * (py - a.y)) / (b.y - a.y)) inside = !inside;
      });
      return inside;
    });
  const [left, right] = [faceAt(-0.25), faceAt(0.25)];
  const isSlit = piece.edges.some(
    (edge) =>
      edge.kind === 'slit' && [left, right].sort().join() === [edge.left, edge.right ?? -1].sort().join(),
  );
  return left >= 0 && right >= 0 && !isSlit;
}

/** Counted by hand: four slits of tray and lid in the sixteenth that is cut off the tabs. */
const HARMLESS: Readonly<Record<string, number>> = {
  'open-top': 0,
  'tray-lid': 4,
  'pillow-pack': 0,
  'square-pyramid': 0,
};

describe('one wrong number is one wrong box', () => {
  for (const style of STYLES) {
    const { pieces } = layNet(style, { sizes: {}, caliperUm: 300 });
    test.each(pieces.map((piece) => [piece.label, piece] as const))(`${style.name}: %s`, (_, piece) => {
      const program = deriveProgram(piece, trimmer);
      const fate = tryMutants(piece, program);
      expect(harmful(piece, program, fate.same)).toEqual([]);
      expect(fate.refused).toBeGreaterThan(0);
      expect(fate.other).toBeGreaterThanOrEqual(program.ops.length);
      const expected = HARMLESS[style.id];
      if (expected !== undefined) expect(fate.same.length).toBe(expected);
    });

    test(`${style.name} at random sizes`, () => {
      fc.assert(
        fc.property(randomBox(style, trimmer.finestMark), (box) => {
          for (const piece of box.pieces) {
            const program = deriveProgram(piece, trimmer);
            const { same } = tryMutants(piece, program);
            expect(harmful(piece, program, same)).toEqual([]);
          }
        }),
        { seed: SEED, numRuns: 2 },
      );
    }, 60_000);
  }

  test.each([
    ['windows, a slot and a slit that no edge opens', pierced],
    ['notches, tapers and a slit on the slant', notched],
  ])('%s', (_, piece) => {
    const program = deriveProgram(piece, trimmer);
    expect(harmful(piece, program, tryMutants(piece, program).same)).toEqual([]);
  });
});
