import { useMemo } from 'react';
import type { Counted, Dressing, DressingPiece, Recipe, Tie } from '../../../shared/workbook';
import { useWorkbook } from '../../state/use-workbook';

const replace = <Row extends { readonly id: string }>(rows: readonly Row[], row: Row): Row[] =>
  rows.map((each) => (each.id === row.id ? row : each));
const without = <Row extends { readonly id: string }>(rows: readonly Row[], id: string): Row[] =>
  rows.filter((each) => each.id !== id);

/** Every change to a recipe's dressings, each one undo step under the name the maker sees. */
export function useDressingEdits(recipeId: string, dressingId: string) {
  const edit = useWorkbook((state) => state.edit);
  return useMemo(() => {
    const recipe = (label: string, to: (recipe: Recipe) => Recipe) =>
      void edit('recipes', recipeId, label, to);
    const dressing = (label: string, to: (dressing: Dressing) => Dressing) =>
      recipe(label, (old) => ({
        ...old,
        dressings: old.dressings.map((each) => (each.id === dressingId ? to(each) : each)),
      }));
    return {
      recipe,
      dressing,
      setPiece: (label: string, piece: DressingPiece) =>
        dressing(label, (old) => ({ ...old, pieces: replace(old.pieces, piece) })),
      setTie: (label: string, tie: Tie) =>
        dressing(label, (old) => ({ ...old, ties: replace(old.ties ?? [], tie) })),
      setCounted: (label: string, counted: Counted) =>
        dressing(label, (old) => ({ ...old, counted: replace(old.counted ?? [], counted) })),
      takeOff: (label: string, list: 'pieces' | 'ties' | 'counted', id: string) =>
        dressing(label, (old) => ({ ...old, [list]: without<{ readonly id: string }>(old[list] ?? [], id) })),
    };
  }, [edit, recipeId, dressingId]);
}

export type DressingEdits = ReturnType<typeof useDressingEdits>;
