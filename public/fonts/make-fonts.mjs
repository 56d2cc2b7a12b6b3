// Cuts the two faces of Inter down to what the app writes, and lists how wide each letter is.
// Run from the project's top level after `npm ci`: node public/fonts/make-fonts.mjs
import { readFile, writeFile } from 'node:fs/promises';
import subsetFont from 'subset-font';

const SOURCE = 'node_modules/@expo-google-fonts/inter';
const HERE = 'public/fonts';
const WIDTHS = 'src/core/draw/strokes/letter-widths.ts';

const range = (from, to) =>
  Array.from({ length: to - from + 1 }, (_, step) => String.fromCodePoint(from + step)).join('');

const LETTERS = [...new Set([
  range(0x20, 0x7e),
  range(0xa0, 0xac),
  range(0xae, 0x148),
  range(0x14a, 0x17e),
  '¼½¾⅓⅔⅛⅜⅝⅞',
  '⁰¹²³⁴⁵⁶⁷⁸⁹',
  '₀₁₂₃₄₅₆₇₈₉',
  '⁄″′×°≤≥≈−→←↑↓✓–—…•“”‘’€',
].join(''))].join('');

/** What prints carry besides: Romanian commas below, capital sharp s, Greek, Cyrillic, Vietnamese. The screen has the system's own letters for these. */
const PRINTED = LETTERS + [
  range(0x218, 0x21b),
  '\u1e9e',
  range(0x386, 0x386), range(0x388, 0x38a), '\u038c', range(0x38e, 0x3a1), range(0x3a3, 0x3ce),
  range(0x400, 0x45f),
  '\u0490\u0491',
  '\u01a0\u01a1\u01af\u01b0',
  range(0x1ea0, 0x1ef9),
].join('');

const FACES = [
  { name: 'inter-regular', file: `${SOURCE}/400Regular/Inter_400Regular.ttf` },
  { name: 'inter-bold', file: `${SOURCE}/700Bold/Inter_700Bold.ttf` },
];

/** Advance width of every letter in thousandths of the type size, read from the face's own cmap and hmtx tables. */
function readWidths(font) {
  const tables = new Map();
  for (let at = 12; at < 12 + 16 * font.readUInt16BE(4); at += 16)
    tables.set(font.toString('latin1', at, at + 4), font.readUInt32BE(at + 8));
  const unitsPerEm = font.readUInt16BE(tables.get('head') + 18);
  const metrics = font.readUInt16BE(tables.get('hhea') + 34);
  const advance = (glyph) => font.readUInt16BE(tables.get('hmtx') + 4 * Math.min(glyph, metrics - 1));
  const glyphOf = readCharacterMap(font, tables.get('cmap'));
  return Array.from(PRINTED, (letter) => {
    const glyph = glyphOf(letter.codePointAt(0));
    if (!glyph) throw new Error(`the face has no ${letter}`);
    return Math.round((1000 * advance(glyph)) / unitsPerEm);
  });
}

/** The Unicode map of format 4 (OpenType specification, "cmap"). */
function readCharacterMap(font, cmap) {
  let table = 0;
  for (let at = cmap + 4; at < cmap + 4 + 8 * font.readUInt16BE(cmap + 2); at += 8) {
    const start = cmap + font.readUInt32BE(at + 4);
    if (font.readUInt16BE(start) === 4) table = start;
  }
  if (!table) throw new Error('the face has no character map of format 4');
  const segments = font.readUInt16BE(table + 6) / 2;
  const [ends, starts, deltas, offsets] = [14, 16 + 2 * segments, 16 + 4 * segments, 16 + 6 * segments].map(
    (offset) => table + offset,
  );
  return (code) => {
    for (let s = 0; s < segments; s++) {
      if (code > font.readUInt16BE(ends + 2 * s)) continue;
      const start = font.readUInt16BE(starts + 2 * s);
      if (code < start) return 0;
      const offset = font.readUInt16BE(offsets + 2 * s);
      const raw = offset === 0 ? code : font.readUInt16BE(offsets + 2 * s + offset + 2 * (code - start));
      return (raw + font.readUInt16BE(deltas + 2 * s)) & 0xffff;
    }
    return 0;
  };
}

const widths = [];
for (const face of FACES) {
  const whole = await readFile(face.file);
  // The screen keeps true fractions and tabular figures; the PDF writer shapes nothing, so its file needs no features.
  const screen = await subsetFont(whole, LETTERS, { targetFormat: 'woff2', keepFeatures: ['kern', 'frac', 'numr', 'dnom', 'tnum'] });
  const print = await subsetFont(whole, PRINTED, { targetFormat: 'sfnt', keepFeatures: [], noHinting: true });
  await writeFile(`${HERE}/${face.name}.woff2`, screen);
  await writeFile(`${HERE}/${face.name}.ttf`, print);
  widths.push(readWidths(print));
}
await writeFile(`${HERE}/OFL.txt`, await readFile(`${SOURCE}/LICENSE_FONT`));

await writeFile(
  WIDTHS,
  `// Written by public/fonts/make-fonts.mjs; do not edit.
/** Every letter the embedded faces can write. */
export const LETTERS = ${JSON.stringify(PRINTED)};

/** Advance widths in the order of LETTERS, in thousandths of the type size. source: the hmtx tables of public/fonts. */
export const REGULAR_WIDTHS: readonly number[] = ${JSON.stringify(widths[0])};
export const BOLD_WIDTHS: readonly number[] = ${JSON.stringify(widths[1])};
`,
);
