import type { EasyRow } from './easy-marks';

/** Why a row is shown first. */
export type RowMerit = 'easiest' | 'snuggest' | 'least-paper';

export interface ChosenRow {
  readonly row: EasyRow;
  readonly merits: readonly RowMerit[];
}

/**
 * The rows a maker most likely wants, at most three: of the easiest marks, of the least room to spare, of the least paper. A row that is two
 * of them stands once. Where two are alike in that, the easier one; `rows` come easiest first.
 */
export function threeRows(rows: readonly EasyRow[]): readonly ChosenRow[] {
  const least = (of: (row: EasyRow) => number) =>
    rows.reduce<EasyRow | undefined>((best, row) => (best && of(best) <= of(row) ? best : row), undefined);
  const chosen = new Map<EasyRow, RowMerit[]>();
  const choose = (row: EasyRow | undefined, merit: RowMerit) =>
    row && chosen.set(row, [...(chosen.get(row) ?? []), merit]);
  choose(rows[0], 'easiest');
  choose(
    least(({ excess }) => excess),
    'snuggest',
  );
  choose(
    least(({ sheetsPerBox }) => sheetsPerBox ?? Number.POSITIVE_INFINITY),
    'least-paper',
  );
  return [...chosen].map(([row, merits]) => ({ row, merits }));
}

/** Whether easier marks cost paper anywhere among the rows: else a plot of one against the other says nothing. */
export const isTrade = (rows: readonly EasyRow[]): boolean =>
  rows.some((easy) =>
    rows.some(
      (sparing) =>
        easy.roughness < sparing.roughness &&
        (easy.sheetsPerBox ?? Number.POSITIVE_INFINITY) > (sparing.sheetsPerBox ?? Number.POSITIVE_INFINITY),
    ),
  );
