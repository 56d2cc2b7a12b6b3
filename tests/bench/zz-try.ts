import { cheapestMix } from '/work/wt/mix/src/core/plan/mix/cheapest-mix';
import { checkMix } from '/work/wt/mix/src/core/plan/mix/check-mix';
import { mixOrders } from '/work/wt/mix/tests/bench/mix-orders';

import loadHighs from 'highs';
const highs = await loadHighs();
let calls = 0, spent = 0;
const solveWhole = (model: string, time_limit: number) => {
  const t = performance.now();
  const s = highs.solve(model, { mip_rel_gap: 0, mip_abs_gap: 0.5, time_limit });
  calls++; spent += performance.now() - t;
  return s.Status === 'Optimal' || s.Status === 'Time limit reached' ? (Object.values(s.Columns).every((c) => 'Primal' in c && Number.isFinite(c.Primal)) ? new Map(Object.entries(s.Columns).map(([n, c]) => [n, (c as any).Primal as number])) : null) : null;
};
const seconds = Number(process.argv[3] ?? 2);
let gaps = 0,
  n = 0,
  proven = 0;
const times: number[] = [];
for (const [i, order] of mixOrders(301, Number(process.argv[2] ?? 10)).entries()) {
  const t = performance.now();
  const plan = cheapestMix(order, { seconds, solveWhole, now: () => performance.now() });
  const ms = performance.now() - t;
  if (!plan) {
    console.log(i, 'null');
    continue;
  }
  const t2 = performance.now();
  const faults = checkMix(plan, order);
  const gap = (plan.priceMinor - plan.boundMinor) / plan.priceMinor;
  gaps += gap;
  n++;
  if (plan.proven) proven++;
  times.push(ms);
  console.log(
    i,
    order.lots.length,
    plan.priceMinor,
    plan.boundMinor,
    (gap * 100).toFixed(2),
    ms.toFixed(0),
    (performance.now() - t2).toFixed(0),
    plan.proof.choices[0]!.rows.length,
    plan.shares.map((s) => `${s.lot.slice(3)}${s.card}:${s.boxes}`).join(' '),
    faults.slice(0, 2).join('; '),
  );
}
console.log('mean gap %', (100 * gaps) / n, 'proven', proven, n, 'max ms', Math.max(...times));

console.log('highs', calls, spent);
