import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { workbookFile } from '../../shared/workbook';
import { planSeason } from '../../src/core/plan';
import { pdfOf, printSeason } from '../../src/print';
import { stamp } from './printed-boxes';
import { fonts, readPdf } from './read-pdf';

const saved = workbookFile.parse(JSON.parse(readFileSync('demo-data/orchard-season.json', 'utf8')));

test('a season on paper has every event, every row to buy, and every day of work once for each event', async () => {
  const season = planSeason(
    saved,
    saved.events.map(({ id }) => id),
  );
  const document = printSeason({ season, paper: 'letter', say: String, stamp });
  const said = (await readPdf(await pdfOf(document, fonts)))
    .flatMap(({ texts }) => texts.map(({ text }) => text))
    .join(' ');
  for (const { name } of saved.events) expect(said).toContain(name);
  for (const { name, unit, toBuy } of season.rows) if (toBuy > 0) expect(said).toContain(`${name} (${unit})`);
  const minutes = season.events
    .flatMap(({ timetable }) => timetable?.sittings ?? [])
    .reduce((sum, each) => sum + each.minutes, 0);
  const printed = [...said.slice(said.indexOf('Calendar')).matchAll(/(\d+) h (\d+) min/g)];
  expect(printed.reduce((sum, [, h, m]) => sum + 60 * Number(h) + Number(m), 0)).toBe(minutes);
});
