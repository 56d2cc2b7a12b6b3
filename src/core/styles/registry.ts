import { bagTopper } from './boxes/bag-topper';
import { barWrapper } from './boxes/bar-wrapper';
import { cardHolder } from './boxes/card-holder';
import { cornet } from './boxes/cornet';
import { crashLock } from './boxes/crash-lock';
import { doubleWall } from './boxes/double-wall';
import { envelopeBox } from './boxes/envelope-box';
import { finTop } from './boxes/fin-top';
import { flaredBowl } from './boxes/flared-bowl';
import { foldedSquare } from './boxes/folded-square';
import { gableTop } from './boxes/gable-top';
import { giftBag } from './boxes/gift-bag';
import { handleBasket } from './boxes/handle-basket';
import { hingedLid } from './boxes/hinged-lid';
import { house } from './boxes/house';
import { lidFlap } from './boxes/lid-flap';
import { liddedStar } from './boxes/lidded-star';
import { openTop } from './boxes/open-top';
import { openingOut } from './boxes/opening-out';
import { petalTop } from './boxes/petal-top';
import { pillowPack } from './boxes/pillow-pack';
import { pocketEnvelope } from './boxes/pocket-envelope';
import { prismLid } from './boxes/prism-lid';
import { reverseTuck } from './boxes/reverse-tuck';
import { rolledCone } from './boxes/rolled-cone';
import { sleeveDrawer } from './boxes/sleeve-drawer';
import { snapLock } from './boxes/snap-lock';
import { squarePyramid } from './boxes/square-pyramid';
import { starBox } from './boxes/star-box';
import { straightTuck } from './boxes/straight-tuck';
import { threeSidedBar } from './boxes/three-sided-bar';
import { tray } from './boxes/tray';
import { trayLid } from './boxes/tray-lid';
import { twistPouch } from './boxes/twist-pouch';
import { twoPartBox } from './boxes/two-part-box';
import { wallet } from './boxes/wallet';
import { webPail } from './boxes/web-pail';
import { wedge } from './boxes/wedge';
import type { BoxStyle } from './language/types';

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
  petalTop,
  house,
  giftBag,
  hingedLid,
  tray,
  handleBasket,
  trayLid,
  openingOut,
  foldedSquare,
  doubleWall,
  sleeveDrawer,
  prismLid,
  starBox,
  liddedStar,
  pillowPack,
  squarePyramid,
  twistPouch,
  cornet,
  rolledCone,
  flaredBowl,
  webPail,
  wedge,
  threeSidedBar,
  envelopeBox,
  pocketEnvelope,
  wallet,
  cardHolder,
  bagTopper,
  barWrapper,
];

/** Styles of makers, by an id that is made from their text: who asks earlier or later gets the same style, or none yet. */
const BROUGHT = new Map<string, BoxStyle>();

/** Makes a maker's style known by its id, beside ours. */
export const bringStyle = (style: BoxStyle): void => void BROUGHT.set(style.id, style);

/** Forgets a maker's style: nothing is made in it any more. */
export const dropStyle = (id: string): void => void BROUGHT.delete(id);

export const styleById = (id: string): BoxStyle | undefined =>
  STYLES.find((style) => style.id === id) ?? BROUGHT.get(id);
