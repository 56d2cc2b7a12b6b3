import { describe, expect, it } from 'vitest';
import { foldFileOf, foldTextOf, layNet, readFold } from '../../../src/core/net';
import { type BoxStyle, STYLES } from '../../../src/core/styles';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import { inches } from '../../../src/core/units/ticks';

const boxOf = (style: BoxStyle) =>
  layNet(style, { sizes: style === openTop ? { flap: inches(1, 1, 2) } : {}, caliperUm: 305 });
const changed = (change: Readonly<Record<string, unknown>>) =>
  JSON.stringify({ ...foldFileOf(boxOf(openTop), 'box'), ...change });
const good = foldFileOf(boxOf(openTop), 'box') as {
  edges_assignment: string[];
  edges_foldAngle: number[];
  vertices_coords: number[][];
  edges_vertices: number[][];
};

describe('a net saved as FOLD', () => {
  it.each(STYLES.map((style) => [style.name, style] as const))(
    'is the same net when read again: %s',
    (_, style) => {
      const reading = readFold(foldTextOf(boxOf(style), style.name));
      expect(reading).toMatchObject({ ok: true, title: style.name });
      if (reading.ok) expect(reading.pieces).toEqual(boxOf(style).pieces);
    },
  );

  it('may come in inches', () => {
    const reading = readFold(
      changed({
        frame_unit: 'in',
        vertices_coords: good.vertices_coords.map((corner) => corner.map((mm) => mm / 25.4)),
      }),
    );
    expect(reading).toMatchObject({
      ok: true,
      pieces: [{ blank: { across: inches(11), up: inches(4, 1, 2) } }],
    });
  });

  it.each([
    ['not-fold', 'no JSON at all', 'x'],
    ['not-fold', 'an edge of one end', changed({ edges_vertices: [[0]] })],
    ['not-fold', 'a letter FOLD does not know', changed({ edges_assignment: ['Q'] })],
    ['unknown-unit', 'a unit nobody knows', changed({ frame_unit: 'ell' })],
    [
      'no-such-vertex',
      'an edge to a corner there is not',
      changed({
        edges_vertices: good.edges_vertices.map(([a], at) => (at === 0 ? [a, 999] : good.edges_vertices[at])),
      }),
    ],
    [
      'unassigned-edge',
      'a line of which nobody said what it is',
      changed({ edges_assignment: good.edges_assignment.map((kind, at) => (at === 0 ? 'U' : kind)) }),
    ],
    [
      'sign-differs',
      'a valley that folds like a mountain',
      changed({ edges_foldAngle: good.edges_foldAngle.map((angle) => -angle) }),
    ],
    ['lists-differ', 'fewer angles than lines', changed({ edges_foldAngle: [90] })],
    [
      'not-connected',
      'a piece that falls apart at its cuts',
      changed({
        edges_assignment: good.edges_assignment.map((kind) => (kind === 'V' ? 'C' : kind)),
        edges_foldAngle: good.edges_foldAngle.map(() => 0),
        'faces_cc:parent': undefined,
      }),
    ],
    [
      'no-faces',
      'lines that close nowhere',
      JSON.stringify({
        file_spec: 1.2,
        vertices_coords: [
          [0, 0],
          [1, 0],
          [2, 0],
          [3, 0],
        ],
        edges_vertices: [
          [0, 1],
          [1, 2],
          [2, 3],
        ],
        edges_assignment: ['B', 'B', 'B'],
      }),
    ],
  ])('is refused (%s) for %s', (code, _, text) => {
    const reading = readFold(text);
    expect(reading.ok ? 'read' : reading.refusals[0]?.code).toBe(code);
  });

  it('never throws on rubbish', () => {
    for (const text of [
      '',
      'null',
      '[]',
      '{}',
      '{"file_spec":1.2}',
      JSON.stringify('x'.repeat(1000)),
      changed({ vertices_coords: [[1e300, 0]] }),
    ])
      expect(readFold(text).ok).toBe(false);
  });
});
