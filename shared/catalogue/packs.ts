const PRACTICE = 'common practice, no source';

/** Sheets to a pack of card. */
export const PACK_SIZES = { sheets: [10, 20, 25, 50, 100, 250, 500], source: PRACTICE } as const;

/** Lengths tape and ribbon are sold in. */
export const ROLLS = {
  yards: [3, 5, 10, 25, 50, 100],
  metres: [3, 5, 10, 20, 25, 50, 100],
  source: PRACTICE,
} as const;

/** Widths of strong double-sided tape. */
export const TAPE_WIDTHS = {
  inches: [0.125, 0.25, 0.375, 0.5],
  mm: [3, 6, 9, 12],
  source: PRACTICE,
} as const;
