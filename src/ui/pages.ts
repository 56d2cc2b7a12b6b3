/** The pages of a workbook, in the order of the work. */
export const PAGES = ['box', 'event', 'sheets', 'shopping', 'bench'] as const;
export type PageName = (typeof PAGES)[number];

/** What a page says of itself in the strip: its result so far, or what it needs next. */
export interface PageNeed {
  readonly says: string;
  /** It needs the maker's eye: a flag, not only a colour. */
  readonly flagged: boolean;
}
