import { describe, expect, test } from 'vitest';
import { type BenchOp, type BenchTool, deriveProgram, runProgram, toNet } from '../../../src/core/bench';
import { layNet, type PieceNet } from '../../../src/core/net';
import { STYLES } from '../../../src/core/styles';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import { everyChoice } from '../../../src/core/styles/shapes/choices';
import { inches, ticks } from '../../../src/core/units';
import { board, metricTrimmer, trimmer } from './bench-tools';

type Side = 'left' | 'right' | 'bottom' | 'top';
const FACING = { left: 'right', right: 'left', bottom: 'top', top: 'bottom' } as const;

/** The side of the blank that tabs alone reach, found by the corners of its faces; null where none or two that face each other are such. */
function tabSide({ faces, blank }: PieceNet): Side | null {
  const reach: Readonly<Record<Side, (p: { x: number; y: number }) => boolean>> = {
    left: ({ x }) => x === 0,
    right: ({ x }) => x === blank.across,
    bottom: ({ y }) => y === 0,
    top: ({ y }) => y === blank.up,
  };
  const ends = (side: Side): boolean => {
    const there = faces.filter(({ ring }) => ring.filter(reach[side]).length > 1);
    return there.length > 0 && there.every(({ role }) => role === 'glueTab');
  };
  return (Object.keys(FACING) as Side[]).find((side) => ends(side) && !ends(FACING[side])) ?? null;
}

/** Which side of the blank lies against the fence at each score at the fence that runs along the tab's side. */
function bodyFences(piece: PieceNet, ops: readonly BenchOp[], tool: BenchTool): readonly Side[] {
  const along = tabSide(piece);
  return ops.flatMap((op, at): readonly Side[] => {
    if (op.op !== 'score') return [];
    const run = runProgram(ops.slice(0, at + 1), tool);
    if (!run.ok) throw new Error('the bench cannot do it');
    // Two places on the fence, one card up from the other.
    const [a, b] = [0, 100].map((y) => toNet(run.card.blank, run.card.lie, { x: ticks(0), y: ticks(y) }));
    const upright = a?.x === b?.x;
    const side: Side = upright ? (a?.x === 0 ? 'left' : 'right') : a?.y === 0 ? 'bottom' : 'top';
    return side === along || side === FACING[along ?? 'left'] ? [side] : [];
  });
}

const benches: readonly BenchTool[] = [trimmer, { ...metricTrimmer, fence: 'right' }, board];

describe('body scores are measured from the edge opposite the tab', () => {
  const tubes = STYLES.flatMap((style) =>
    everyChoice(style).flatMap((options) =>
      layNet(style, { sizes: {}, caliperUm: 300, options })
        .pieces.filter((piece) => tabSide(piece) !== null)
        .map((piece) => ({
          name: `${style.id} ${Object.values(options).join(' ')}`,
          style: style.id,
          piece,
        })),
    ),
  );

  test('the tubes known so far have such an edge', () => {
    expect([...new Set(tubes.map(({ style }) => style))]).toEqual(
      expect.arrayContaining([
        'crash-lock',
        'fin-top',
        'gable-top',
        'lid-flap',
        'open-top',
        'pillow-pack',
        'prism-lid',
        'reverse-tuck',
        'sleeve-drawer',
        'snap-lock',
        'star-box',
        'straight-tuck',
        'three-sided-bar',
        'two-part-box',
        'wedge',
      ]),
    );
  });

  test.each(tubes)('$name, $piece.id', ({ piece }) => {
    const far = FACING[tabSide(piece) ?? 'left'];
    for (const tool of benches)
      for (const faceUp of ['inside', 'outside'] as const) {
        // A tool that reaches as far as the blank is long.
        const long = { ...tool, reach: inches(40), longestCut: inches(40) };
        const fences = bodyFences(piece, deriveProgram(piece, long, { faceUp }).ops, long);
        expect(fences.length).toBeGreaterThan(0);
        expect([...new Set(fences)]).toEqual([far]);
      }
  });

  test('a score measured from the tab’s end is found', () => {
    const box = layNet(openTop, { sizes: {}, caliperUm: 300 }).pieces[0]!;
    const { ops } = deriveProgram(box, trimmer, { faceUp: 'inside' });
    const first = ops.findIndex(({ op }) => op === 'score');
    // 11 − 3 1/2 = 7 1/2 from the tab.
    const other: BenchOp[] = [
      { op: 'turn', quarters: 2 },
      { op: 'score', at: inches(7, 1, 2), span: null },
      { op: 'turn', quarters: 2 },
    ];
    const changed = [...ops.slice(0, first), ...other, ...ops.slice(first + 1)];
    expect(bodyFences(box, ops, trimmer)).toEqual(['left', 'left', 'left', 'left']);
    expect(bodyFences(box, changed, trimmer)).toEqual(['right', 'left', 'left', 'left']);
  });
});
