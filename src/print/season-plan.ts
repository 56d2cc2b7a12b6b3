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
export function printSeason(input: SeasonInput): PrintDocument {
  const { season, paper, locale, say, stamp } = input;
  const title = say('Season');
  const { widthMm } = columnOf(paper);
  const words = (text: string, sizeMm: number) => textBlock(text, { widthMm, sizeMm, bold: true });
  const day = (date: string | null) => (date === null ? say('No date') : longDate(date, locale));
  const blocks: Block[] = [words(title, TYPE_MM.title)];
  for (const { head, columns, rows } of tablesOf(season, say, day))
    blocks.push(
      space(6),
      keepNext(words(say(head), TYPE_MM.heading)),
      space(2),
      ...tableBlocks(
        columns.map(([text, share], at) => ({ head: say(text), widthMm: widthMm * share, bold: at === 0 })),
        rows,
      ),
    );
  return {
    name: 'season',
    title,
    pages: pagesOf(flowColumns(blocks, paper), paper, { title, code: stamp.code }),
    stamp,
  };
}

interface SeasonTable {
  readonly head: string;
  /** Each column with its share of the width. */
  readonly columns: readonly (readonly [string, number])[];
  readonly rows: readonly string[][];
}

function tablesOf(
  season: SeasonPlan,
  say: (template: string) => string,
  day: (date: string | null) => string,
): readonly SeasonTable[] {
  const nameOf = new Map(season.events.map(({ eventId, name }) => [eventId, name]));
  const named = (id: string | null) => (id === null ? '' : (nameOf.get(id) ?? id));
  const sittings = season.events
    .flatMap(({ eventId, timetable }) =>
      (timetable?.sittings ?? []).map(({ date, minutes }) => ({ date, minutes, eventId })),
    )
    .sort((a, b) => (a.date < b.date ? -1 : 1));
  const calendar: SeasonTable = {
    head: 'Calendar',
    columns: [
      ['Day', 0.4],
      ['Event', 0.35],
      ['Working time', 0.25],
    ],
    rows: byDay(sittings).map(({ date, eventId, minutes }) => [day(date), named(eventId), clock(minutes)]),
  };
  return [
    {
      head: 'Events',
      columns: [
        ['Event', 0.4],
        ['Date', 0.35],
        ['Favors', 0.25],
      ],
      rows: season.events.map(({ name, date, ordered, making }) => [
        name,
        day(date),
        `${ordered} + ${making - ordered}`,
      ]),
    },
    toBuy(season, say, named),
    {
      head: 'Who gets what you have',
      columns: [
        ['What', 0.4],
        ['Event', 0.3],
        ['From stock', 0.15],
        ['To buy', 0.15],
      ],
      rows: season.rows
        .filter(({ onHand }) => onHand > 0)
        .flatMap(({ name, promised }) =>
          promised.map(({ eventId, fromStock, toBuy }) => [name, named(eventId), `${fromStock}`, `${toBuy}`]),
        ),
    },
    ...(sittings.length === 0 ? [] : [calendar]),
  ];
}

const toBuy = (
  season: SeasonPlan,
  say: (template: string) => string,
  named: (id: string | null) => string,
): SeasonTable => ({
  head: 'One shopping list',
  columns: [
    ['What', 0.4],
    ['To buy', 0.13],
    ['Needed', 0.13],
    ['On hand', 0.13],
    ['First needed for', 0.21],
  ],
  rows: season.rows
    .filter(({ toBuy }) => toBuy > 0)
    .map(({ name, unit, toBuy, need, onHand, firstFor }) => [
      `${name} (${say(unit)})`,
      `${toBuy}`,
      `${need}`,
      `${onHand}`,
      named(firstFor),
    ]),
});

const clock = (minutes: number): string => `${Math.floor(minutes / 60)} h ${minutes % 60} min`;

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
