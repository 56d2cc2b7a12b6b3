import type { weightWays } from '../../../../shared/catalogue';

/** Pounds, grams and thickness side by side. */
export const weightText = ({ pounds, grade, soldExactly, gsm, mm, points }: ReturnType<typeof weightWays>) =>
  `${soldExactly ? '' : 'about '}${pounds} lb ${grade} = ${gsm} g/m², ${mm} mm = ${points} pt.`;
