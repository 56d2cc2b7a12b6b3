import type { Len, SymbolSpec } from '../language/types';

/** A size the maker chooses, within bounds. */
export const sizeOf = (label: string, help: string, usual: Len, min: Len, max: Len): SymbolSpec => ({
  role: 'size',
  label,
  help,
  default: usual,
  min,
  max,
});

/** A working dimension with a sound default. */
export const allowanceOf = (label: string, help: string, usual: Len, min: Len, max: Len): SymbolSpec => ({
  ...sizeOf(label, help, usual, min, max),
  role: 'allowance',
});
