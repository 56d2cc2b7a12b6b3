import { useSyncExternalStore } from 'react';
import type { OpenWorkbook } from '../ui/frame/open-workbook';

let inSight: OpenWorkbook | null = null;
const listening = new Set<() => void>();

const listen = (heard: () => void) => {
  listening.add(heard);
  return () => void listening.delete(heard);
};

/** The workbook whose pages are open, with the plan the maker sees; null on the shelf. For acts that are asked for outside its pages. */
export const useWorkbookInSight = (): OpenWorkbook | null => useSyncExternalStore(listen, () => inSight);

export const setInSight = (open: OpenWorkbook | null): void => {
  inSight = open;
  for (const heard of listening) heard();
};
