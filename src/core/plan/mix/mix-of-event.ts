import type { EventLine, FavorEvent, Paper } from '../../rows';
import { benchToolOf, cutMarkOf, cuttingToolOf, sheetOfPaper } from '../buying/stock-rows';
import { boxesOfEvent } from '../event/event-boxes';
import { type PartOnPaper, partsOfBoxes } from '../event/event-parts';
import type { EventRows } from '../event/plan-event';
import { cheapestMix } from './cheapest-mix';
import type { MixOptions } from './mix-search';
import type { MixFormat, MixLot, MixOrder, MixPlan } from './types';

/** From how many papers a line may come at most, whatever is allowed: more are a burden at the table. source: our own */
const PER_LINE = 3;

/** How many papers the lines with a choice come from, all told. */
export type MixWay = 'one' | 'two' | 'any';
export const MIX_WAYS: readonly MixWay[] = ['one', 'two', 'any'];

/** An event cut in one of these ways. Null plan: it cannot be cut so. `mixOf`: what each line would take from where. */
export interface EventMix {
  readonly way: MixWay;
  readonly plan: MixPlan | null;
  readonly mixOf: Readonly<Record<string, NonNullable<EventLine['mix']>>>;
}

/** Papers that a line may be cut from: its own first, then the others that serve as well. */
export const papersOfLine = (own: string | null, { anyOf = [] }: Pick<EventLine, 'anyOf'>): string[] => [
  ...new Set([...(own === null ? [] : [own]), ...anyOf.map(({ paperId }) => paperId)]),
];

/** The event's boxes as lots, and its papers with their offcuts as formats. Null: there is nothing to cut, or a part has no paper. */
function orderOfEvent({ recipes, papers, tools }: EventRows, event: FavorEvent): MixOrder | null {
  const tool = tools.find(({ id }) => id === event.toolId) ?? tools[0];
  const { boxes } = boxesOfEvent(event, recipes, cutMarkOf(benchToolOf(tool)));
  const lots = boxes.flatMap(({ line, paperId: own, making }): MixLot[] => {
    const cards = papersOfLine(own, line).filter((id) => papers.some((paper) => paper.id === id));
    // Where one of the papers is printed one way, the parts lie so on all of them.
    const oneWay = papers.some((paper) => paper.oneWay && cards.includes(paper.id));
    const parts = partsOfBoxes(
      boxes.filter((box) => box.line === line),
      oneWay ? papers.map((paper) => (paper.id === own ? { ...paper, oneWay } : paper)) : papers,
    );
    const its = ({ paperId }: PartOnPaper) => paperId === own;
    const piece = ({ part: { perBox, ...part } }: PartOnPaper) => ({ ...part, count: perBox });
    const apart = parts.filter((part) => !its(part)).map((part) => ({ id: part.part.id, boxes: making, parts: [piece(part)], cards: [part.paperId ?? ''] })); // biome-ignore format: one row
    return [{ id: line.id, boxes: making, parts: parts.filter(its).map(piece), cards }, ...apart];
  });
  const wanted = new Set(lots.flatMap(({ cards }) => cards));
  const formats = papers.filter((paper) => wanted.has(cardOf(paper))).map(formatOf);
  const whole = lots.every(({ cards }) => cards.length > 0 && cards.every((card) => formats.some((format) => format.card === card))); // biome-ignore format: one row
  return lots.length > 0 && whole ? { lots, formats, tool: cuttingToolOf(tool) } : null;
}

const cardOf = ({ id, offcutOfId }: Paper): string => offcutOfId ?? id;

const formatOf = (paper: Paper): MixFormat => ({
  card: cardOf(paper),
  sheet: sheetOfPaper(paper),
  packs: paper.offcutOfId === undefined ? paper.packs.map(({ sheets: units, priceMinor, offer }) => ({ units, priceMinor, offer })) : [], // biome-ignore format: one row
});

/** The event from one paper, from two, from any mix: each with its price and the least that any other of its kind costs. */
export function* mixEvent(
  rows: EventRows,
  event: FavorEvent,
  options: MixOptions,
  onBetter: (mix: EventMix) => void = () => undefined,
): Generator<EventMix> {
  const order = orderOfEvent(rows, event);
  if (order === null) return;
  const choice = new Set(order.lots.flatMap(({ cards }) => (cards.length > 1 ? cards : [])));
  const ways = MIX_WAYS.filter((way) => way !== 'two' || choice.size > 2);
  let known: MixPlan | null = null;
  for (const way of ways) {
    const mostCards = way === 'any' ? null : way === 'one' ? 1 : 2;
    const mix = (plan: MixPlan | null): EventMix => ({ way, plan, mixOf: plan === null ? {} : mixOf(event, plan) }); // biome-ignore format: one row
    const onProgress = (plan: MixPlan) => onBetter(mix(plan));
    const plan: MixPlan | null = cheapestMix(order, {
      ...options,
      mostCards,
      perLot: PER_LINE,
      known,
      onProgress,
    });
    known = plan ?? known;
    yield mix(plan);
  }
}

/** For every line that is cut at all, its pieces by paper and offcut. */
function mixOf({ lines }: FavorEvent, { cuts }: MixPlan): EventMix['mixOf'] {
  return Object.fromEntries(
    lines.flatMap(({ id }) => {
      const its = cuts.flatMap(({ format, parts }) =>
        parts
          .filter((part) => part.id.startsWith(`${id}.`))
          .map((part) => ({ piece: part.id.slice(id.length + 1), paperId: format, count: part.count })),
      );
      return its.length > 0 ? [[id, its]] : [];
    }),
  );
}
