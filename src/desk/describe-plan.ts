import {
  type CarryPlan,
  demandOf,
  type EventCost,
  type EventPlan,
  type KitList,
  type PlannedPaper,
  printMoney,
  type ShoppingRow,
  sayReason,
} from '../core/plan';
import { type Ticks, ticks, toMm } from '../core/units';
import type { Layout } from '../core/yield';
import { factsMm } from './describe-finding';

const sizeMm = ({ across, up }: { readonly across: Ticks; readonly up: Ticks }) => ({
  acrossMm: toMm(across),
  upMm: toMm(up),
});
const placeMm = (box: {
  readonly x: Ticks;
  readonly y: Ticks;
  readonly across: Ticks;
  readonly up: Ticks;
}) => ({
  xMm: toMm(box.x),
  yMm: toMm(box.y),
  ...sizeMm(box),
});

/** One way of cutting a sheet, in the sheet's own frame: x across, y up from its lower left corner. */
export const layoutMm = ({ sheets, parts, offcuts }: Layout) => ({
  sheets,
  parts: parts.map((placed) => ({ part: placed.part, turned: placed.turned, ...placeMm(placed) })),
  offcuts: offcuts.map(placeMm),
});

const paperMm = ({ paperId, name, sheet, parts, demand, plan, spoiled }: PlannedPaper) => ({
  paper: paperId,
  name,
  sheet: sizeMm(sheet),
  sheets: plan.sheets,
  spoiled,
  lowerBound: plan.lowerBound,
  proven: plan.proven,
  proof: plan.proof,
  unplaced: plan.unplaced,
  parts: parts.map(({ across, up, ...part }) => ({
    ...part,
    /** The part of the same size that the layouts name in its place. */
    cutAs: demand[demandOf({ ...part, across, up }, demand)]?.id,
    ...sizeMm({ across, up }),
  })),
  layouts: plan.layouts.map(layoutMm),
});

function shoppingRow({ why, ...row }: ShoppingRow, currency: string) {
  const wording = {
    length: (length: Ticks) => `${toMm(length)} mm`,
    money: (minor: number) => printMoney(minor, currency, 'en'),
  };
  return { ...row, why: why.map((reason) => sayReason(reason, wording)) };
}

const kitMm = ({ cards, lengths, ...kit }: KitList) => ({
  ...kit,
  cards: cards.map(({ name, paper, count, ...size }) => ({ name, paper, count, ...sizeMm(size) })),
  lengths: lengths.map(({ name, length }) => ({ name, lengthMm: toMm(length) })),
});

const carryMm = ({ lines, crates, fillOn }: CarryPlan) => ({
  crates,
  fillOn,
  lines: lines.map(({ lineId, layer, ...line }) => ({
    line: lineId,
    ...line,
    layer: layer.map(({ x, y, across, up }) =>
      placeMm({ x: ticks(x), y: ticks(y), across: ticks(across), up: ticks(up) }),
    ),
  })),
});

/** The till's own sum stands under `ways`. */
const withoutTill = ({ till: _, ...cost }: EventCost) => cost;

/** What an event comes to, as the desk prints it: millimeters, minutes, and money in whole minor units. */
export const describePlan = (plan: EventPlan) => ({
  event: plan.eventId,
  name: plan.name,
  date: plan.date,
  ordered: plan.ordered,
  making: plan.making,
  lines: plan.lines.map(({ lineId, recipeId, name, styleId, paperId, ordered, spares, making }) => ({
    line: lineId,
    recipe: recipeId,
    name,
    style: styleId,
    paper: paperId,
    ordered,
    spares,
    making,
  })),
  papers: plan.papers.map(paperMm),
  rolls: plan.rolls.map(({ perBox, total, rollLength, rolls, ...roll }) => ({
    ...roll,
    perBoxMm: toMm(perBox),
    totalMm: toMm(total),
    rollMm: toMm(rollLength),
    rolls: rolls.rolls,
  })),
  pieces: plan.pieces,
  glue: plan.glue,
  carry: plan.carry && carryMm(plan.carry),
  kit: plan.kit && kitMm(plan.kit),
  shopping: plan.shopping.map((row) => shoppingRow(row, plan.cost.currency)),
  ways: plan.ways.map(({ purchases: _, ...way }) => way),
  cost: withoutTill(plan.cost),
  asking: plan.asking,
  minutes: {
    total: Math.ceil(plan.hours.totalSeconds / 60),
    makers: plan.hours.makers,
    elapsed: Math.ceil(plan.hours.elapsedSeconds / 60),
    learningPercent: plan.hours.learningPercent,
    allowancePercent: plan.hours.allowancePercent,
    firstBoxes: plan.hours.firstBoxes,
    stages: plan.hours.stages.map(({ act, label, times, seconds }) => ({
      act,
      label,
      times,
      minutes: Math.ceil(seconds / 60),
    })),
  },
  timetable: plan.timetable,
  findings: plan.findings.map(({ facts, ...finding }) => ({
    ...finding,
    factsMm: factsMm(facts),
  })),
  cautions: plan.cautions.map(({ says }) => says),
});
