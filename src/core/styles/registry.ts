import { cornet } from './cornet';
import { crashLock } from './crash-lock';
import { doubleWall } from './double-wall';
import { envelopeBox } from './envelope-box';
import { finTop } from './fin-top';
import { flaredBowl } from './flared-bowl';
import { gableTop } from './gable-top';
import { lidFlap } from './lid-flap';
import { openTop } from './open-top';
import { pillowPack } from './pillow-pack';
import { prismLid } from './prism-lid';
import { reverseTuck } from './reverse-tuck';
import { sleeveDrawer } from './sleeve-drawer';
import { snapLock } from './snap-lock';
import { squarePyramid } from './square-pyramid';
import { starBox } from './star-box';
import { straightTuck } from './straight-tuck';
import { tray } from './tray';
import { trayLid } from './tray-lid';
import { twoPartBox } from './two-part-box';
import type { BoxStyle } from './types';
import { wallet } from './wallet';
import { wedge } from './wedge';

/** Every box style there is, in the order the picker shows them. A new style is one file and one line here. */
export const STYLES: readonly BoxStyle[] = [
  openTop,
  twoPartBox,
  lidFlap,
  snapLock,
  crashLock,
  straightTuck,
  reverseTuck,
  gableTop,
  finTop,
  tray,
  trayLid,
  doubleWall,
  sleeveDrawer,
  prismLid,
  starBox,
  pillowPack,
  squarePyramid,
  cornet,
  flaredBowl,
  wedge,
  envelopeBox,
  wallet,
];

export const styleById = (id: string): BoxStyle | undefined => STYLES.find((style) => style.id === id);
