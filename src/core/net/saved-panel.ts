import { otherSide } from '../styles/shapes/sides';
import type { BoxNet } from './types';

/** A saved panel as its net names it, and a panel of the net as it is saved: pieces whose sides were renamed keep the names they had. */
export const savedName = (
  { sidesRenamed }: Pick<BoxNet, 'sidesRenamed'>,
  part: string,
  panel: string,
): string => (sidesRenamed?.includes(part) ? otherSide(panel) : panel);
