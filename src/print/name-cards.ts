import { CAP_HEIGHT, textWidthMm } from '../core/draw/strokes/letters';
import { areaMark, centredText, lineMark, moveMarks } from '../core/draw/strokes/marks';
import type { Mark } from '../core/draw/strokes/types';
import { boxRing } from '../core/plane';
import type { FavorEvent, Guest, NameCards } from '../core/rows';
import { fileStem } from '../core/rows/text';
import { fitName, NAME_LEADING } from './fit-name';
import { MARGIN_MM, type Page, type PrintDocument, type PrintStamp, TYPE_MM } from './print-document';
import { tableWords } from './table-list';

export interface NameCardsInput {
  readonly event: Pick<FavorEvent, 'name' | 'guests'>;
  readonly cards: NameCards;
  /** The sheet they are printed on, mm. */
  readonly sheet: { readonly widthMm: number; readonly heightMm: number };
  readonly stamp: PrintStamp;
}

/** Where the cards lie on a sheet: upper left corners in the order of reading, mm from the sheet's upper left corner, y down. */
export type CardPlaces = readonly (readonly [leftMm: number, topMm: number])[];

/** Kept free round the words of a card. source: our own */
const PAD_MM = 3;
/** A name is never smaller. source: as every other word on paper, `TYPE_MM` */
const LEAST_NAME_MM = TYPE_MM.small;
const BELOW_MM = TYPE_MM.small;

/** The places on one sheet: where the labels are, else as many as fit between the margins; none where not one fits. */
export function placesOn(cards: NameCards, sheet: NameCardsInput['sheet']): CardPlaces {
  const { labels, kind, widthMm } = cards;
  const heightMm = flatHeight(cards);
  if (kind === 'label' && labels) {
    const places = grid(labels.across, labels.down, (column, row) => [
      labels.leftMm + column * labels.stepAcrossMm,
      labels.topMm + row * labels.stepDownMm,
    ]);
    const isOn = places.every(
      ([left, top]) => left + widthMm <= sheet.widthMm + 1e-6 && top + heightMm <= sheet.heightMm + 1e-6,
    );
    const isApart =
      (labels.across === 1 || labels.stepAcrossMm >= widthMm) &&
      (labels.down === 1 || labels.stepDownMm >= heightMm);
    return isOn && isApart ? places : [];
  }
  const across = Math.floor((sheet.widthMm - 2 * MARGIN_MM + 1e-6) / widthMm);
  const down = Math.floor((sheet.heightMm - 2 * MARGIN_MM + 1e-6) / heightMm);
  if (across < 1 || down < 1) return [];
  return grid(across, down, (column, row) => [MARGIN_MM + column * widthMm, MARGIN_MM + row * heightMm]);
}

const grid = (
  across: number,
  down: number,
  at: (column: number, row: number) => readonly [number, number],
): CardPlaces =>
  Array.from({ length: across * down }, (_, place) => at(place % across, Math.floor(place / across)));

/** A place card is folded across its middle, so it is cut twice as high as it stands. */
const flatHeight = ({ kind, heightMm }: NameCards): number =>
  kind === 'place-card' ? 2 * heightMm : heightMm;

/** Guests whose names do not fit their card at the least type size; their cards stay blank. */
export const namesTooLong = (guests: readonly Guest[], cards: NameCards): readonly string[] => [
  ...new Set(guests.filter(({ name }) => !fitName(name, roomFor(cards))).map(({ name }) => name)),
];

const linesBelow = ({ showTable, below }: NameCards): number => (showTable ? 1 : 0) + (below === '' ? 0 : 1);

const roomFor = (cards: NameCards) => ({
  widthMm: cards.widthMm - 2 * PAD_MM,
  heightMm: cards.heightMm - 2 * PAD_MM - linesBelow(cards) * BELOW_MM * 1.6,
  mostMm: cards.nameMm,
  leastMm: LEAST_NAME_MM,
});

/** A card for every guest with their name at true size, on sheets of card or ready-cut labels. Throws where no card fits the sheet. */
export function printNameCards({ event, cards, sheet, stamp }: NameCardsInput): PrintDocument {
  const places = placesOn(cards, sheet);
  if (places.length === 0) throw new RangeError('no card fits the sheet');
  const guests = event.guests ?? [];
  const title = `${event.name}: names`;
  const pages = Array.from(
    { length: Math.max(1, Math.ceil(guests.length / places.length)) },
    (_, page): Page => {
      const here = guests.slice(page * places.length, (page + 1) * places.length);
      const marks = here.flatMap((guest, at) => {
        const [left, top] = places[at]!;
        return moveMarks(cardMarks(guest, cards), left, sheet.heightMm - top);
      });
      return { ...sheet, title, description: `${title}, page ${page + 1}.`, marks };
    },
  );
  return { name: `${fileStem(event.name, 'event')}-names`, title, pages, stamp };
}

/** One card, from its upper left corner, y up. */
function cardMarks(guest: Guest, cards: NameCards): readonly Mark[] {
  const { kind, widthMm, heightMm } = cards;
  const flat = flatHeight(cards);
  const edge = areaMark('edge', boxRing({ left: 0, right: widthMm, bottom: -flat, top: 0 }));
  const words = faceWords(guest, cards);
  if (kind === 'label') return words;
  if (kind === 'tag') return [edge, ...words];
  const fold = lineMark('score-mountain', [[0, -heightMm], [widthMm, -heightMm]]); // biome-ignore format: one stroke
  // The lower half is the front once it stands.
  return [edge, fold, ...moveMarks(words, 0, -heightMm)];
}

/** The words of one face, in its middle. */
function faceWords(guest: Guest, cards: NameCards): readonly Mark[] {
  const fitted = fitName(guest.name, roomFor(cards));
  const below = [
    ...(cards.showTable && guest.table !== '' ? [tableWords(guest.table)] : []),
    ...(cards.below === '' ? [] : [cards.below]),
  ];
  const nameMm = fitted ? (CAP_HEIGHT + (fitted.lines.length - 1) * NAME_LEADING) * fitted.sizeMm : 0;
  const belowMm = below.length * BELOW_MM * 1.6;
  const middle = cards.widthMm / 2;
  const top = -(cards.heightMm - nameMm - belowMm) / 2;
  const names = (fitted?.lines ?? []).map((line, at) =>
    centredText(
      line,
      [middle, top - (CAP_HEIGHT / 2 + at * NAME_LEADING) * (fitted?.sizeMm ?? 0)],
      fitted?.sizeMm ?? 0,
      { bold: true },
    ),
  );
  const small = below.map((line, at) => {
    const width = textWidthMm(line, BELOW_MM);
    const room = cards.widthMm - 2 * PAD_MM;
    const sizeMm = BELOW_MM * Math.min(1, room / width);
    return centredText(line, [middle, top - nameMm - (at + 0.9) * BELOW_MM * 1.6], sizeMm);
  });
  return [...names, ...small];
}
