import { defineStyle } from '../language/define';
import {
  STAR_FLOOR_FIT,
  STAR_INSIDE,
  STAR_LIMITS,
  STAR_POINTS,
  STAR_QUANTITIES,
  STAR_SYMBOLS,
  STAR_WORKINGS,
  starAndFloor,
} from '../shapes/star-parts';

/** A star of five, six or eight tips. Geometry: plane geometry of star polygons; construction: common practice, no source. No code of practice has a family for it (from memory). */
export const starBox = defineStyle({
  id: 'star-box',
  version: 1,
  name: 'Star box',
  source: 'plane geometry of star polygons; construction common practice, no source',
  goodFor: 'Candy at each place, a small gift in tissue: a box to look at from above.',
  watchOut: 'The tips hold little, so count on the middle only. Every second score folds the other way.',
  symbols: STAR_SYMBOLS,
  inside: STAR_INSIDE,
  options: { points: STAR_POINTS },
  workings: STAR_WORKINGS,
  quantities: STAR_QUANTITIES,
  addOns: {
    ribbon: [{ id: 'tip', label: 'A loop through one tip', piece: 'star', at: ['wall3.up', 'wall4.up'] }],
  },
  pieces: starAndFloor,
  constraints: STAR_LIMITS,
  promises: [],
  fits: [STAR_FLOOR_FIT],
  traits: [],
});
