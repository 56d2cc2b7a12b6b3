import { useContext, useEffect } from 'react';
import { followStyles } from '../state/own-styles';
import { WorkbookContext } from '../state/use-workbook';

/** Keeps the styles of the boxes known, and no others, while this page is open. */
export function OwnStylesHere() {
  const store = useContext(WorkbookContext);
  useEffect(() => (store ? followStyles(store) : undefined), [store]);
  return null;
}
