import { openTop } from './open-top';
import type { BoxStyle } from './types';

/** Every box style there is, in the order the picker shows them. A new style is one file and one line here. */
export const STYLES: readonly BoxStyle[] = [openTop];

export const styleById = (id: string): BoxStyle | undefined => STYLES.find((style) => style.id === id);
