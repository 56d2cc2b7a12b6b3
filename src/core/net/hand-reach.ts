import { inches } from '../units';

/** An opening narrower than this takes no hand. source: common practice, no source */
export const HAND_WIDTH = inches(2, 1, 2);

/** The bottom of a box no higher than this is reached from above with the fingers. source: common practice, no source */
export const FINGER_REACH = inches(1, 1, 2);
