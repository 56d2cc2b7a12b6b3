import type { WeightSaying } from '../../ui/words/shelf-words';

/** Pounds, grams and thickness side by side. */
export const weightText: WeightSaying = ({ pounds, grade, soldExactly, gsm, mm, points }) =>
  `${soldExactly ? '' : 'about '}${pounds} lb ${grade} = ${gsm} g/m², ${mm} mm = ${points} pt.`;
