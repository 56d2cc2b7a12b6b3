/** The pages of a workbook, in the order of the work. */
export const PAGES = [
  'contents',
  'box',
  'fold',
  'marks',
  'dressing',
  'event',
  'sheets',
  'shopping',
  'bench',
  'handout',
] as const;
export type PageName = (typeof PAGES)[number];

/** Pages about one box; in an event, about one of its boxes. */
export const RECIPE_PAGES: readonly PageName[] = [
  'contents',
  'box',
  'fold',
  'marks',
  'dressing',
  'bench',
  'handout',
];

/** What a page says of itself in the strip: its result so far, or what it needs next. */
export interface PageNeed {
  readonly says: string;
  /** It needs the maker's eye: a flag, not only a colour. */
  readonly flagged: boolean;
}
