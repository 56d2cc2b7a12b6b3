import type { EventMix, MixPlan } from '../core/plan';
import { layoutMm } from './describe-plan';

/** A way to cut an event from several papers: money in whole minor units, boxes by paper, sheets, layouts, what is left. */
export const describeMix = ({ way, plan, mixOf }: EventMix) => ({
  way,
  possible: plan !== null,
  ...(plan && {
    says: sentenceOf(plan, way),
    priceMinor: plan.priceMinor,
    boundMinor: plan.boundMinor,
    proven: plan.proven,
    boxes: plan.shares.map(({ lot: line, card: paper, boxes }) => ({ line, paper, boxes })),
    papers: plan.cuts.map(({ format: paper, plan: its, purchase, onHand }) => ({
      paper,
      sheets: its.sheets,
      onHand,
      bought: purchase.units,
      packs: purchase.packs.map(({ pack: { units, priceMinor }, count, free }) => ({ units, priceMinor, count, free })), // biome-ignore format: one row
      left: onHand + purchase.units - its.sheets,
      layouts: its.layouts.map(layoutMm),
    })),
    lines: mixOf,
    proof: plan.proof,
  }),
});

const sentenceOf = ({ proven, priceMinor, boundMinor }: MixPlan, way: EventMix['way']): string =>
  !proven
    ? `At most ${priceMinor - boundMinor} less could exist.`
    : way === 'any'
      ? 'No mix of these papers costs less.'
      : 'No other choice of so few papers costs less.';
