import loadHighs from 'highs';
import { MixProgram } from '../../src/core/plan/mix/mix-program';
import { PurchaseSearch } from '../../src/core/plan/mix/least-purchase';
import { cheapestMix } from '../../src/core/plan/mix/cheapest-mix';
import { countOnSheet } from '../../src/core/yield';
import { mixOrders } from './mix-orders';
const order = mixOrders(301, 20)[Number(process.argv[2])]!;
for (const l of order.lots) console.log(l.id, l.boxes, l.parts.map(p=>[p.across/1016,p.up/1016]).join(' '), l.cards.map(c=>c+':'+l.parts.map(p=>order.formats.filter(f=>f.card===c).map(f=>countOnSheet(p,f.sheet,order.tool).count))).join(' '));
console.log(order.formats.map(f=>f.sheet.id+' '+f.sheet.onHand+' '+JSON.stringify(f.packs)).join('\n'));
const highs = await loadHighs();
const solveWhole = (model: string, time_limit: number) => {
  const s = highs.solve(model, { mip_rel_gap: 0, mip_abs_gap: 0.5, time_limit });
  return Object.values(s.Columns).every((c) => 'Primal' in c && Number.isFinite(c.Primal)) ? new Map(Object.entries(s.Columns).map(([n, c]) => [n, (c as any).Primal as number])) : null;
};
const plan = cheapestMix(order, { seconds: 5, solveWhole, now: () => performance.now() })!;
console.log(plan.priceMinor, plan.boundMinor, plan.cuts.map(c=>[c.format,c.plan.sheets,c.parts.map(p=>p.id+':'+p.count),c.purchase.packs.map(p=>p.count+'x'+p.pack.units+'@'+p.pack.priceMinor)].join(' ')));
const s = new PurchaseSearch(order, plan.priceMinor, 200); for (const r of plan.proof.choices[0]!.rows) s.addRow(r);
const ex: number[][] = [];
for (let i=0;i<12;i++) { const f = s.cheapest(plan.priceMinor, ex); if (!f.purchase) break; ex.push([...f.purchase.sheets]); const prog = new MixProgram({...order}); console.log(f.purchase.priceMinor, f.purchase.sheets.join()); }
