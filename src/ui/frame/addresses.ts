import { PAGES, type PageName } from './pages';

/** A workbook is opened for one recipe or for one event; the event brings its recipes along. */
export type Workbook = { readonly kind: 'recipe' | 'event'; readonly id: string };

export const SHELF = '/';
/** What lies on the shelf: boxes and events, what they are made of and with, and the ways to keep it all. */
export const SHELF_DOORS = ['made', 'supplies', 'backup'] as const;
export type ShelfDoor = (typeof SHELF_DOORS)[number];
export const shelfAt = (door: ShelfDoor): string => (door === 'made' ? SHELF : `${SHELF}?door=${door}`);
/** What goes in? The shape follows. */
export const START = '/start';
/** The shape is known. */
export const NEW_RECIPE = '/new';
export const KEEPING = '/keeping';
export const HELP = '/help';
/** All events at once. */
export const SEASON = '/season';
/** Where a word of the trade is explained. */
export const helpAt = (word: string): string => `${HELP}?word=${word}`;
export const stockAddress = (table: 'papers' | 'supplies' | 'tools', id: string): string =>
  `/stock/${table}/${id}`;

/** The address of one page of a workbook; an event's box or bench page may be opened at one of its recipes. */
export const pageAddress = ({ kind, id }: Workbook, page: PageName, recipeId?: string): string =>
  `/${kind}/${id}/${page}${kind === 'event' && recipeId !== undefined ? `?recipe=${recipeId}` : ''}`;

/** Where the style of a box is drawn, where it is one of the maker’s own. */
export const drawingAddress = (workbook: Workbook, recipeId?: string): string =>
  pageAddress(workbook, 'box', recipeId).replace(/\/box(?=$|\?)/, '/box/style');

/** The workbook that an address belongs to; null for the shelf and the supplies. */
export function workbookAt(address: string): Workbook | null {
  const [, kind, id] = address.split('/');
  return (kind === 'recipe' || kind === 'event') && id ? { kind, id } : null;
}

export const isPage = (name: string | undefined): name is PageName => PAGES.some((page) => page === name);
