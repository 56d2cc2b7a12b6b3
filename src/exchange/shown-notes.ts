import { readRow } from '../../shared/tables';
import type { FavorEvent } from '../../shared/workbook';
import { sameValue } from '../state/keeping/same-value';
import type { ComingRow } from '../state/ports';
import type { Counted, ShownEvent } from '../state/shown-event';
import { type Path, textOf } from './fields';
import type { Note, SealedRows } from './sealed-rows';

/**
 * What a link shows, as notes: `['#about']` the unit and the event, `['#row', table, id]` a row, `['#count', stage, by]` what was counted,
 * `['#over']` that the link was withdrawn. In the room of the counts stand notes of the third kind alone.
 */
const KINDS = ['#about', '#row', '#count', '#over'] as const;
export type Writes = readonly (readonly [Path, unknown])[];

export const countNotes = (counts: readonly Counted[]): Writes =>
  counts.map(({ stage, by = '', done, spoiled, seconds }) => [
    ['#count', stage, by],
    { done, spoiled, seconds },
  ]);

export const shownNotes = ({ unit, rows, counts }: ShownEvent, eventId: string): Writes => [
  [['#about'], { unit, eventId }],
  ...rows.map(({ table, id, row }) => [['#row', table, id], row] as const),
  ...countNotes(counts),
];

export const OVER: Writes = [[['#over'], true]];

/** Everything in a room. */
export const allNotes = (rows: SealedRows): Note[] => KINDS.flatMap((kind) => rows.notes(kind));

/** What has to be written so that the room holds what is wanted, and no more. */
export function difference(held: readonly Note[], wanted: Writes): Writes {
  const there = new Map(held.map(({ path, value }) => [textOf(path), value]));
  const named = new Set(wanted.map(([path]) => textOf(path)));
  return [
    ...held.filter(({ path }) => !named.has(textOf(path))).map(({ path }) => [path, undefined] as const),
    ...wanted.filter(([path, value]) => !sameValue(there.get(textOf(path)), value)),
  ];
}

/** Counts as others wrote them; none of what could not be one. */
export function readCounts(notes: readonly Note[], event: FavorEvent | undefined): Counted[] {
  return notes.flatMap(({ path: [kind, stage, by], value }) => {
    if (kind !== '#count' || typeof value !== 'object' || value === null) return [];
    const counted = { ...value, stage, ...(by !== '' && { by }) };
    // The schema of the event says what a count is.
    const reading = event && readRow('events', { ...event, run: { stages: [counted], firstRight: [] } });
    return reading?.ok ? (reading.row.run?.stages ?? []) : [];
  });
}

/** The rows that a link shows. */
export const readRows = (notes: readonly Note[]): ComingRow[] =>
  notes.flatMap(({ path: [kind, table, id], value }) =>
    kind === '#row' && table !== undefined && id !== undefined
      ? [{ table: table as ComingRow['table'], id, row: value }]
      : [],
  );

/** Of what event a link tells, and in which unit its maker thinks. */
export function readAbout(
  notes: readonly Note[],
): { readonly eventId: string; readonly unit: 'in' | 'mm' } | null {
  const { eventId, unit } = (notes.find(({ path }) => path[0] === '#about')?.value ?? {}) as {
    readonly eventId?: unknown;
    readonly unit?: unknown;
  };
  return typeof eventId === 'string' ? { eventId, unit: unit === 'mm' ? 'mm' : 'in' } : null;
}

export const isOver = (notes: readonly Note[]): boolean => notes.some(({ path }) => path[0] === '#over');
