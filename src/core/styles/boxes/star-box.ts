import { defineStyle } from '../language/define';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';
import { STAR_LIMITS, STAR_POINTS, STAR_QUANTITIES, starPlate, starRing } from '../shapes/star-parts';

/** A star of five, six or eight tips. Geometry: plane geometry of star polygons; construction: common practice, no source. No code of practice has a family for it (from memory). */
export const starBox = defineStyle({
  id: 'star-box',
  version: 1,
  name: 'Star box',
  source: 'plane geometry of star polygons; construction common practice, no source',
  goodFor: 'Candy at each place, a small gift in tissue: a box to look at from above.',
  watchOut: 'The tips hold little, so count on the middle only. Every second score folds the other way.',
  symbols: {
    side: sizeOf('Wall', 'One wall from a tip to a hollow, score to score.', '1 in', '3/4 in', '3 in'),
    height: sizeOf('Height', 'Wall, from the bottom score to the rim.', '1 1/2 in', '3/4 in', '8 in'),
    flap: allowanceOf(
      'Bottom flap',
      'From the bottom score to the flap’s free edge.',
      '3/16 in',
      '1/8 in',
      '1 in',
    ),
    tab: allowanceOf(
      'Glue tab',
      'The strip that joins the last wall to the first.',
      '1/2 in',
      '3/8 in',
      '1 in',
    ),
  },
  inside: ['itemSquare - t', 'itemSquare - t', 'height - 5/2 t'],
  options: { points: STAR_POINTS },
  quantities: STAR_QUANTITIES,
  pieces: (chosen) => ({
    star: starRing(
      {
        label: 'Star',
        wall: 'wall',
        tab: 'tab',
        flap: 'flap',
        side: 'side',
        height: 'height',
        tip: 'Spread glue on the flaps and lower the floor onto them from above.',
      },
      chosen,
    ),
    floor: starPlate({ label: 'Floor', panel: 'floor', edge: 'floorEdge', tip: 'floorTip' }, chosen),
  }),
  constraints: STAR_LIMITS,
  promises: [],
  fits: [
    {
      // half of two walls, and the glue tab inside one of them
      what: 'floor between the walls',
      room: '2 wallReach',
      body: '2 floorReach',
      card: '2t',
      ease: '1/16 in',
      marks: 4,
      truest: 'the width of the walls and of the floor',
      saves: 'Cut the floor last and try it before you glue it.',
    },
  ],
  traits: [],
});
