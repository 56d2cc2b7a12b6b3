import loadHighs from 'highs';
import { cheapestMix } from '../../src/core/plan/mix/cheapest-mix';
import { checkMix } from '../../src/core/plan/mix/check-mix';
import { leastByTrying } from '../core/plan/mix-by-trying';
import { tinyOrders } from './mix-orders';
const highs = await loadHighs();
const solveWhole = (model: string, time_limit: number) => {
  const s = highs.solve(model, { mip_rel_gap: 0, mip_abs_gap: 0.5, time_limit });
  return Object.values(s.Columns).every((c) => 'Primal' in c && Number.isFinite(c.Primal)) ? new Map(Object.entries(s.Columns).map(([n, c]) => [n, (c as any).Primal as number])) : null;
};
let same = 0, proven = 0, n = 0, bt = 0, mt = 0;
for (const [i, order] of tinyOrders(302, Number(process.argv[2])).entries()) {
  let t = performance.now();
  const least = leastByTrying(order);
  bt += performance.now() - t; t = performance.now();
  const plan = cheapestMix(order, process.argv[3] ? {} : { solveWhole });
  mt += performance.now() - t;
  n++;
  if ((plan?.priceMinor ?? Infinity) === least) same++; else console.log(i, least, plan?.priceMinor, plan?.boundMinor);
  if (plan?.proven) proven++;
  if (plan) { const f = checkMix(plan, order); if (f.length) console.log(i, f); if (plan.boundMinor > least) console.log('WRONG BOUND', i); }
}
console.log({ same, proven, n, bt, mt });
