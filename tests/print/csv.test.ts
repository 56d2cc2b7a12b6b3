import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvCell, csvOf } from '../../src/print/csv';
import { SEED } from '../seed';
import { recordFault } from '../setup/fault-record';

/** RFC 4180 read the plain way: an independent reader for the round trip. */
function readCsv(written: string): string[][] {
  const text = written.slice(1);
  const rows: string[][] = [[]];
  let [cell, quoted] = ['', false];
  for (let i = 0; i < text.length; i++) {
    const sign = text[i]!;
    if (quoted && sign === '"' && text[i + 1] === '"') [cell, i] = [`${cell}"`, i + 1];
    else if (sign === '"') quoted = !quoted;
    else if (!quoted && (sign === ',' || sign === '\n')) {
      rows.at(-1)!.push(cell);
      cell = '';
      if (sign === '\n') rows.push([]);
    } else if (quoted || sign !== '\r') cell += sign;
  }
  return rows.slice(0, -1);
}

describe('a shopping list for a spreadsheet', () => {
  // The payloads that OWASP's page on CSV injection names, from memory.
  it('never hands a spreadsheet a formula', () => {
    for (const name of ['=HYPERLINK("http://x")', '+1+1', '-2+3', '@SUM(A1)', '\t=1', '\r=1', '＝1+1'])
      expect(readCsv(csvOf([[name]]))[0]![0]).toBe(`'${name}`);
  });

  it('leaves plain words and numbers as they are', () => {
    expect(csvCell('Oat cardstock')).toBe('Oat cardstock');
    expect(csvCell(-3)).toBe('-3');
    expect(csvCell('tape, 1/4 in')).toBe('"tape, 1/4 in"');
    expect(csvCell('say "when"')).toBe('"say ""when"""');
  });

  it('begins with the mark that says it is UTF-8, so that a spreadsheet reads every letter', (context) => {
    // Without the mark a spreadsheet may take the file for Windows-1252, in which each of these reads as other letters.
    const names = ['Zoë', 'Łódź', 'Ελένη', 'Анна', '結婚'];
    const misread = names.filter((name) => {
      const bytes = new TextEncoder().encode(csvOf([[name]]));
      const marked = [0xef, 0xbb, 0xbf].every((byte, at) => bytes[at] === byte);
      return !new TextDecoder(marked ? 'utf-8' : 'windows-1252').decode(bytes).startsWith(name);
    });
    recordFault(context, {
      fault: 'a table whose letters a spreadsheet misreads',
      tries: names.length,
      lost: misread.length,
      goal: 0,
    });
    expect(csvOf([['Zoë 結婚']])).toBe('\uFEFFZoë 結婚\r\n');
  });

  it('reads back cell by cell, whatever was typed', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.string({ unit: 'binary' }), { minLength: 1 }), { minLength: 1 }),
        (rows) => {
          const read = readCsv(csvOf(rows));
          expect(read.map((row) => row.map((cell) => cell.replace(/^'/, '')))).toEqual(
            rows.map((row) => row.map((cell) => cell.replace(/^'/, ''))),
          );
          for (const cell of read.flat()) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
        },
      ),
      { seed: SEED, numRuns: 200 },
    );
  });
});
