import { MixProgram, partsOn } from '../../src/core/plan/mix/mix-program';
import { fillPurchase } from '../../src/core/plan/mix/fill-purchase';
import { countOnSheet } from '../../src/core/yield';
import { mixOrders } from './mix-orders';
const order0 = mixOrders(301, 10)[2]!;
const lots = order0.lots.map(l=>({...l, cards:l.cards.filter(c=>l.parts.every(p=>order0.formats.some(f=>f.card===c&&(f.packs.length>0||f.sheet.onHand>0)&&countOnSheet(p,f.sheet,order0.tool).count>0)))}));
const order = {...order0, lots};
for (const l of lots) console.log(l.id, l.boxes, l.parts.map(p=>[p.across/1016,p.up/1016]).join(' '), l.cards.map(c=>c+':'+l.parts.map(p=>order.formats.filter(f=>f.card===c).map(f=>countOnSheet(p,f.sheet,order.tool).count))).join(' '));
console.log(order.formats.map(f=>f.sheet.id+' '+f.sheet.onHand+' '+JSON.stringify(f.packs)).join('\n'));
const prog = new MixProgram(order);
const sheets = order.formats.map(f=>f.sheet.onHand+(f.sheet.id==='p4'?50:0));
const fr = prog.solve(order, sheets.map(free=>({free, price:null})), ()=>1, ()=>false);
console.log('short', fr.short, fr.uses.map(u=>order.formats[u.pattern.format]!.sheet.id+' '+[...u.pattern.counts].map(String).join('+')+' x'+u.sheets.toFixed(2)).join('\n'));
for (let i=0;i<3;i++) console.log(fillPurchase(order, prog, fr, sheets, {isOver:()=>false, now:()=>performance.now()}, Math.random)?.length);
for (const [p1,p7] of [[0,1],[1,0],[1,1],[2,0],[2,1],[3,0]]) {
  const s2 = order.formats.map((f,i)=>sheets[i]!+(f.sheet.id==='p1'?p1!:0)+(f.sheet.id==='p7'?p7!:0));
  const fr = prog.solve(order, s2.map(free=>({free, price:null})), ()=>1, ()=>false);
  console.log(p1,p7,'short',fr.short,[...fr.shares].filter(x=>x[1]>0).join(' | '));
  for (let i=0;i<6;i++) console.log(' ', fillPurchase(order, prog, fr, s2, {isOver:()=>false, now:()=>performance.now()}, Math.random)?.length);
}
