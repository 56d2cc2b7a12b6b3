import { useMemo } from 'react';
import type { Dressing } from '../../../shared/workbook';
import { useWorkbook } from '../use-workbook';

/** The colors of a look's pieces, by their ids; `paperId` is what the box is cut from, for pieces of the same paper. */
export function useLookColours(
  dressing: Dressing | null | undefined,
  paperId: string | null,
): ReadonlyMap<string, string> {
  const papers = useWorkbook((state) => state.rows.papers);
  return useMemo(
    () =>
      new Map(
        (dressing?.pieces ?? []).flatMap((piece) => {
          const colour = papers.get(piece.paperId ?? paperId ?? '')?.colour;
          return colour === undefined ? [] : [[piece.id, colour] as const];
        }),
      ),
    [dressing, paperId, papers],
  );
}
