import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readWorkbook } from '../../shared/read-workbook';
import { SCHEMA } from '../../shared/workbook';
import { writeWorkbook } from '../../shared/write-workbook';

const FOLDER = 'tests/fixtures/saved/';
const versions = readdirSync(FOLDER).filter((name) => /^v\d+$/.test(name));
const files = versions.flatMap((version) =>
  readdirSync(FOLDER + version).map((name) => `${version}/${name}`),
);

describe('a file saved once', () => {
  test('is kept for every format there ever was, five and more of each', () => {
    expect(versions.sort()).toEqual(Array.from({ length: SCHEMA }, (_, index) => `v${index + 1}`).sort());
    for (const version of versions)
      expect(files.filter((file) => file.startsWith(`${version}/`)).length).toBeGreaterThanOrEqual(5);
  });

  test.each(files)('opens today, and says what it said: %s', (file) => {
    const text = readFileSync(FOLDER + file, 'utf8');
    const reading = readWorkbook(text);
    if (!reading.ok) throw new Error(JSON.stringify(reading.refusals));
    if (file.startsWith(`v${SCHEMA}/`)) expect(reading.file).toEqual(JSON.parse(text));
    expect(readWorkbook(writeWorkbook(reading.file))).toMatchObject({ ok: true });
  });
});
