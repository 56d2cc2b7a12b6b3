import { defineStyle } from '../language/define';
import { tuckEnd } from '../shapes/tuck-end';

/** Upper lid on the back, lower lid on the front, so blanks nest when turned. ECMA family A (from memory); construction: common practice, no source. */
export const reverseTuck = defineStyle({
  ...tuckEnd('front'),
  id: 'reverse-tuck',
  name: 'Reverse tuck box',
  source: 'common practice, no source; ECMA family A (from memory)',
  goodFor: 'Many boxes from few sheets: the blanks nest when every other one is turned.',
  watchOut: 'One lid edge shows at the front, and heavy things push the bottom tuck open.',
});
