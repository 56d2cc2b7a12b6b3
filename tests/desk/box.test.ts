import { describe, expect, test } from 'vitest';
import { callDesk } from './call-desk';
import { fortyFavors } from './forty-favors';

const trade = [
  '--style',
  'open-top',
  '--set',
  'width=3 1/2 in',
  '--set',
  'depth=1-1/2"',
  '--set',
  'height=3in',
  '--set',
  'flap=1 1/2 in',
];

interface Card {
  readonly unit: string;
  readonly tool: string;
  readonly pieces: readonly {
    readonly ops: readonly { readonly op: string; readonly at?: number }[];
    readonly words: readonly { readonly headline: string }[];
  }[];
}

async function readCard(words: readonly string[], files?: Record<string, string>): Promise<Card> {
  const { printed, refused } = await callDesk(['card', ...words], files);
  expect(refused).toEqual([]);
  return JSON.parse(printed) as Card;
}

describe('desk card', () => {
  // Common practice, no source: 3 1/2 wide × 1 1/2 deep × 3 high, tab 1 in, bottom flaps 1 1/2 in. From the edge opposite the tab: 88.9, 127, 215.9, 254 mm, then 76.2.
  test('the trade box: blank 11 × 4 1/2 in, scores at 3 1/2, 5, 8 1/2, 10, turn, at 3, slits at the first three, tab foot cut away', async () => {
    const { pieces, unit } = await readCard(trade);
    const ops = pieces[0]?.ops ?? [];
    const at = (name: string) => ops.filter(({ op }) => op === name).map((op) => op.at);
    expect(unit).toBe('in');
    expect(ops[0]).toEqual({ op: 'blank', across: 279.4, up: 114.3 });
    expect(at('score')).toEqual([88.9, 127, 215.9, 254, 76.2]);
    // Turned over and half round before anything is done, then a quarter between the fourth score and the fifth.
    expect(ops.flatMap(({ op }, i) => (op === 'turn' ? [i] : []))).toEqual([2, 7, 9]);
    expect(at('slit')).toEqual([88.9, 127, 215.9]);
    expect(ops.find(({ op }) => op === 'corner')).toMatchObject({ across: 25.4, up: 39.6875 });
  });

  test('as text it is numbered for reading', async () => {
    const { printed } = await callDesk(['card', ...trade, '--format', 'text']);
    expect(printed).toContain('1. Cut 11 × 4 1/2 in.');
    expect(printed).toContain('2. Good side up. Score at 3 1/2, 5, 8 1/2 and 10 in.');
  });

  test('a saved recipe gives the same card as its sizes typed, on the tool of the same file', async () => {
    const saved = await readCard(['event.json'], { 'event.json': JSON.stringify(fortyFavors) });
    expect(saved.tool).toBe('Trimmer');
    expect(saved.pieces[0]?.ops).toEqual((await readCard(trade)).pieces[0]?.ops);
  });

  test('sizes in millimetres give a card in millimetres, and --unit overrules', async () => {
    const metric = [
      '--style',
      'open-top',
      '--set',
      'width=90mm',
      '--set',
      'depth=4 cm',
      '--set',
      'height=75mm',
    ];
    expect((await readCard(metric)).pieces[0]?.words[0]?.headline).toMatch(/^Cut 285 mm/);
    expect((await readCard([...metric, '--unit', 'in'])).unit).toBe('in');
  });
});

describe('desk net', () => {
  test('gives one piece alone, and turns away one that is not there', async () => {
    const words = ['net', '--style', 'tray-lid', '--format', 'svg'];
    const { printed } = await callDesk([...words, '--piece', 'lid']);
    expect(printed).toContain('<title>Tray with lift-off lid, lid</title>');
    expect(printed).not.toContain('cut-tray');
    const { codes } = await callDesk([...words, '--piece', 'lif']);
    expect(codes).toEqual(['no-such-piece']);
  });

  test('millimetres throughout, whatever the sizes were typed in', async () => {
    const { printed } = await callDesk(['net', ...trade]);
    const net = JSON.parse(printed) as {
      pieces: { blank: unknown; slits: unknown[] }[];
      findings: { says: string }[];
    };
    expect(net.pieces[0]?.blank).toEqual({ acrossMm: 279.4, upMm: 114.3 });
    expect(net.pieces[0]?.slits).toHaveLength(3);
    for (const { says } of net.findings) expect(says).not.toMatch(/[{}]/);
  });

  test('flaps too short to cover the bottom are a finding with their remedy, not a refusal', async () => {
    const { printed, refused } = await callDesk(['net', ...trade, '--set', 'flap=1/2 in']);
    expect(refused).toEqual([]);
    expect(JSON.parse(printed)).toHaveProperty(
      'findings.0',
      expect.objectContaining({ severity: 'stop', where: 'flap' }),
    );
  });

  test.each([
    ['fold', /^\{"file_spec":1\.2/],
    ['svg', /<svg [^>]*width="279\.4mm" height="114\.3mm"/],
    ['dxf', /AC1009/],
  ])('%s is written where --out says, and nothing is printed', async (format, pattern) => {
    const { printed, written } = await callDesk([
      'net',
      ...trade,
      '--format',
      format,
      '--out',
      `net.${format}`,
    ]);
    expect(printed).toBe('');
    expect(written.get(`net.${format}`)).toMatch(pattern);
  });
});
