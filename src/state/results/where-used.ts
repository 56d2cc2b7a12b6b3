import type { Shelf } from '../shelf';

/** The names of the boxes and events that name a row by its id: deleting it leaves them without it. The example's do not count. */
export function whereUsed({ recipes, events }: Shelf, id: string): readonly string[] {
  return [...recipes.values(), ...events.values()].flatMap((row) =>
    row.id !== id && row.example !== true && names(row, id) ? row.name : [],
  );
}

/** Whether some value within says exactly this. */
const names = (value: unknown, id: string): boolean =>
  value === id ||
  (typeof value === 'object' && value !== null && Object.values(value).some((each) => names(each, id)));
