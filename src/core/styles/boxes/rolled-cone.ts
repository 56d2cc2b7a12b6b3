import { defineStyle } from '../language/define';
import type { Values } from '../language/types';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

/** From the tip straight up to the mouth. */
const heightOf = ({ across = 0, slant = 0 }: Values): number => Math.sqrt(slant ** 2 - (across / 2) ** 2);

/** A sector rolled about its tip. Source: the development of a right circular cone, sector angle = 360° × mouth radius / slant. */
export const rolledCone = defineStyle({
  id: 'rolled-cone',
  version: 1,
  name: 'Rolled cone',
  source: 'development of a right circular cone: sector angle 360° × radius / slant',
  goodFor: 'Popcorn, candied almonds, flower petals to toss: one curved cut, one glued edge, no scores.',
  watchOut:
    'It won’t stand on its own, so plan a rack or lay it flat. Roll it with the grain running from tip to mouth.',
  symbols: {
    across: sizeOf('Mouth', 'Straight across the round opening.', '3 in', '1 in', '6 in'),
    slant: sizeOf('Slant', 'From the mouth down the side to the tip.', '6 in', '2 in', '14 in'),
    tab: allowanceOf(
      'Overlap',
      'How far the edges overlap at the mouth; it narrows toward the tip.',
      '1/2 in',
      '1/4 in',
      '1 in',
    ),
  },
  inside: ['2/3 itemSquare - t', '2/3 itemSquare - t', '1/3 height - t'],
  quantities: {
    itemSquare: {
      means: 'side of a square within the round mouth',
      formula: 'across / sqrt(2)',
      of: ({ across = 0 }) => across / Math.SQRT2,
    },
    height: {
      means: 'from the tip straight up to the mouth',
      formula: 'sqrt(slant ** 2 - (across / 2) ** 2)',
      of: heightOf,
    },
  },
  angles: {
    sector: {
      means: 'angle of the sector that closes into the cone',
      formula: '180 * across / slant',
      of: ({ across = 0, slant = 0 }) => (180 * across) / slant,
    },
    lap: {
      means: 'angle that the overlap adds to it',
      formula: '2 * asin(tab / 2 / slant)',
      of: ({ tab = 0, slant = 0 }) => (360 / Math.PI) * Math.asin(tab / 2 / slant),
    },
  },
  pieces: {
    cone: {
      label: 'Cone',
      panels: {
        cone: { role: 'wall', sector: 'slant', turn: 'sector' },
        tab: { role: 'glueTab', sector: 'slant', turn: 'lap', follows: 'cone', on: 'cone.e2', flush: true },
      },
      joints: [{ panel: 'tab', onto: 'cone', lap: 'inside' }],
      seams: [['cone.e2', 'cone.e0']],
      closing: [
        {
          do: 'fold',
          panels: ['cone', 'tab'],
          bends: true,
          tip: 'Draw it over the edge of the table a few times first, so that it curls.',
        },
        {
          do: 'glue',
          panel: 'tab',
          onto: 'cone',
          tip: 'Hold the tip closed while you line up the edges at the mouth.',
        },
      ],
      shell: ['cone'],
      // volume of a cone
      roomFormula: 'pi * (across / 2) ** 2 * height / 3',
      roomMm3: (values) => (Math.PI * ((values['across'] ?? 0) / 2) ** 2 * heightOf(values)) / 3,
    },
  },
  constraints: [
    {
      code: 'cone-too-flat',
      symbol: 'slant',
      atLeast: '9/8 across',
      severity: 'stop',
      says: 'With a slant of {slant} and a mouth {across} across the sector is nearly half a circle or more, and rolls up wide and shallow.',
      remedy: 'Make the slant at least {limit}.',
    },
    {
      code: 'overlap-too-wide',
      symbol: 'tab',
      atMost: '1/3 across',
      severity: 'stop',
      says: 'An overlap of {tab} goes too far round a mouth {across} across.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'overlap-too-wide-for-slant',
      symbol: 'tab',
      atMost: '1/7 slant',
      severity: 'stop',
      says: 'An overlap of {tab} on a slant of {slant} is too wide to follow the curve near the tip.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'cone-too-thin',
      symbol: 'slant',
      atMost: '6 across',
      severity: 'stop',
      says: 'A slant of {slant} on a mouth {across} across makes a tip too thin to roll.',
      remedy: 'Make the slant at most {limit}.',
    },
  ],
  promises: [],
  traits: [],
});
