import type { OpenWorkbook } from '../ui/frame/open-workbook';

let inSight: OpenWorkbook | null = null;

/** The workbook whose pages are open, with the plan the maker sees; null on the shelf. For acts that are asked for outside its pages. */
export const workbookInSight = (): OpenWorkbook | null => inSight;

export const setInSight = (open: OpenWorkbook | null): void => {
  inSight = open;
};
