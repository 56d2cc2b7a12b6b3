import { defineStyle } from '../language/define';
import { LID_DEPTH_NOTES } from '../shapes/lid-depth';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';
import {
  plateEdge,
  plateEdgeText,
  plateReach,
  plateReachText,
  plateTip,
  plateTipText,
  STAR_FLOOR_FIT,
  STAR_INSIDE,
  STAR_LIMITS,
  STAR_POINTS,
  STAR_QUANTITIES,
  STAR_SYMBOLS,
  STAR_WORKINGS,
  starAndFloor,
  starPlate,
  starRing,
  wallFor,
  wallReach,
  wallReachText,
} from '../shapes/star-parts';

/** A star of five, six or eight tips with a lid that is the same star, a little larger and lower. Geometry: plane geometry of star polygons; construction: common practice, no source. No code of practice has a family for it (from memory). */
export const liddedStar = defineStyle({
  id: 'lidded-star',
  version: 1,
  name: 'Star box with lid',
  source: 'plane geometry of star polygons; construction common practice, no source',
  goodFor: 'Holiday candy, an ornament, a small gift in tissue: a star that closes and stacks.',
  watchOut:
    'Twenty walls and more to score, so it takes an evening for a few. Make the star first and try the lid on it.',
  symbols: {
    side: { ...STAR_SYMBOLS.side, help: 'One wall of the star from a tip to a hollow, score to score.' },
    height: STAR_SYMBOLS.height,
    lip: {
      ...sizeOf('Lid depth', 'Lid wall, from its score to its rim.', '3/4 in', '3/8 in', '4 in'),
      forNew: '1/2 height',
    },
    flap: {
      ...STAR_SYMBOLS.flap,
      label: 'Flaps',
      help: 'From the score to the free edge, at the bottom and in the lid.',
    },
    tab: STAR_SYMBOLS.tab,
    ease: allowanceOf(
      'Ease',
      'How much larger the lid is than the star, both sides together.',
      '3/64 in',
      '0 in',
      '1/8 in',
    ),
  },
  inside: STAR_INSIDE,
  options: { points: STAR_POINTS },
  workings: STAR_WORKINGS,
  quantities: {
    ...STAR_QUANTITIES,
    lidSide: {
      means: 'wall of the lid: every wall stands out by both walls’ card, the lid’s tab and half the ease',
      formula: 'side * (1 + (2 * t + ease / 2) / (side * spread))',
      of: ({ side = 0, t = 0, ease = 0 }, chosen) => wallFor(side, 2 * t + ease / 2, chosen),
      onMark: true,
    },
    lidReach: {
      means: 'from the middle of the lid to the line of a wall',
      formula: wallReachText('lidSide'),
      of: wallReach('lidSide'),
    },
    topEdge: {
      means:
        'edge of the polygon between the hollows of the lid’s top, the whole top a caliper and 1/32 in in from every wall',
      formula: plateEdgeText('lidSide'),
      of: plateEdge('lidSide'),
    },
    topReach: {
      means: 'from the middle of the lid’s top to the line of its edge',
      formula: plateReachText('lidSide'),
      of: plateReach('lidSide'),
    },
    topTip: {
      means: 'from that polygon out to the tip of the lid’s top',
      formula: plateTipText('topEdge'),
      of: plateTip('topEdge'),
    },
  },
  pieces: (chosen) => ({
    ...starAndFloor(chosen),
    lid: starRing(
      {
        label: 'Lid',
        lid: true,
        wall: 'rim',
        tab: 'rimTab',
        flap: 'topFlap',
        side: 'lidSide',
        height: 'lip',
        tip: 'Spread glue on the flaps and lower the top onto them from inside.',
      },
      chosen,
    ),
    top: starPlate({ label: 'Top', lid: true, panel: 'top', edge: 'topEdge', tip: 'topTip' }, chosen),
  }),
  constraints: [
    ...STAR_LIMITS,
    {
      code: 'lid-deeper-than-star',
      symbol: 'lip',
      atMost: 'height',
      severity: 'warn',
      says: 'The lid {lip} is deeper than the star {height}, so the star would stand on the lid.',
      remedy: 'Make it at most {limit}.',
    },
    ...LID_DEPTH_NOTES,
  ],
  promises: [],
  fits: [
    STAR_FLOOR_FIT,
    {
      what: 'top between the lid’s walls',
      room: '2 lidReach',
      body: '2 topReach',
      card: '2t',
      ease: '1/16 in',
      marks: 4,
      truest: 'the width of the lid’s walls and of its top',
      saves: 'Cut the top last and try it before you glue it.',
    },
    {
      // half of the lid's and the star's walls, and the lid's glue tab
      what: 'lid over the star',
      room: '2 lidReach',
      body: '2 wallReach',
      card: '4t',
      ease: 'ease',
      marks: 4,
      truest: 'the width of the walls of the star and of the lid',
      saves: 'Close the star first, then try the lid on it before you cut the rest.',
    },
  ],
  traits: ['lid'],
});
