import { useSearchParams } from 'react-router';
import type { StyleMerit } from '../../core/plan/event/style-facts';

/** In the order they are offered. */
export const MERITS: readonly StyleMerit[] = [
  'lid',
  'tall',
  'flat-packet',
  'no-glue',
  'trimmer-only',
  'one-sheet',
];

export interface Wishes {
  readonly merits: readonly StyleMerit[];
  readonly toggle: (merit: StyleMerit) => void;
  readonly clear: () => void;
}

/** What the maker filters by; it stands in the address, so that it is still there when they come back. */
export function useWishes(): Wishes {
  const [search, setSearch] = useSearchParams();
  const asked = (search.get('with') ?? '').split(',');
  const merits = MERITS.filter((merit) => asked.includes(merit));
  const set = (next: readonly StyleMerit[]) =>
    setSearch(
      (before) => {
        const after = new URLSearchParams(before);
        if (next.length === 0) after.delete('with');
        else after.set('with', next.join(','));
        return after;
      },
      { replace: true, preventScrollReset: true },
    );
  return {
    merits,
    toggle: (merit) =>
      set(merits.includes(merit) ? merits.filter((other) => other !== merit) : [...merits, merit]),
    clear: () => set([]),
  };
}
