import type { RowMerit } from '../../../core/fit';

const MERITS = { easiest: 'Easiest', snuggest: 'Snuggest', 'least-paper': 'Least paper' } as const;

export const cardMessages = {
  merits: (merits: readonly RowMerit[]) =>
    merits
      .map((merit, at) => (at === 0 ? MERITS[merit] : MERITS[merit].toLowerCase()))
      .join(merits.length > 2 ? ', ' : ' and '),
  toSpare: (length: string) => `${length} to spare`,
  noRoom: 'no room to spare: a snug fit',
  sameSize: 'Same size',
  goOn: 'Go on: see it fold',
  instead: (now: string, was: string) => `${now} instead of ${was}`,
  /** `was` 0: it does not fit the sheet. */
  perSheetInstead: (now: number, was: number) =>
    was === 0 ? `${now} per sheet` : `${now} per sheet instead of ${was}`,
  changes: (parts: readonly string[], paper: string | null) => {
    const text = [parts.join(', '), ...(paper === null ? [] : [paper])].join(': ');
    return text === 'Same size' ? 'Your box as it is' : `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
  },
};
