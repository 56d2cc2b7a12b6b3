import { openTop } from './open-top';
import { pillowPack } from './pillow-pack';
import { squarePyramid } from './square-pyramid';
import { trayLid } from './tray-lid';
import type { BoxStyle } from './types';

/** Every box style there is, in the order the picker shows them. A new style is one file and one line here. */
export const STYLES: readonly BoxStyle[] = [openTop, trayLid, pillowPack, squarePyramid];

export const styleById = (id: string): BoxStyle | undefined => STYLES.find((style) => style.id === id);
