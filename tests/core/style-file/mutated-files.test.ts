import { expect, test } from 'vitest';
import { checkBox } from '../../../src/core/checks';
import { layNet } from '../../../src/core/net';
import { netOfRecipe } from '../../../src/core/plan';
import { notABox, proveStyle, sayProof } from '../../../src/core/proof';
import type { Recipe } from '../../../src/core/rows';
import { bringOwnStyle, dropOwnStyle, ownStyleId } from '../../../src/core/style-file/own-style';
import { readStyle } from '../../../src/core/style-file/read-style';
import type { StyleRefusal } from '../../../src/core/style-file/style-refusal';
import { writeStyle } from '../../../src/core/style-file/write-style';
import { STYLES, styleById } from '../../../src/core/styles';
import { tray } from '../../../src/core/styles/boxes/tray';
import { printLength, rulerBeside } from '../../../src/core/units';
import { sayReason } from '../../../src/core/units/reason';
import { swayFrom } from '../../../src/core/yield/stock/sway';
import { FUZZ_SEED, FUZZ_TRIES } from '../../fuzz';
import { processorSlowness } from '../../processor-pace';
import { recipeRow } from '../../state/draft-recipe';
import { mutate } from './mutate';

/** With all tests, or as many as a night allows. */
const TRIES = Math.min(FUZZ_TRIES, 100_000);
/** Of those that are boxes, every so many-th is proved at a size with all tests, and every one in a night. */
const PROVED = process.env['FUZZ_TRIES'] === undefined ? 4 : 1;
/** A file that takes longer than this is one that hangs, in microseconds of this process alone: another program does not make a file slow. */
const HANGS = 1_000_000;

const inWords = (refusal: StyleRefusal): string =>
  sayReason(refusal, { length: (length) => printLength(length, rulerBeside('in')).text, money: String });

/** Flat, folded and solid ones; of one way and of many; with workings, numbers of options and an integral. */
const BASES = [
  'tray',
  'hinged-lid',
  'wallet',
  'open-top',
  'tray-lid',
  'three-sided-bar',
  'square-pyramid',
  'pillow-pack',
  'wedge',
].map((id) => {
  const style = styleById(id);
  const writing = style && writeStyle(style);
  if (!writing?.ok) throw new Error(`${id} has no file`);
  return writing.text;
});

/** Rows of a shelf, which nothing that is read may touch. */
function frozen<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}

const rowWith = (text: string): Recipe =>
  frozen({
    ...recipeRow({ ownStyle: text, sizesMm: { width: 80, depth: 60, height: 40 }, options: {} }),
    styleId: ownStyleId(text),
  });

function microsecondsSince(before: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(before);
  return user + system;
}

/** Everything that is asked of a style from a file, until it is refused; what came of it. */
function open(text: string, turn: number): 'refused' | 'no box' | 'box' {
  const reading = readStyle(text);
  const refusals = reading.ok ? notABox(reading.style) : reading.refusals;
  for (const refusal of refusals) {
    expect(refusal.remedy).not.toBe('');
    for (const [, slot = ''] of `${refusal.says} ${refusal.remedy}`.matchAll(/\{(\w+)\}/g))
      expect(Object.keys(refusal.facts)).toContain(slot);
    expect(inWords(refusal)).not.toMatch(/NaN|undefined|\[object/);
  }
  if (!reading.ok) return 'refused';
  // A box that came with a link is drawn before anybody asks whether its style is sound.
  const row = rowWith(text);
  const before = JSON.stringify(row);
  const style = bringOwnStyle(text);
  const net = netOfRecipe(row);
  if (style && net) checkBox(style, net);
  expect(JSON.stringify(row)).toBe(before);
  dropOwnStyle(text);
  if (refusals.length > 0) return 'no box';
  if (turn % PROVED === 0) sayProof(proveStyle(reading.style, { boxes: 1 }));
  return 'box';
}

test(`${TRIES} mutated files: none throws, none takes a second, and no row or style of ours changes`, {
  timeout: 1_800_000,
}, () => {
  const draw = swayFrom(FUZZ_SEED);
  const ours = JSON.stringify(STYLES);
  const sized = { sizes: {}, caliperUm: 300 };
  const trayNet = JSON.stringify(layNet(tray, sized));
  const came = { refused: 0, 'no box': 0, box: 0 };
  let slowest = 0;
  const broke: string[] = [];
  for (let turn = 0; turn < TRIES; turn++) {
    const text = mutate(BASES[turn % BASES.length] ?? '', draw);
    const before = performance.now();
    try {
      came[open(text, turn)]++;
    } catch (error) {
      broke.push(`file ${turn}: ${error instanceof Error ? error.stack : String(error)}`);
    }
    const took = (performance.now() - before) * 1000;
    // Neither another program nor sweeping away what earlier files left is this file's time, so one that seems slow is opened once more, by
    // this process's own clock. That clock takes as long to read as a short file, so it is not asked of every one.
    if (took > slowest && took > HANGS / 2) {
      const again = process.cpuUsage();
      open(text, turn);
      slowest = Math.max(slowest, Math.min(took, microsecondsSince(again)));
    } else slowest = Math.max(slowest, took);
  }
  process.stdout.write(
    `mutated style files: ${TRIES}, ${came.refused} refused, ${came['no box']} no box, ${came.box} a box; slowest ${slowest / 1000} ms\n`,
  );
  expect(broke).toEqual([]);
  expect(slowest).toBeLessThan(HANGS * processorSlowness());
  expect(JSON.stringify(STYLES)).toBe(ours);
  expect(JSON.stringify(layNet(tray, sized))).toBe(trayNet);
  // Every way out was taken often enough to mean something.
  expect(came.box).toBeGreaterThan(TRIES / 50);
  expect(came['no box']).toBeGreaterThan(TRIES / 500);
  expect(came.refused).toBeGreaterThan(TRIES / 10);
});
