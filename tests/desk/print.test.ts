import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { type ReadPage, readPdf } from '../print/read-pdf';
import { recordFault } from '../setup/fault-record';
import { callDesk } from './call-desk';
import { fortyFavors } from './forty-favors';

const files = { 'event.json': JSON.stringify(fortyFavors) };

async function filesOf(words: readonly string[]): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const { refused, written } = await callDesk(words, files);
  expect(refused).toEqual([]);
  return written;
}

/** Lengths of all level strokes of a page, mm. */
const levelStrokes = ({ paths }: ReadPage): number[] =>
  paths
    .filter(({ points, stroked }) => stroked && points.every(([, y]) => y === points[0]?.[1]))
    .map(({ points }) => Math.max(...points.map(([x]) => x)) - Math.min(...points.map(([x]) => x)));

test('plan --out writes what an event is printed as: cutting plan, shopping list twice, batch sheet, card and template, calendar and figures', async () => {
  const written = await filesOf(['plan', 'event.json', '--out', 'prints']);
  expect([...written.keys()]).toEqual([
    'prints/party-cutting-plan.pdf',
    'prints/party-shopping-list.pdf',
    'prints/party-batch-sheet.pdf',
    'prints/sweets-step-card.pdf',
    'prints/sweets-template.pdf',
    'prints/party-shopping-list.csv',
    'prints/party-schedule.ics',
    'prints/party-plan.json',
  ]);
  expect(JSON.parse(String(written.get('prints/party-plan.json')))).toMatchObject({
    ordered: 40,
    making: 44,
  });
  const calendar = String(written.get('prints/party-schedule.ics'));
  // RFC 5545: lines end in CR LF and are at most 75 octets; a floating time has no Z and no zone
  for (const line of calendar.trimEnd().split('\r\n'))
    expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
  expect(calendar).toMatch(/^BEGIN:VCALENDAR\r\nVERSION:2\.0\r\n/);
  expect(calendar).toMatch(/\r\nDTSTART:202606\d\dT\d{6}\r\n/);
  expect(calendar).toContain('DTSTART;VALUE=DATE:20260606\r\n');
  expect(written.get('prints/party-shopping-list.csv')).toContain('Kraft');
});

test('the scale bars of the template measure 100 mm within a tenth, read back by pdfjs-dist', async () => {
  const written = await filesOf(['plan', 'event.json', '--out', 'prints', '--paper', 'a4']);
  const pages = await readPdf(written.get('prints/sweets-template.pdf') as Uint8Array);
  expect(pages.length).toBeGreaterThan(0);
  for (const page of pages) {
    expect([Math.round(page.widthMm), Math.round(page.heightMm)].sort((a, b) => a - b)).toEqual([210, 297]);
    expect(levelStrokes(page).filter((length) => Math.abs(length - 100) <= 0.1)).not.toEqual([]);
  }
});

test('the same event gives the same bytes, so that a print can be compared with last season’s', async () => {
  const [first, second] = [
    await filesOf(['plan', 'event.json', '--out', 'a']),
    await filesOf(['plan', 'event.json', '--out', 'a']),
  ];
  for (const [name, content] of first) expect(second.get(name), name).toEqual(content);
});

test.each(['net', 'card'])('%s --format pdf is a PDF of the paper that --paper names', async (verb) => {
  const written = await filesOf([
    verb,
    'event.json',
    '--format',
    'pdf',
    '--paper',
    'letter',
    '--out',
    'one.pdf',
  ]);
  const [page] = await readPdf(written.get('one.pdf') as Uint8Array);
  expect(Math.min(page?.widthMm ?? 0, page?.heightMm ?? 0)).toBeCloseTo(215.9, 1);
});

test('a paper that no printer here takes is refused', async () => {
  const { codes } = await callDesk(['plan', 'event.json', '--paper', 'a5'], files);
  expect(codes).toEqual(['unknown-paper']);
});

test('a handout is set on paper and as a page from a saved recipe, and of a style alone', async () => {
  const saved = { 'tray.json': readFileSync('demo-data/bulb-tray.json', 'utf8') };
  const page = await callDesk(['handout', 'tray.json', '--format', 'html'], saved);
  expect(page.refused).toEqual([]);
  const paper = await callDesk(['handout', 'tray.json', '--paper', 'a4', '--out', 'tray.pdf'], saved);
  const pages = await readPdf(paper.written.get('tray.pdf') as Uint8Array);
  const words = pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
  for (const said of ['Bulb tray', 'You need']) {
    expect(words).toContain(said);
    expect(page.printed).toContain(said);
  }
  const bare = await callDesk(['handout', '--style', 'tray', '--format', 'html'], {});
  expect(bare.refused).toEqual([]);
  expect(bare.printed).toContain('You need');
});

test('events of one name, and of names in any script, leave their own files in one folder', async (context) => {
  const [party] = fortyFavors.events;
  const names = ['Party', 'Party', '結婚式', 'Ελένη', '🎉', '🎉'];
  const events = names.map((name, at) => ({ ...party, id: `event-${at}`, name }));
  const many = { 'many.json': JSON.stringify({ ...fortyFavors, kind: 'everything', events }) };
  const owners = new Map<string, string>();
  let lost = 0;
  for (const { id } of events) {
    const { written } = await callDesk(['plan', 'many.json', '--event', id, '--out', 'a'], many);
    for (const path of written.keys()) {
      // The card and the template of the one recipe are the same whoever asks.
      if (!path.includes('sweets') && owners.has(path)) lost++;
      owners.set(path, id);
    }
  }
  expect([...owners.keys()].join(' ')).toMatch(/結婚式-batch-sheet.*ελένη-batch-sheet/);
  recordFault(context, { fault: 'files of two events in one folder', tries: names.length, lost, goal: 0 });
});

test('an event is printed for the tool it is made with, not for the first of the file', async () => {
  const [first] = fortyFavors.tools;
  if (!first) throw new Error('the event has no tool');
  const board = { ...first, id: 'board', name: 'Score board', unit: 'mm' as const, finestMarkMm: 1 };
  const printed = async (toolId: string | null) => {
    const event = {
      ...fortyFavors,
      tools: [first, board],
      events: fortyFavors.events.map((one) => ({ ...one, toolId })),
    };
    const { written, refused } = await callDesk(['plan', 'event.json', '--out', 'a'], {
      'event.json': JSON.stringify(event),
    });
    expect(refused).toEqual([]);
    const text = async (name: string) =>
      (await readPdf(written.get(`a/${name}.pdf`) as Uint8Array))
        .flatMap(({ texts }) => texts.map(({ text: word }) => word))
        .join(' ');
    return [
      await text('party-batch-sheet'),
      await text('sweets-step-card'),
      await text('party-cutting-plan'),
    ];
  };
  const other = first.unit === 'in' ? /\d mm\b/ : /\d in\b/;
  expect(first.unit).toBe('in');
  for (const page of await printed('board')) expect(page).toMatch(other);
  for (const page of await printed(null)) expect(page).toMatch(/\d in\b|[½¼¾]/);
});

test('--help of one verb prints that verb alone, and the help of all prints all', async () => {
  const { printed, refused } = await callDesk(['card', '--help']);
  expect(refused).toEqual([]);
  expect(printed).toContain('  card (--style ID');
  expect(printed).not.toContain('  yield ');
  expect((await callDesk(['help', 'card'])).printed).toBe(printed);
  const { printed: all } = await callDesk(['--help']);
  for (const verb of ['styles', 'net', 'card', 'handout', 'fit', 'vary', 'beside', 'plan', 'yield'])
    expect(all).toContain(`  ${verb}`);
  expect((await callDesk(['cord', '--help'])).codes).toEqual(['unknown-verb']);
});
