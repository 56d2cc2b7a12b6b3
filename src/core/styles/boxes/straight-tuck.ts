import { defineStyle } from '../language/define';
import { tuckEnd } from '../shapes/tuck-end';

/** Both lids on the back panel, so the front shows no raw edge. ECMA family A (from memory); construction: common practice, no source. */
export const straightTuck = defineStyle({
  ...tuckEnd('back'),
  id: 'straight-tuck',
  name: 'Straight tuck box',
  source: 'common practice, no source; ECMA family A (from memory)',
  goodFor: 'Candles, soap, bath salts in a bag: a closed box with a clean front, one glued seam.',
  watchOut: 'Heavy things push the bottom tuck open; glue or tape it, or choose a glued bottom.',
});
