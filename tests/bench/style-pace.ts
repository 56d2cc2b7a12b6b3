/**
 * How long each style takes to lay, fold, check and card, warm, at 200 sizes: `node --import tsx tests/bench/style-pace.ts [tries] [style IDs]`.
 * What is counted is processor time, so that other programs add nothing; of each size the least of its tries. Wanted: 2 ms in the median, 20 ms
 * at worst.
 */
import { boxCards } from '../../src/core/bench';
import { checkBox } from '../../src/core/checks';
import { layNet } from '../../src/core/net';
import { legalBoxes } from '../../src/core/proof/legal-boxes';
import { STYLES } from '../../src/core/styles';
import { swayFrom } from '../../src/core/yield/stock/sway';
import { trimmer } from '../core/bench/bench-tools';

const SIZES = 200;
const [MEDIAN_MS, WORST_MS] = [2, 20];

const [tries = '3', ...ids] = process.argv.slice(2);
const stages = ['lay', 'fold and check', 'card'] as const;

/** Processor time so far, in milliseconds. */
function now(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Milliseconds of each stage. */
function timesOf(style: (typeof STYLES)[number], asked: ReturnType<typeof legalBoxes>[number]): number[] {
  const at = [now()];
  const box = layNet(style, asked);
  at.push(now());
  checkBox(style, box);
  at.push(now());
  boxCards(box, trimmer);
  at.push(now());
  return at.slice(1).map((then, stage) => then - (at[stage] ?? 0));
}

const inOrder = (all: readonly number[]) => all.toSorted((one, other) => one - other);
const middle = (all: readonly number[]) => inOrder(all)[Math.floor(all.length / 2)] ?? Number.NaN;
const ms = (value: number) => value.toFixed(2).padStart(8);

const late: string[] = [];
console.log(
  `${'style'.padEnd(18)}${['median', 'worst', ...stages].map((head) => head.padStart(16)).join('')}`,
);
for (const style of STYLES) {
  if (ids.length > 0 && !ids.includes(style.id)) continue;
  const sizes = legalBoxes(style, SIZES, swayFrom(1));
  const least = sizes.map(() => stages.map(() => Number.POSITIVE_INFINITY));
  for (let turn = 0; turn < Number(tries); turn++)
    sizes.forEach((asked, size) => {
      const best = least[size];
      timesOf(style, asked).forEach((time, stage) => {
        if (best) best[stage] = Math.min(best[stage] ?? time, time);
      });
    });
  const whole = least.map((each) => each.reduce((sum, time) => sum + time, 0));
  const [median, worst] = [middle(whole), inOrder(whole).at(-1) ?? Number.NaN];
  const parts = stages.map((_, stage) => middle(least.map((each) => each[stage] ?? 0)));
  if (median > MEDIAN_MS || worst > WORST_MS) late.push(style.id);
  console.log(
    `${style.id.padEnd(18)}${[median, worst, ...parts].map((value) => ms(value).padStart(16)).join('')}`,
  );
}
console.log(late.length === 0 ? 'All keep 2 ms and 20 ms.' : `Over 2 ms or 20 ms: ${late.join(', ')}.`);
