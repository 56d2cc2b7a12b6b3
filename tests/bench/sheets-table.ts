/**
 * `npm run bench`: how many sheets, side by side in one run: the area bound, a general-purpose rectangle packer, our solver with its proof,
 * and a general solver for whole-number programs on the model of all patterns. Sets from CREASE_OPEN_SETS; without it the typed-in ones.
 * Words after `--` keep to the rows whose names begin with them: `npm run bench -- bin paper`.
 */
import { cpus, loadavg } from 'node:os';
import type { YieldInstance } from '../../shared/yield-instances';
import { planSheets } from '../../src/core/yield';
import { solveBest, solveSheets } from '../outside/cut-problems';
import { OPEN_SETS, type OpenInstance, openSet } from '../outside/open-sets';
import { PUBLISHED_CUTS } from '../outside/published-cuts';
import { type FreshOrder, freshOrders, SUPER_B } from './fresh-orders';
import { modelled, packed, shelved } from './instead';
import { mixRow, tinyMixRow } from './mix-rows';

const SECONDS = 10; // source: the longest wait of the table
const APP_SECONDS = 4; // source: how long the app looks for a better plan

const say = (line: string): void => void process.stdout.write(`${line}\n`);

function areaBound({ sheet, items }: YieldInstance): number {
  const area = items.reduce((sum, { w, h, demand }) => sum + w * h * (demand ?? 1), 0);
  return Math.ceil(area / (sheet.w * sheet.h));
}

const rank = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
const inMs = (ms: readonly number[]): string => {
  const sorted = [...ms].sort((a, b) => a - b);
  return `${rank(sorted, 0.5).toFixed(0)} / ${rank(sorted, 0.95).toFixed(0)} / ${(sorted.at(-1) ?? 0).toFixed(0)}`;
};

/** Milliseconds of the processor: another program on the same machine takes nothing from the time allowed. */
const now = (): number => process.cpuUsage().user / 1000;

function clocked<A>(work: () => A): { readonly answer: A; readonly ms: number } {
  const start = now();
  const answer = work();
  return { answer, ms: now() - start };
}

function sheetRow(name: string, instances: readonly OpenInstance[]): void {
  const found = instances.map(({ instance, optimum }) => {
    const ours = clocked(() => solveSheets(instance, SECONDS, now).plan);
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
function freshRow(name: string, orders: readonly FreshOrder[], seconds = APP_SECONDS): void {
  const found = orders.map(({ paper, parts, tool }) =>
    clocked(() => planSheets(parts, paper, tool, { seconds, now })),
  );
  const proven = found.filter(({ answer }) => answer.proven).length;
  const off = Math.max(...found.map(({ answer }) => answer.sheets - answer.lowerBound));
  say(name);
  const gap = Math.max(
    ...found.map(({ answer }) => (100 * (answer.sheets - answer.lowerBound)) / answer.sheets),
  );
  say(`  proven ${proven}/${orders.length}, gap at most ${gap.toFixed(1)} %, the others at most ${off} over their bound; ms median / p95 / most ${inMs(found.map(({ ms }) => ms))}`); // biome-ignore format: one row
}

/** Fresh orders as instances of the open sets: every part may be turned. */
const asInstances = (orders: readonly FreshOrder[]): YieldInstance[] =>
  orders.map(({ name, paper, parts }) => ({
    name,
    kind: 'cutting-stock',
    rotation: true,
    sheet: { w: paper.across, h: paper.up },
    items: parts.map(({ across, up, count }) => ({ w: across, h: up, demand: count })),
  }));

/** Sheets and time of what one would pick instead, each held against ours on the orders it answers. */
function sideBySide(name: string, instances: readonly YieldInstance[]): void {
  const ours = instances.map((instance) =>
    clocked(() => solveSheets(instance, APP_SECONDS, now).plan.sheets),
  );
  say(name);
  const others = [
    ['first-fit shelves', shelved],
    ['rectangle packer', packed],
    ['model of all patterns', modelled],
  ] as const;
  for (const [other, solve] of others) {
    const found = instances.map((instance) => clocked(() => solve(instance)));
    const sum = (of: (at: number) => number): number => found.reduce((all, { answer }, at) => all + (answer === null ? 0 : of(at)), 0); // biome-ignore format: one row
    const sheets = sum((at) => found[at]!.answer!) / sum((at) => ours[at]!.answer);
    const time = sum((at) => found[at]!.ms) / sum((at) => ours[at]!.ms);
    const beaten = found.filter(({ answer }, at) => answer !== null && answer < ours[at]!.answer).length;
    say(`  ${other.padEnd(32)}${sheets.toFixed(3)} of our sheets, ${time.toFixed(2)} of our time, on the ${found.filter(({ answer }) => answer !== null).length}/${instances.length} it answers; fewer sheets than ours ${beaten}`); // biome-ignore format: one row
  }
}

function worthRow(name: string, instances: readonly OpenInstance[]): void {
  const found = instances.map(({ instance, optimum }) => ({
    optimum,
    area: instance.sheet.w * instance.sheet.h,
    ...clocked(() => solveBest(instance, SECONDS, now)),
  }));
  const count = (holds: (row: (typeof found)[number]) => boolean): string => `${found.filter(holds).length}/${found.length}`; // biome-ignore format: one row
  say(name);
  say(`  ours reaches the published worth ${count(({ answer, optimum }) => answer.worth === optimum)}, above it ${count(({ answer, optimum }) => answer.worth > optimum)}, proven ${count(({ answer }) => answer.worth === answer.bound)}; ms median / p95 / most ${inMs(found.map(({ ms }) => ms))}`); // biome-ignore format: one row
}

say(
  `${cpus().length} cores, load ${loadavg()[0]?.toFixed(1) ?? '?'}, Node ${process.version}; up to ${SECONDS} s of the processor each`,
);
const asked = process.argv.slice(2);
const isAsked = (name: string): boolean => asked.length === 0 || asked.some((word) => name.startsWith(word));
const typedIn = PUBLISHED_CUTS.filter(({ instance }) => instance.kind === 'cutting-stock');
if (isAsked('typed in')) sheetRow('typed in, sheets', typedIn);
if (isAsked('typed in')) worthRow('typed in, worth', PUBLISHED_CUTS.filter(({ instance }) => instance.kind.endsWith('knapsack'))); // biome-ignore format: one row
const fresh: readonly (readonly [string, readonly FreshOrder[]])[] = [
  ['fresh orders, up to 5 types', freshOrders(101, 200, [1, 5], 300)],
  ['fresh orders, 6 to 10 types', freshOrders(102, 200, [6, 10], 300)],
  ['fresh orders, sheets longer than the trimmer', freshOrders(103, 100, [1, 5], 120, { longSheets: true })],
  ['fresh orders, samplers of 16 to 44 types', freshOrders(104, 40, [16, 44], 3)],
];
for (const [name, orders] of fresh.filter(([name]) => isAsked(name))) freshRow(name, orders);
const many = 'fresh orders, 40 types on 13 × 19, 10 s';
if (isAsked(many)) freshRow(many, freshOrders(106, 6, [40, 40], 40, { sheet: SUPER_B }), SECONDS);
const beside = 'side by side, 100 fresh orders of up to 10 types';
if (isAsked(beside)) sideBySide(beside, asInstances(freshOrders(105, 100, [1, 10], 120)));
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
