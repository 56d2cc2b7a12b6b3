import type { MixLot, MixOrder, MixRow } from './types';

/** Points that a box of a lot is worth at least, whichever of its cards it comes from. */
const pointsOfBox = ({ parts, cards }: MixLot, { points }: MixRow): number =>
  Math.min(
    ...cards.map((card) => parts.reduce((sum, { id, count }) => sum + count * (points[card]?.[id] ?? 0), 0)),
  );

/** Points that the sheets which are bought must hold at least: all boxes, less what fits on the sheets and offcuts on hand. */
export function pointsToBuy({ lots, formats }: MixOrder, row: MixRow): number {
  const wanted = lots.reduce((sum, lot) => sum + lot.boxes * pointsOfBox(lot, row), 0);
  const held = formats.reduce((sum, { sheet }) => sum + sheet.onHand * (row.most[sheet.id] ?? 0), 0);
  return wanted - held;
}

/**
 * The row told for all cards of an order, where the search left out those that hold no whole box: a part that fits no sheet of its card is
 * given the points of the box, and no sheet holds more for it.
 */
export function tellAllCards(row: MixRow, asked: MixOrder, searched: MixOrder, fits: Fits): MixRow {
  const points = Object.fromEntries(Object.entries(row.points).map(([card, its]) => [card, { ...its }]));
  for (const lot of asked.lots) {
    const known = searched.lots.find(({ id }) => id === lot.id);
    if (known === undefined) continue;
    const worth = pointsOfBox(known, row);
    for (const card of lot.cards.filter((each) => !known.cards.includes(each)))
      for (const part of lot.parts)
        points[card] = { ...points[card], [part.id]: fits(part, card) ? 0 : worth };
  }
  return { ...row, points };
}

export type Fits = (part: MixLot['parts'][number], card: string) => boolean;
