import type { LineRow } from '../../core/draw/net/net-table';

/** What is lit: marks of the drawing by key, and the one row it came from, if it came from a row. */
export type Lit = { readonly row: string | null; readonly keys: readonly string[] } | null;

export const litMark = (key: string | null): Lit => (key === null ? null : { row: null, keys: [key] });

const NONE: readonly string[] = [];
export const litKeys = (lit: Lit): readonly string[] => lit?.keys ?? NONE;

/** A row lights up for itself, for its own line in the drawing, and for a number it is measured by. */
export function isRowLit(lit: Lit, row: Pick<LineRow, 'key' | 'lights'>): boolean {
  if (lit === null) return false;
  return lit.row === null ? lit.keys.some((key) => row.lights.includes(key)) : lit.row === row.key;
}
