/**
 * `npm run bench`: how many sheets, side by side in one run: the area bound, a general-purpose rectangle packer, our solver with its proof,
 * and a general solver for whole-number programs on the model of all patterns. Sets from CREASE_OPEN_SETS; without it the typed-in ones.
 * Words after `--` keep to the rows whose names begin with them: `npm run bench -- bin paper`.
 */
import { createRequire } from 'node:module';
import { cpus, loadavg } from 'node:os';
import loadHighs from 'highs';
import type { YieldInstance } from '../../shared/yield-instances';
import { planSheets } from '../../src/core/yield';
import { groupParts } from '../../src/core/yield/proof/group-parts';
import { type Content, listLayouts } from '../../src/core/yield/proof/list-layouts';
import { orderOf, solveBest, solveSheets } from '../outside/cut-problems';
import { OPEN_SETS, type OpenInstance, openSet } from '../outside/open-sets';
import { PUBLISHED_CUTS } from '../outside/published-cuts';
import { type FreshOrder, freshOrders } from './fresh-orders';
import { mixRow, tinyMixRow } from './mix-rows';

const SECONDS = 10; // source: the longest wait of the table
const APP_SECONDS = 4; // source: how long the app looks for a better plan
const PACKER_PIECES = 3000; // More are too slow for the packer, whose work grows with the square.
const MODEL_SECONDS = 5;

const say = (line: string): void => void process.stdout.write(`${line}\n`);
// Its modules name no exports that Node finds, so it is fetched the older way.
const rectangles = createRequire(import.meta.url)('maxrects-packer') as typeof import('maxrects-packer');
const highs = await loadHighs();

function areaBound({ sheet, items }: YieldInstance): number {
  const area = items.reduce((sum, { w, h, demand }) => sum + w * h * (demand ?? 1), 0);
  return Math.ceil(area / (sheet.w * sheet.h));
}

/** Sheets of a packer that knows no blades: pieces may lie where no edge-to-edge cut frees them. */
function packed({ sheet, items, rotation = false }: YieldInstance): number | null {
  const pieces = items.flatMap(({ w, h, demand }) => Array.from({ length: demand ?? 1 }, () => ({ w, h })));
  if (pieces.length > PACKER_PIECES) return null;
  const packer = new rectangles.MaxRectsPacker(sheet.w, sheet.h, 0, { smart: true, pot: false, square: false, allowRotation: rotation, border: 0 }); // biome-ignore format: one row
  const largestFirst = pieces.sort((a, b) => b.w * b.h - a.w * a.h);
  for (const { w, h } of largestFirst) packer.add(w, h, null);
  return packer.bins.length;
}

/** Every pattern that no other covers, and the fewest of them that cover the order, by a general solver; null: too many, or not in time. */
function modelled(instance: YieldInstance): number | null {
  const { paper, parts, tool } = orderOf(instance);
  const groups = groupParts(parts, paper, tool.kerf, {});
  const end = performance.now() + MODEL_SECONDS * 1000;
  const patterns = listLayouts(groups, paper, [], () => performance.now() > end);
  if (patterns === null || patterns.length > 4000) return null;
  const solution = highs.solve(writeModel(patterns, groups.map(({ count }) => count)), { mip_rel_gap: 0, mip_abs_gap: 0.5, time_limit: MODEL_SECONDS }); // biome-ignore format: one row
  return solution.Status === 'Optimal' ? Math.round(solution.ObjectiveValue) : null;
}

function writeModel(patterns: readonly Content[], wanted: readonly number[]): string {
  const names = patterns.map((_, at) => `p${at}`);
  const rows = wanted.map((count, item) => {
    const terms = patterns.flatMap((pattern, at) => (pattern[item]! > 0 ? [`${pattern[item]!} p${at}`] : []));
    return ` r${item}: ${terms.join(' + ')} >= ${count}`;
  });
  return `Minimize\n obj: ${names.join(' + ')}\nSubject To\n${rows.join('\n')}\nGeneral\n ${names.join(' ')}\nEnd\n`;
}

const rank = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
const inMs = (ms: readonly number[]): string => {
  const sorted = [...ms].sort((a, b) => a - b);
  return `${rank(sorted, 0.5).toFixed(0)} / ${rank(sorted, 0.95).toFixed(0)} / ${(sorted.at(-1) ?? 0).toFixed(0)}`;
};

function clocked<A>(work: () => A): { readonly answer: A; readonly ms: number } {
  const start = performance.now();
  const answer = work();
  return { answer, ms: performance.now() - start };
}

function sheetRow(name: string, instances: readonly OpenInstance[]): void {
  const found = instances.map(({ instance, optimum }) => {
    const ours = clocked(() => solveSheets(instance, SECONDS, () => performance.now()).plan);
    return { optimum, ours, area: areaBound(instance), packer: packed(instance), model: clocked(() => modelled(instance)) }; // biome-ignore format: one row
  });
  const count = (holds: (row: (typeof found)[number]) => boolean): string => `${found.filter(holds).length}/${found.length}`; // biome-ignore format: one row
  const tried = found.filter(({ packer }) => packer !== null);
  say(name);
  say(`  area bound meets the optimum    ${count(({ area, optimum }) => area === optimum)}`);
  say(`  rectangle packer reaches it     ${count(({ packer, optimum }) => packer === optimum)}, ${tried.length} tried, sheets over it ${tried.reduce((sum, { packer, optimum }) => sum + (packer ?? 0) - optimum, 0)}`); // biome-ignore format: one row
  say(`  ours reaches it                 ${count(({ ours, optimum }) => ours.answer.sheets === optimum)}, proven ${count(({ ours }) => ours.answer.proven)}, at most ${Math.max(...found.map(({ ours, optimum }) => ours.answer.sheets - optimum))} over; ms median / p95 / most ${inMs(found.map(({ ours }) => ours.ms))}`); // biome-ignore format: one row
  say(`  model of all patterns solved    ${count(({ model, optimum }) => model.answer === optimum)}, another value ${count(({ model, optimum }) => model.answer !== null && model.answer !== optimum)}; ms ${inMs(found.map(({ model }) => model.ms))}`); // biome-ignore format: one row
}

/** Orders made up afresh from a seed, as long as the app itself looks: how many are proven, and by how much the others may be off. */
function freshRow(name: string, orders: readonly FreshOrder[]): void {
  const found = orders.map(({ paper, parts, tool }) =>
    clocked(() => planSheets(parts, paper, tool, { seconds: APP_SECONDS, now: () => performance.now() })),
  );
  const proven = found.filter(({ answer }) => answer.proven).length;
  const off = Math.max(...found.map(({ answer }) => answer.sheets - answer.lowerBound));
  say(name);
  say(`  proven ${proven}/${orders.length}, the others at most ${off} over their bound; ms median / p95 / most ${inMs(found.map(({ ms }) => ms))}`); // biome-ignore format: one row
}

function worthRow(name: string, instances: readonly OpenInstance[]): void {
  const found = instances.map(({ instance, optimum }) => ({
    optimum,
    area: instance.sheet.w * instance.sheet.h,
    ...clocked(() => solveBest(instance, SECONDS, () => performance.now())),
  }));
  const count = (holds: (row: (typeof found)[number]) => boolean): string => `${found.filter(holds).length}/${found.length}`; // biome-ignore format: one row
  say(name);
  say(`  ours reaches the published worth ${count(({ answer, optimum }) => answer.worth === optimum)}, above it ${count(({ answer, optimum }) => answer.worth > optimum)}, proven ${count(({ answer }) => answer.worth === answer.bound)}; ms median / p95 / most ${inMs(found.map(({ ms }) => ms))}`); // biome-ignore format: one row
}

say(
  `${cpus().length} cores, load ${loadavg()[0]?.toFixed(1) ?? '?'}, Node ${process.version}; up to ${SECONDS} s each`,
);
const asked = process.argv.slice(2);
const isAsked = (name: string): boolean => asked.length === 0 || asked.some((word) => name.startsWith(word));
const typedIn = PUBLISHED_CUTS.filter(({ instance }) => instance.kind === 'cutting-stock');
if (isAsked('typed in')) sheetRow('typed in, sheets', typedIn);
if (isAsked('typed in')) worthRow('typed in, worth', PUBLISHED_CUTS.filter(({ instance }) => instance.kind.endsWith('knapsack'))); // biome-ignore format: one row
const fresh: readonly (readonly [string, readonly FreshOrder[]])[] = [
  ['fresh orders, up to 5 types', freshOrders(101, 200, [1, 5], 300)],
  ['fresh orders, 6 to 10 types', freshOrders(102, 200, [6, 10], 300)],
  ['fresh orders, sheets longer than the trimmer', freshOrders(103, 100, [1, 5], 120, true)],
  ['fresh orders, samplers of 16 to 44 types', freshOrders(104, 40, [16, 44], 3)],
];
for (const [name, orders] of fresh.filter(([name]) => isAsked(name))) freshRow(name, orders);
const mixes: readonly (readonly [string, () => Promise<string[]>])[] = [
  ['mix of ten papers, 50 orders of up to 5 kinds of box', () => mixRow(50)],
  ['mix of tiny orders, 500', () => tinyMixRow(500)],
];
for (const [name, row] of mixes.filter(([name]) => isAsked(name)))
  for (const line of [name, ...(await row())]) say(line);
if (OPEN_SETS === undefined) say('skipped: the open sets; CREASE_OPEN_SETS names no folder');
else {
  const paper = openSet('paper-scale');
  const stock = openSet('cutting-stock');
  const starting = (prefix: string): OpenInstance[] => stock.filter(({ instance }) => instance.name.startsWith(prefix)); // biome-ignore format: one row
  const rows: readonly (readonly [string, readonly OpenInstance[], typeof sheetRow])[] = [
    ['paper scale, up to 5 types', paper.filter(({ instance }) => instance.items.length <= 5), sheetRow],
    ['paper scale, 6 to 10 types', paper.filter(({ instance }) => instance.items.length > 5), sheetRow],
    ['cutting stock cs-', starting('cs-'), sheetRow],
    ['cutting stock furn-', starting('furn-'), sheetRow],
    ['cutting stock csp-', starting('csp-'), sheetRow],
    ['bin packing', openSet('bin-packing'), sheetRow],
    ['unconstrained knapsack', openSet('unconstrained-knapsack'), worthRow],
    ['constrained knapsack', openSet('constrained-knapsack'), worthRow],
  ];
  for (const [name, instances, row] of rows.filter(([name]) => isAsked(name)))
    if (instances.length > 0) row(name, instances);
    else say(`skipped: ${name}, not in the folder`);
}
say(
  `most memory ${Math.round(process.resourceUsage().maxRSS / 1024)} MB, the general solver's and the packer's included`,
);
