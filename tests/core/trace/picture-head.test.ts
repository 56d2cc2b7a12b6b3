import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readPictureHead } from '../../../src/core/trace';
import { swayFrom } from '../../../src/core/yield/stock/sway';
import { SEED } from '../../seed';

const FOLDER = 'tests/fixtures/pictures/';
const bytesOf = (text: string) => new TextEncoder().encode(text);
const why = (bytes: Uint8Array) => {
  const reading = readPictureHead(bytes);
  return reading.ok ? reading.head.kind : reading.why;
};
const svg = (inside: string) =>
  bytesOf(`<svg xmlns="http://www.w3.org/2000/svg" width="10" height="10">${inside}</svg>`);

/** A PNG that says it has so many pixels; only its head is there. */
function pngOf(wide: number, high: number): Uint8Array {
  const head = new Uint8Array(33);
  head.set([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52]);
  new DataView(head.buffer).setUint32(16, wide);
  new DataView(head.buffer).setUint32(20, high);
  return head;
}

describe('the head of a picture', () => {
  // Files of 300 × 200 pixels that another library wrote: Pillow 9 and later, PNG, both kinds of JPEG, all three of WebP.
  test.each(readdirSync(FOLDER))('%s', (name) => {
    const reading = readPictureHead(new Uint8Array(readFileSync(`${FOLDER}${name}`)));
    const kind = name.endsWith('.jpg') ? 'jpeg' : name.replace(/^.*\./, '');
    expect(reading).toEqual({ ok: true, head: { kind, pixels: [300, 200] } });
  });

  test('an outline is one by what stands in it, with or without a head of its own', () => {
    expect(why(svg('<path d="M0 0h5"/>'))).toBe('svg');
    expect(why(bytesOf('\ufeff<?xml version="1.0"?>\n<!-- a net --><svg viewBox="0 0 1 1"></svg>'))).toBe(
      'svg',
    );
    expect(why(svg('<use href="#a"/>'.repeat(16)))).toBe('svg');
    const named = '<!DOCTYPE svg [<!ENTITY ns_svg "http://www.w3.org/2000/svg">]><svg xmlns="&ns_svg;"/>';
    expect(why(bytesOf(named))).toBe('svg');
  });

  test.each<[string, Uint8Array, string]>([
    ['nothing', new Uint8Array(0), 'unknown'],
    ['a text', bytesOf('a scan'), 'unknown'],
    ['another picture', bytesOf('GIF89a'), 'unknown'],
    ['a page that speaks of outlines', bytesOf('<html><svg></svg></html>'), 'unknown'],
    ['a head cut short', pngOf(3, 2).slice(0, 20), 'unknown'],
    ['no pixels', pngOf(0, 4), 'unknown'],
    ['a small file that unpacks to four thousand million pixels', pngOf(65_535, 65_535), 'too-many-pixels'],
    ['a strip longer than any sheet', pngOf(30_000, 10), 'too-many-pixels'],
    ['25 MB and a byte', new Uint8Array(25_000_001), 'too-large'],
    ['an outline of more than 2 MB', svg(' '.repeat(2_000_000)), 'too-large'],
    [
      'a name that stands for ten others, ten deep',
      bytesOf('<!DOCTYPE svg [<!ENTITY a "&b;&b;">]><svg/>'),
      'tangled',
    ],
    ['parts made of parts', svg('<g id="a"><use href="#b"/></g>'.repeat(17)), 'tangled'],
    ['fills made of fills', svg('<pattern id="a"/>'.repeat(17)), 'tangled'],
  ])('%s is refused', (_, bytes, wanted) => {
    expect(why(bytes)).toBe(wanted);
  });

  test('20,000 files with bytes changed or cut off: read or refused, none throws', () => {
    const draw = swayFrom(SEED);
    const bases = [
      ...readdirSync(FOLDER).map((name) => readFileSync(`${FOLDER}${name}`)),
      Buffer.from(svg('<use/>')),
    ];
    const came = new Set<string>();
    for (let turn = 0; turn < 20_000; turn++) {
      const bytes = new Uint8Array(bases[turn % bases.length] ?? []);
      // Near the start, where the head is.
      for (let k = 0; k < 1 + draw() * 4; k++)
        bytes[Math.floor(draw() * Math.min(64, bytes.length))] = Math.floor(draw() * 256);
      came.add(why(draw() < 0.3 ? bytes.slice(0, Math.floor(draw() * 64)) : bytes));
    }
    expect([...came].sort()).toEqual(['jpeg', 'png', 'svg', 'too-many-pixels', 'unknown', 'webp']);
  });
});
