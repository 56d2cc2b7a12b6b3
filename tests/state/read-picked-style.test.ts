import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readPickedStyle } from '../../src/state/intents/read-picked-style';

const file = JSON.parse(readFileSync('tests/fixtures/own-styles/deep-tray.json', 'utf8'));
const withSource = (source: string) =>
  new Blob([JSON.stringify({ ...file, style: { ...file.style, source } })]);
const codesOf = async (picked: Blob) => {
  const reading = await readPickedStyle(picked);
  return reading.ok ? [] : reading.refusals.map(({ code, path }) => `${code} ${path}`);
};

test('a style file is read', async () => {
  expect(await codesOf(withSource('my own'))).toEqual([]);
});

// UTF-8 (RFC 3629): é takes two bytes, so 150,000 of them are within 200,000 letters and beyond 200,000 bytes.
test('a file within its letters is read to its end, however many bytes they take', async () => {
  expect(await codesOf(withSource('é'.repeat(150_000)))).toEqual(['too-long style.source']);
});

test('a file of too many letters is refused as too large, in letters of one, two and three bytes', async () => {
  for (const letter of ['e', 'é', '€'])
    expect(await codesOf(withSource(letter.repeat(200_001)))).toEqual(['too-large ']);
});
