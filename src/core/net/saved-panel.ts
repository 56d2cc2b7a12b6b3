import { otherSide } from '../styles/shapes/sides';
import type { BoxNet } from './types';

/** The name in the net of a panel that was saved, and the other way round: what is saved of pieces whose sides were renamed keeps the old names. */
export const savedName = (
  { sidesRenamed }: Pick<BoxNet, 'sidesRenamed'>,
  part: string,
  panel: string,
): string => (sidesRenamed?.includes(part) ? otherSide(panel) : panel);
