import type { Pack } from '../../src/core/plan/buying/packs';
import type { MixFormat, MixLot, MixOrder } from '../../src/core/plan/mix/types';
import { ticks } from '../../src/core/units/ticks';
import { swayFrom } from '../../src/core/yield/stock/sway';
import { paperOf, partOf, toolOf } from '../core/yield/sheets-at-hand';

const EIGHTH = 1016; // Ticks.

/** Ten papers in eighths of an inch with made-up prices in cents: single sheets, packs, packs with an offer. */
const PAPERS: readonly (readonly [w: number, h: number, packs: readonly Pack[], onHand: number])[] = [
  [68, 88, [{ units: 25, priceMinor: 649 }], 6],
  [96, 96, [{ units: 1, priceMinor: 89 }], 0],
  [88, 136, [{ units: 20, priceMinor: 1299 }, { units: 5, priceMinor: 399 }], 3],
  [96, 144, [{ units: 10, priceMinor: 949 }], 0],
  [68, 88, [{ units: 50, priceMinor: 1099 }], 0],
  [96, 96, [{ units: 20, priceMinor: 1199, offer: { buy: 2, free: 1 } }], 4],
  [104, 152, [{ units: 5, priceMinor: 749 }], 0],
  [64, 80, [{ units: 1, priceMinor: 45 }, { units: 30, priceMinor: 999 }], 0],
  [160, 208, [{ units: 1, priceMinor: 329 }], 0],
  [48, 96, [{ units: 10, priceMinor: 449 }], 8],
]; // biome-ignore format: one row a paper

/** Orders of up to five kinds of box over ten papers, an offcut or two on hand; the same seed gives the same orders. */
export function mixOrders(seed: number, count: number, most = 120): MixOrder[] {
  const sway = swayFrom(seed);
  const whole = (from: number, to: number): number => from + Math.floor(sway() * (to - from + 1));
  const length = (eighths: number) => ticks(eighths * EIGHTH);
  return Array.from({ length: count }, () => {
    const formats: MixFormat[] = PAPERS.map(([w, h, packs, onHand], at) => ({
      card: `p${at}`,
      sheet: paperOf(length(w), length(h), { id: `p${at}`, onHand: sway() < 0.5 ? onHand : 0 }),
      packs,
    }));
    for (let offcut = whole(0, 2); offcut > 0; offcut--) {
      const card = `p${whole(0, 9)}`;
      formats.push({ card, sheet: paperOf(length(whole(24, 40)), length(whole(24, 60)), { id: `${card}-offcut${offcut}`, onHand: whole(1, 5) }), packs: [] }); // biome-ignore format: one row
    }
    const cards = PAPERS.map((_, at) => `p${at}`);
    const lots = Array.from({ length: whole(1, 5) }, (_, at): MixLot => {
      const pair = sway() < 0.25;
      const part = (id: string, shrink: number) =>
        partOf(id, length(Math.ceil(whole(16, 52) * shrink)), length(Math.ceil(whole(20, 60) * shrink)), 1);
      const parts = pair ? [part(`${at}a`, 0.9), part(`${at}b`, 0.8)] : [part(`${at}a`, 1)];
      const fixed = at > 0 && sway() < 0.15;
      return { id: `lot${at}`, boxes: whole(8, most), parts, cards: fixed ? [cards[whole(0, 3) * 2 + 1]!] : cards }; // biome-ignore format: one row
    });
    return { lots, formats, tool: toolOf() };
  });
}

/** Orders so small that every way to share them out can be tried: one or two kinds of box, a few of each, two or three papers. */
export function tinyOrders(seed: number, count: number): MixOrder[] {
  const sway = swayFrom(seed);
  const whole = (from: number, to: number): number => from + Math.floor(sway() * (to - from + 1));
  const length = (eighths: number) => ticks(eighths * EIGHTH);
  return Array.from({ length: count }, () => {
    const formats = Array.from({ length: whole(2, 3) }, (_, at): MixFormat => {
      const packs: Pack[] = [{ units: whole(1, 4), priceMinor: whole(20, 400) }];
      if (sway() < 0.3) packs.push({ units: whole(5, 8), priceMinor: whole(200, 600), ...(sway() < 0.5 ? { offer: { buy: 1, free: 1 } } : {}) }); // biome-ignore format: one row
      const onHand = sway() < 0.4 ? whole(0, 3) : 0;
      return { card: `p${at}`, sheet: paperOf(length(whole(40, 100)), length(whole(40, 100)), { id: `p${at}`, onHand }), packs }; // biome-ignore format: one row
    });
    const cards = formats.map(({ card }) => card);
    const lots = Array.from({ length: whole(1, 2) }, (_, at): MixLot => {
      const part = (id: string) => partOf(id, length(whole(14, 40)), length(whole(14, 40)), 1);
      const parts = sway() < 0.25 ? [part(`${at}a`), part(`${at}b`)] : [part(`${at}a`)];
      return { id: `lot${at}`, boxes: whole(1, 7), parts, cards: sway() < 0.2 ? cards.slice(0, 1) : cards };
    });
    return { lots, formats, tool: toolOf() };
  });
}
