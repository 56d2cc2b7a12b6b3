import type { SeasonPlan } from '../core/plan';
import { type Block, keepNext, space, textBlock } from './block';
import { longDate } from './long-date';
import { columnOf, flowColumns, pagesOf } from './page-flow';
import { type PaperName, type PrintDocument, type PrintStamp, TYPE_MM } from './print-document';
import { tableBlocks } from './table-block';

export interface SeasonInput {
  readonly season: SeasonPlan;
  readonly paper: PaperName;
  /** For dates; that of the United States if left out. */
  readonly locale?: string;
  readonly say: (template: string) => string;
  readonly stamp: PrintStamp;
}

/** A season on paper: its events, one shopping list with boxes to tick, who gets what there is, and the working days. */
export function printSeason({ season, paper, locale, say, stamp }: SeasonInput): PrintDocument {
  const title = say('Season');
  const { widthMm } = columnOf(paper);
  const words = (text: string, sizeMm: number, bold = false) => textBlock(text, { widthMm, sizeMm, bold });
  const head = (text: string): Block[] => [
    space(6),
    keepNext(words(say(text), TYPE_MM.heading, true)),
    space(2),
  ];
  const day = (date: string | null) => (date === null ? say('No date') : longDate(date, locale));
  const nameOf = new Map(season.events.map(({ eventId, name }) => [eventId, name]));
  const named = (id: string | null) => (id === null ? '' : (nameOf.get(id) ?? id));
  const table = (columns: readonly (readonly [string, number])[], rows: readonly string[][]) =>
    tableBlocks(
      columns.map(([text, share], at) => ({ head: say(text), widthMm: widthMm * share, bold: at === 0 })),
      rows,
    );
  const clock = (minutes: number) => `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
  const sittings = season.events
    .flatMap(({ eventId, timetable }) =>
      (timetable?.sittings ?? []).map(({ date, minutes }) => ({ date, minutes, eventId })),
    )
    .sort((a, b) => (a.date < b.date ? -1 : 1));
  const blocks: Block[] = [
    words(title, TYPE_MM.title, true),
    ...head('Events'),
    ...table(
      [
        ['Event', 0.4],
        ['Date', 0.35],
        ['Favors', 0.25],
      ],
      season.events.map(({ name, date, ordered, making }) => [
        name,
        day(date),
        `${ordered} + ${making - ordered}`,
      ]),
    ),
    ...head('One shopping list'),
    ...table(
      [
        ['What', 0.4],
        ['To buy', 0.13],
        ['Needed', 0.13],
        ['On hand', 0.13],
        ['First needed for', 0.21],
      ],
      season.rows
        .filter(({ toBuy }) => toBuy > 0)
        .map(({ name, unit, toBuy, need, onHand, firstFor }) => [
          `${name} (${say(unit)})`,
          `${toBuy}`,
          `${need}`,
          `${onHand}`,
          named(firstFor),
        ]),
    ),
    ...head('Who gets what you have'),
    ...table(
      [
        ['What', 0.4],
        ['Event', 0.3],
        ['From stock', 0.15],
        ['To buy', 0.15],
      ],
      season.rows
        .filter(({ onHand }) => onHand > 0)
        .flatMap(({ name, promised }) =>
          promised.map(({ eventId, fromStock, toBuy }) => [name, named(eventId), `${fromStock}`, `${toBuy}`]),
        ),
    ),
    ...(sittings.length === 0
      ? []
      : [
          ...head('Calendar'),
          ...table(
            [
              ['Day', 0.4],
              ['Event', 0.35],
              ['Working time', 0.25],
            ],
            byDay(sittings).map(({ date, eventId, minutes }) => [day(date), named(eventId), clock(minutes)]),
          ),
        ]),
  ];
  return {
    name: 'season',
    title,
    pages: pagesOf(flowColumns(blocks, paper), paper, { title, code: stamp.code }),
    stamp,
  };
}

interface Sitting {
  readonly date: string;
  readonly eventId: string;
  readonly minutes: number;
}

/** The sittings of one event on one day as one row. */
function byDay(sittings: readonly Sitting[]): readonly Sitting[] {
  const days = new Map<string, Sitting>();
  for (const each of sittings) {
    const key = `${each.date} ${each.eventId}`;
    days.set(key, { ...each, minutes: each.minutes + (days.get(key)?.minutes ?? 0) });
  }
  return [...days.values()];
}
