import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BenchTool, cardTrouble } from '../../../src/core/bench';
import { checkBox, checkOwnNet } from '../../../src/core/checks';
import { foldTextOf, layNet, ownBoxOf, type PieceNet, readOwnNet, toldBy } from '../../../src/core/net';
import { benchToolOf } from '../../../src/core/plan';
import { type BoxStyle, STYLES } from '../../../src/core/styles';
import { gableTop } from '../../../src/core/styles/boxes/gable-top';
import { tray as trayStyle } from '../../../src/core/styles/boxes/tray';
import { inches, type Ticks } from '../../../src/core/units';
import { SEED } from '../../seed';
import { recordFault } from '../../setup/fault-record';

const tool: BenchTool = benchToolOf(undefined);
const none = { lines: {} };
const cross = readFileSync('tests/fixtures/own-nets/open-cross.fold', 'utf8');
const crossWith = (change: Readonly<Record<string, unknown>>) =>
  JSON.stringify({ ...(JSON.parse(cross) as object), ...change });
const answered = { lines: { 14: 'V', 15: 'V' } } as const;
const codesOf = (text: string, answers: Parameters<typeof readOwnNet>[1] = answered) => {
  const reading = readOwnNet(text, answers);
  return reading.is === 'refused' ? reading.refusals.map(({ code }) => code) : [reading.is];
};
const netOf = (text: string, answers: Parameters<typeof readOwnNet>[1] = none) => {
  const reading = readOwnNet(text, answers);
  return reading.is === 'net' ? reading : expect.fail(JSON.stringify(reading).slice(0, 400));
};

describe('our own export brought in as a net of the maker’s own', () => {
  it.each(STYLES.map((style) => [style.id, style] as const))(
    'is the same net and room, makes its card and closes: %s',
    (_, style) => {
      const box = layNet(style, { sizes: {}, caliperUm: 305 });
      const { text } = netOf(foldTextOf(box, style.name));
      const own = ownBoxOf(text, 305) ?? expect.fail('no box');
      expect(own.pieces).toEqual(box.pieces);
      expect(own.inside).toEqual(box.inside);
      for (const piece of own.pieces) expect(cardTrouble(piece, tool)).toBeNull();
      expect(checkOwnNet(own, toldBy(text)).filter(({ severity }) => severity !== 'note')).toEqual(
        checkBox(style, box).filter(({ severity }) => severity === 'warn'),
      );
    },
  );
});

describe('an own net that names its order of closing and its room', () => {
  const brought = (style: BoxStyle, sizes: Readonly<Record<string, Ticks>>, change: object = {}) => {
    const { text } = netOf(foldTextOf(layNet(style, { sizes, caliperUm: 305 }), style.name));
    const changed = JSON.stringify({ ...(JSON.parse(text) as object), ...change });
    return checkOwnNet(ownBoxOf(changed, 305) ?? expect.fail('no box'), toldBy(changed));
  };

  it('warns where panels run into each other on the way: gussets of a gable deeper than wide', () => {
    const found = brought(gableTop, { width: inches(1, 1, 2), depth: inches(2, 1, 4) });
    const path = found.filter(({ code }) => code === 'panels-collide-closing');
    expect(path.length).toBeGreaterThan(0);
    expect(path.every(({ severity, remedy }) => severity === 'warn' && remedy.startsWith('Fold one'))).toBe(
      true,
    );
  });

  it('warns where an item as large as the room it names does not lie inside', () => {
    const codes = (change: object) => brought(trayStyle, {}, change).map(({ code }) => code);
    expect(codes({})).not.toContain('inside-less-than-told');
    expect(codes({ 'cc:inside': [120, 70, 20] })).toContain('inside-less-than-told');
  });
});

describe('a file from elsewhere', () => {
  it('is asked about the lines it leaves open, by their place in the file', () => {
    const reading = readOwnNet(cross, none);
    expect(reading).toMatchObject({ is: 'asking', open: [{ name: '14' }, { name: '15', b: [1, 1] }] });
  });

  // A cross of five one-inch squares: blank 3 × 3 in, four folds of 90 degrees round the base, four corners cut away.
  it('becomes a net with faces derived and the usual angle where none is named', () => {
    const { text, pieces } = netOf(cross, answered);
    const [piece] = pieces as [PieceNet];
    expect(piece.blank).toEqual({ across: inches(3), up: inches(3) });
    expect(piece.faces).toHaveLength(5);
    expect(piece.hinges.map(({ restDeg }) => restDeg)).toEqual([90, 90, 90, 90]);
    expect(piece.waste).toHaveLength(4);
    expect(cardTrouble(piece, tool)).toBeNull();
    const own = ownBoxOf(text, 300) ?? expect.fail('no box');
    expect(own.inside.height).toBe(inches(1));
    const notes = checkOwnNet(own, toldBy(text)).filter(({ severity }) => severity === 'note');
    expect(notes.map(({ code }) => code)).toEqual(expect.arrayContaining(['own-net-room', 'own-net-path']));
  });

  it('takes an answer as cut: then that wall hangs on nothing, and it is refused', () => {
    expect(codesOf(cross, { lines: { 14: 'C', 15: 'V' } })).toEqual(['not-connected']);
  });

  it('takes a mountain with the usual angle the other way', () => {
    const { pieces } = netOf(cross, { lines: { 14: 'M', 15: 'F' } });
    expect(pieces[0]?.hinges.map(({ restDeg }) => restDeg).sort((p, q) => p - q)).toEqual([-90, 0, 90, 90]);
  });

  it('is asked of every inner line, never of the outline, where it assigns nothing', () => {
    const reading = readOwnNet(crossWith({ edges_assignment: undefined }), none);
    expect(reading.is === 'asking' && reading.open.map(({ name }) => name)).toEqual(['12', '13', '14', '15']);
  });

  it('brings a piece a frame; a further frame may inherit, and a folded form beside them is left aside', () => {
    const { file_spec: _, ...frame } = JSON.parse(cross) as Record<string, unknown>;
    const text = crossWith({
      file_frames: [
        { ...frame, frame_classes: ['foldedForm'] },
        { frame_parent: 0, frame_inherit: true, frame_title: 'Lid', frame_unit: 'cm' },
      ],
    });
    const open = readOwnNet(text, answered);
    expect(open.is === 'asking' && open.open.map(({ name }) => name)).toEqual(['2.14', '2.15']);
    const { pieces } = netOf(text, { lines: { ...answered.lines, '2.14': 'V', '2.15': 'V' } });
    expect(pieces.map(({ label, blank }) => [label, blank.across])).toEqual([
      ['Piece 1', inches(3)],
      ['Lid', 30 * 320],
    ]);
  });

  it.each([
    ['too-small', crossWith({ frame_unit: 'mm' })],
    ['too-big', crossWith({ frame_unit: 'm' })],
    ['unknown-unit', crossWith({ frame_unit: 'ell' })],
    ['not-flat', crossWith({ vertices_coords: Array.from({ length: 12 }, (_, k) => [k, k * k, k]) })],
    ['not-fold', 'x'],
    ['not-fold', '[]'],
    ['too-long', cross + ' '.repeat(1_000_000)],
    ['folded-form', crossWith({ frame_classes: ['foldedForm'] })],
  ])('is refused: %s', (code, text) => {
    expect(codesOf(text)).toContain(code);
  });

  it('is refused with a line that the file has not', () => {
    expect(codesOf(cross, { lines: { ...answered.lines, 99: 'V' } })).toEqual(['no-such-line']);
  });

  it('is refused with more panels than hands close', () => {
    const side = 18; // 324 squares
    const at = (x: number, y: number) => y * (side + 1) + x;
    const corners = Array.from({ length: (side + 1) ** 2 }, (_, k) => [
      k % (side + 1),
      Math.floor(k / (side + 1)),
    ]);
    const lines = corners.flatMap(([x = 0, y = 0]) => [
      ...(x < side ? [[at(x, y), at(x + 1, y)]] : []),
      ...(y < side ? [[at(x, y), at(x, y + 1)]] : []),
    ]);
    const text = JSON.stringify({
      file_spec: 1.2,
      frame_unit: 'cm',
      vertices_coords: corners,
      edges_vertices: lines,
      edges_assignment: lines.map(() => 'F'),
    });
    expect(codesOf(text, none)).toEqual(['too-many-faces']);
  });

  it('no card is written where two lines make what no bench act makes, and the reason is told', () => {
    const { pieces } = netOf(cross, answered);
    const [piece] = pieces as [PieceNet];
    // A score that stops short of its panel's side: worked at a bench it comes out longer or shorter than drawn.
    const broken: PieceNet = { ...piece, edges: piece.edges.filter(({ kind }) => kind !== 'cut') };
    expect(cardTrouble(broken, tool)).toMatchObject({ code: 'own-net-no-card', severity: 'stop' });
  });
});

// source: the example files of the npm package `fold` (MIT): one flat crease pattern, the others folded forms.
describe('the FOLD library’s own examples', () => {
  const folder = 'node_modules/fold/examples';
  const example = (name: string) => readFileSync(`${folder}/${name}`, 'utf8');

  it('reads the diagonal crease pattern, which names no unit, in the unit the maker says', () => {
    const { pieces } = netOf(example('diagonal-cp.fold'), { lines: {}, unit: 'in' });
    expect(pieces[0]?.blank).toEqual({ across: inches(1), up: inches(1) });
    expect(pieces[0]?.hinges.map(({ restDeg }) => restDeg)).toEqual([180]);
    expect(cardTrouble(pieces[0] as PieceNet, tool)).toBeNull();
  });

  it('refuses every folded form with that reason', () => {
    const folded = readdirSync(folder).filter(
      (name) => name.endsWith('.fold') && name !== 'diagonal-cp.fold',
    );
    expect(folded.length).toBeGreaterThan(2);
    for (const name of folded) expect([name, ...codesOf(example(name), none)]).toEqual([name, 'folded-form']);
  });
});

interface Lines {
  readonly vertices_coords: number[][];
  readonly edges_vertices: [number, number][];
  readonly edges_assignment: string[];
}

describe('lines no bench could make', () => {
  const {
    vertices_coords: corners,
    edges_vertices: ends,
    edges_assignment: kinds,
  } = JSON.parse(cross) as Lines;
  const [first = [0, 0]] = corners;

  it('a line of no length is refused by its place in the file and by where it lies', () => {
    const [text] = [
      crossWith({
        vertices_coords: [...corners, first],
        edges_vertices: [...ends, [0, corners.length]],
        edges_assignment: [...kinds, 'B'],
      }),
    ];
    const reading = readOwnNet(text, answered);
    expect(reading).toMatchObject({
      is: 'refused',
      refusals: [{ code: 'no-length', path: `edges_vertices.${ends.length}`, found: '1, 0' }],
    });
    expect(ownBoxOf(text, 300)).toBeNull();
  });

  it('a panel of no area is refused', () => {
    expect(
      codesOf(
        crossWith({ vertices_coords: corners.map(([, y = 0]) => [1, y]), faces_vertices: [[0, 1, 2]] }),
      ),
    ).not.toEqual(['net']);
  });

  it('half a million entries are refused by name within a second, bad or good', (context) => {
    const many = 450_000;
    const texts = [
      crossWith({ edges_assignment: Array(many).fill(1) }),
      crossWith({ edges_assignment: Array(200_000).fill('B') }),
      crossWith({ 'faces_cc:name': Array(many).fill(1) }),
      crossWith({ 'cc:glue': Array(200_000).fill([]) }),
    ];
    let lost = 0;
    for (const text of texts) {
      const began = performance.now();
      const reading = readOwnNet(text, answered);
      if (
        reading.is !== 'refused' ||
        !/edges_assignment|faces_cc:name|cc:glue/.test(reading.refusals[0]?.path ?? '')
      )
        lost++;
      if (performance.now() - began > 1000) lost++;
    }
    recordFault(context, {
      fault: 'an own net with half a million entries',
      tries: texts.length,
      lost,
      goal: 0,
    });
  });

  it('thousands of panels are refused within a second', () => {
    const side = 68; // squares a side: 4,624 panels
    const at = (x: number, y: number) => y * (side + 1) + x;
    const grid = Array.from({ length: side + 1 }, (_, y) =>
      Array.from({ length: side + 1 }, (_, x) => [x, y]),
    ).flat();
    const across = grid.flatMap(([x = 0, y = 0]) => (x < side ? [[at(x, y), at(x + 1, y)]] : []));
    const up = grid.flatMap(([x = 0, y = 0]) => (y < side ? [[at(x, y), at(x, y + 1)]] : []));
    const text = JSON.stringify({
      file_spec: 1.2,
      vertices_coords: grid,
      edges_vertices: [...across, ...up],
      edges_assignment: [...across, ...up].map(() => 'V'),
    });
    const began = performance.now();
    expect(codesOf(text, none)).not.toEqual(['net']);
    expect(performance.now() - began).toBeLessThan(1000);
  });

  // Corners pulled together, lines turned, doubled and left out: what is "Ready" must go through everything that is done with a box.
  it('what is taken as a net can be checked, carded and put into an event, however its lines were hurt', (context) => {
    const sound = [
      cross,
      ...['open-top', 'pillow-pack', 'tray-lid'].map((id) => {
        const style = STYLES.find((known) => known.id === id) ?? expect.fail(id);
        return foldTextOf(layNet(style, { sizes: {}, caliperUm: 305 }), id);
      }),
    ].map((text) => JSON.parse(text) as Lines);
    const hurt = fc.record({
      of: fc.nat(sound.length - 1),
      pulls: fc.array(fc.tuple(fc.nat(40), fc.nat(40)), { maxLength: 3 }),
      doubled: fc.option(fc.nat(30), { nil: null }),
      left: fc.option(fc.nat(30), { nil: null }),
      kinds: fc.array(fc.tuple(fc.nat(30), fc.constantFrom('B', 'V', 'M', 'F', 'C')), { maxLength: 2 }),
      bare: fc.boolean(),
    });
    let tries = 0;
    let lost = 0;
    fc.assert(
      fc.property(hurt, ({ of, pulls, doubled, left, kinds, bare }) => {
        const source = sound[of] ?? expect.fail();
        const file = structuredClone(source) as Lines & Record<string, unknown>;
        for (const [a, b] of pulls)
          if (file.vertices_coords[a] && file.vertices_coords[b])
            file.vertices_coords[a] = [...file.vertices_coords[b]];
        for (const [edge, kind] of kinds) if (file.edges_assignment[edge]) file.edges_assignment[edge] = kind;
        const again = doubled === null ? undefined : file.edges_vertices[doubled];
        if (again) {
          file.edges_vertices.push([...again]);
          file.edges_assignment.push('V');
        }
        if (left !== null && file.edges_vertices[left]) {
          file.edges_vertices.splice(left, 1);
          file.edges_assignment.splice(left, 1);
        }
        // As a drawing program leaves it: lines alone.
        const text = JSON.stringify(
          bare || again || left !== null
            ? {
                file_spec: 1.2,
                frame_unit: file['frame_unit'],
                vertices_coords: file.vertices_coords,
                edges_vertices: file.edges_vertices,
                edges_assignment: file.edges_assignment,
              }
            : file,
        );
        tries++;
        try {
          const reading = readOwnNet(text, of === 0 ? answered : none);
          if (reading.is !== 'net') return;
          const box = ownBoxOf(reading.text, 300) ?? expect.fail('no box');
          checkOwnNet(box, toldBy(reading.text), tool);
          for (const piece of box.pieces) cardTrouble(piece, tool);
        } catch {
          lost++;
        }
      }),
      { seed: SEED, numRuns: 400 },
    );
    recordFault(context, { fault: 'a hurt own net is called ready', tries, lost, goal: 0 });
  });
});
