import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { recordFault } from '../setup/fault-record';
import { callDesk } from './call-desk';

const cross = readFileSync('tests/fixtures/own-nets/open-cross.fold', 'utf8');
const files = { 'cross.fold': cross };
const answers = ['--edges', '14=V,15=v'];

/** A workbook file with one recipe of this net. */
const recipeFile = (ownNet: string) =>
  JSON.stringify({
    format: 'crease-and-count',
    schema: 2,
    kind: 'recipe',
    recipes: [
      {
        id: 'cross',
        rev: 1,
        createdAt: '2026-02-01T00:00:00Z',
        changedAt: '2026-02-01T00:00:00Z',
        name: 'Paper cross',
        styleId: 'own-net',
        sizesMm: {},
        options: {},
        caliperUm: 300,
        paperId: null,
        faceUp: 'inside',
        grain: 'free',
        dressings: [],
        notes: '',
        ownNet,
      },
    ],
    events: [],
    papers: [],
    supplies: [],
    tools: [],
    photos: [],
  });

describe('a FOLD file at the desk', () => {
  test('open lines are listed with where they run and how to say what they are', async () => {
    const { refused, printed } = await callDesk(['net', '--fold', 'cross.fold'], files);
    expect(printed).toBe('');
    expect(refused).toMatchObject([{ code: 'unassigned-edge', found: '14,15' }]);
    expect(refused[0]?.says).toContain('--edges 14=V,15=V');
  });

  test('answered, it is a net with its findings', async () => {
    const { printed, codes } = await callDesk(['net', '--fold', 'cross.fold', ...answers], files);
    expect(codes).toEqual([]);
    const net = JSON.parse(printed) as { pieces: { blank: object }[]; findings: { code: string }[] };
    // Three inches each way.
    expect(net.pieces.map(({ blank }) => blank)).toEqual([{ acrossMm: 76.2, upMm: 76.2 }]);
    expect(net.findings.map(({ code }) => code)).toContain('own-net-room');
  });

  test('and a card: one setting at two inches, pressed from each side in turn, four corners away', async () => {
    const { printed, codes } = await callDesk(['card', '--fold', 'cross.fold', ...answers], files);
    expect(codes).toEqual([]);
    const { pieces } = JSON.parse(printed) as { pieces: { ops: { op: string; at?: number }[] }[] };
    const ops = pieces[0]?.ops ?? [];
    expect(ops.filter(({ op }) => op === 'score').map(({ at }) => at)).toEqual([50.8, 50.8, 50.8, 50.8]);
    expect(ops.filter(({ op }) => op === 'corner')).toHaveLength(4);
  });

  test('a recipe that holds it works as any recipe', async () => {
    const { printed } = await callDesk(
      ['net', '--fold', 'cross.fold', ...answers, '--format', 'fold'],
      files,
    );
    for (const verb of ['net', 'card']) {
      const { codes, printed: shown } = await callDesk([verb, 'r.json'], { 'r.json': recipeFile(printed) });
      expect([verb, ...codes]).toEqual([verb]);
      expect(JSON.parse(shown)).toHaveProperty('pieces');
    }
  });

  // One drawing, three spellings of no unit. source: FOLD 1.2, `frame_unit`: left out or "unit" means no physical unit.
  test('that names no unit is asked for it, and is never taken as millimeters', async (context) => {
    const drawn = JSON.parse(cross) as Record<string, unknown>;
    const { frame_unit: _, ...bare } = drawn;
    const inner = { ...bare, file_frames: [{ ...bare, frame_title: 'Lid' }] };
    const unitless = {
      'bare.fold': JSON.stringify(bare),
      'unit.fold': JSON.stringify({ ...bare, frame_unit: 'unit' }),
      'lid.fold': JSON.stringify({ ...inner, frame_unit: 'in' }),
    };
    let lost = 0;
    for (const name of Object.keys(unitless)) {
      const { printed, refused } = await callDesk(['net', '--fold', name, ...answers], unitless);
      const [first] = refused;
      const asked = first?.code === 'no-unit' && first.found === '3 × 3' && /--fold-unit/.test(first.says);
      if (printed !== '' || !asked) lost++;
    }
    recordFault(context, { fault: 'a FOLD file without a unit at the desk', tries: 3, lost, goal: 0 });
    const { printed } = await callDesk(
      ['net', '--fold', 'bare.fold', '--fold-unit', 'cm', ...answers],
      unitless,
    );
    expect(JSON.parse(printed)).toMatchObject({ pieces: [{ blank: { acrossMm: 30, upMm: 30 } }] });
  });

  test.each([
    ['not-an-edge', ['--fold', 'cross.fold', '--edges', '14=X']],
    ['no-such-line', ['--fold', 'cross.fold', '--edges', '14=V,15=V,77=V']],
    ['fold-and-style', ['--fold', 'cross.fold', '--style', 'tray']],
    ['unknown-unit', ['--fold', 'cross.fold', '--fold-unit', 'ell']],
    ['enoent', ['--fold', 'gone.fold']],
    ['not-connected', ['--fold', 'cross.fold', '--edges', '14=C,15=V']],
  ])('is refused: %s', async (code, words) => {
    const { codes, refused } = await callDesk(['net', ...words], files);
    expect(codes).toEqual([code]);
    expect(refused[0]?.says).toMatch(/\.$/);
  });
});
