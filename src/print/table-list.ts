import { areaMark } from '../core/draw/strokes/marks';
import { type GuestTable, tablesOf } from '../core/plan';
import { boxRing } from '../core/plane';
import type { FavorEvent } from '../core/rows';
import { fileStem } from '../core/rows/text';
import { type Block, keepNext, space, textBlock } from './block';
import { longDate } from './long-date';
import { columnOf, flowColumns, pagesOf } from './page-flow';
import { type PaperName, type PrintDocument, type PrintStamp, TYPE_MM } from './print-document';
import { tableBlocks } from './table-block';

export interface TableListInput {
  readonly event: Pick<FavorEvent, 'name' | 'date' | 'lines' | 'guests'>;
  /** What each line's favor is called, by the id of the line. */
  readonly names: ReadonlyMap<string, string>;
  readonly paper: PaperName;
  readonly stamp: PrintStamp;
}

/** A table as people say it: “Table 3” for 3, any other name as it is. */
export const tableWords = (table: string): string =>
  table === '' ? 'No table' : /^\d+[a-z]?$/i.test(table) ? `Table ${table}` : table;

/** What goes to which table: how many of each favor, then every guest with a box to tick, their favor and what they need. */
export function printTableList({ event, names, paper, stamp }: TableListInput): PrintDocument {
  const title = `${event.name}: by table`;
  const { widthMm } = columnOf(paper);
  const nameOf = (lineId: string | null): string => (lineId === null ? '' : (names.get(lineId) ?? lineId));
  const words = (text: string, sizeMm: number, bold = false) => textBlock(text, { widthMm, sizeMm, bold });
  const tables = tablesOf(event);
  const guests = event.guests?.length ?? 0;
  const when = event.date ? ` For ${longDate(event.date)}.` : '';
  const blocks: Block[] = [
    words(event.name, TYPE_MM.title, true),
    space(2.5),
    words(
      `Favors: ${guests}. Tables: ${tables.length}.${when} Tick each favor as you pack it.`,
      TYPE_MM.lead,
    ),
    space(3),
    words(
      'What a guest needs is what they asked for. Only the label of the food says what is in it.',
      TYPE_MM.small,
    ),
    ...tables.flatMap((table) => blocksOfTable(table, nameOf, widthMm)),
  ];
  return {
    name: `${fileStem(event.name, 'event')}-by-table`,
    title,
    pages: pagesOf(flowColumns(blocks, paper), paper, { title, code: stamp.code }),
    stamp,
  };
}

function blocksOfTable(
  { table, guests, counts }: GuestTable,
  nameOf: (lineId: string | null) => string,
  widthMm: number,
): readonly Block[] {
  const words = (text: string, sizeMm: number, bold = false) =>
    keepNext(textBlock(text, { widthMm, sizeMm, bold }));
  const what = counts.map(({ lineId, count }) => `${count} × ${nameOf(lineId)}`).join(', ');
  return [
    space(6),
    words(`${tableWords(table)}: ${guests.length}`, TYPE_MM.heading, true),
    space(1.5),
    words(what, TYPE_MM.body),
    space(1.5),
    ...withTickBoxes(
      tableBlocks(
        [
          { head: 'Packed', widthMm: widthMm * 0.1 },
          { head: 'Guest', widthMm: widthMm * 0.34, bold: true },
          { head: 'Favor', widthMm: widthMm * 0.26 },
          { head: 'Needs', widthMm: widthMm * 0.3 },
        ],
        guests.map(({ guest, lineId }) => ['', guest.name, nameOf(lineId), guest.needs]),
      ),
    ),
  ];
}

const BOX = boxRing({ left: 0, right: 4, bottom: -5.3, top: -1.3 });

/** Every row of a table but its head with a box to tick in its first column. */
const withTickBoxes = (rows: readonly Block[]): readonly Block[] =>
  rows.map((row, at) => (at === 0 ? row : { ...row, marks: [areaMark('edge', BOX), ...row.marks] }));
