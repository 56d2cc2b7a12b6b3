import type { CardWords } from '../../ui/words/marks-words';

const MERITS = { easiest: 'Easiest', snuggest: 'Snuggest', 'least-paper': 'Least paper' } as const;

export const cardMessages: CardWords = {
  merits: (merits) =>
    merits
      .map((merit, at) => (at === 0 ? MERITS[merit] : MERITS[merit].toLowerCase()))
      .join(merits.length > 2 ? ', ' : ' and '),
  toSpare: (length) => `${length} to spare`,
  noRoom: 'no room to spare: a snug fit',
  sameSize: 'Same size',
  goOn: 'Go on: see it fold',
  instead: (now, was) => `${now} instead of ${was}`,
  perSheetInstead: (now, was) => (was === 0 ? `${now} per sheet` : `${now} per sheet instead of ${was}`),
  changes: (parts, paper) => {
    const text = [parts.join(', '), ...(paper === null ? [] : [paper])].join(': ');
    return text === 'Same size' ? 'Your box as it is' : `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
  },
};
