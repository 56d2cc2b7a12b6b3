import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { WorkbookState } from './workbook-state';
import type { WorkbookStore } from './workbook-store';

export const WorkbookContext = createContext<WorkbookStore | null>(null);

/** A piece of the workbook, in a component; drawn again when that piece changes. Throws outside the context. */
export function useWorkbook<Piece>(select: (state: WorkbookState) => Piece): Piece {
  const store = useContext(WorkbookContext);
  if (!store) throw new Error('no workbook around this component');
  return useStore(store, select);
}
