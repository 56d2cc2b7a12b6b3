/** The pages of a workbook, in the order of the work. */
export const PAGES = [
  'contents',
  'box',
  'marks',
  'fold',
  'dressing',
  'event',
  'sheets',
  'shopping',
  'bench',
  'handout',
] as const;
export type PageName = (typeof PAGES)[number];

/** Five places, each with one question: what do I fold, what goes on it, how many, how much paper, what do my hands do? */
export const PLACES = {
  box: ['contents', 'box', 'marks', 'fold'],
  decorate: ['dressing'],
  count: ['event'],
  buy: ['sheets', 'shopping'],
  make: ['bench', 'handout'],
} as const satisfies Readonly<Record<string, readonly PageName[]>>;
export type PlaceName = keyof typeof PLACES;
export const PLACE_NAMES = Object.keys(PLACES) as readonly PlaceName[];

/** The page a place opens at. */
export const FIRST_PAGE: Readonly<Record<PlaceName, PageName>> = {
  box: 'box',
  decorate: 'dressing',
  count: 'event',
  buy: 'sheets',
  make: 'bench',
};

export const placeOf = (page: PageName): PlaceName =>
  PLACE_NAMES.find((place) => (PLACES[place] as readonly PageName[]).includes(page)) ?? 'box';

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
  /** It needs the maker's eye: a flag, not only a color. */
  readonly flagged: boolean;
}
