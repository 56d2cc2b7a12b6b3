import { defineStyle } from '../language/define';
import type { ClosingStep, JointSpec, PanelSpec } from '../language/types';
import { CORNERS, CREASES, innerOf, outerOf, webs } from '../shapes/pail-webs';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';
import { leanOf, WEB_ANGLES, WEB_STOPS, WEB_WORKINGS } from '../shapes/web-corner';

/** Two webs that meet on an end wall stay so far from its middle. source: our choice, mm */
const WEB_APART_MM = 1.5875;

const wall = (on: `base.${'left' | 'right' | 'up' | 'down'}`, along: 'width' | 'depth'): PanelSpec => ({
  role: 'wall',
  outline: [
    ['-flare', 'slant'],
    [`${along} + flare`, 'slant'],
  ],
  on,
  fold: 'wallFold',
  ...(along === 'depth'
    ? { holes: [{ hole: 'round', across: 'punch', at: ['depth/2', 'slant - holeBelow'] }] }
    : {}),
});

const WALLS = ['front', 'right', 'back', 'left'] as const;
const WEBS = CORNERS.flatMap((corner) => [innerOf(corner), outerOf(corner)]);
const JOINTS: readonly JointSpec[] = CORNERS.flatMap((corner): JointSpec[] => [
  { panel: innerOf(corner), onto: corner.end, lap: 'outside' },
  { panel: outerOf(corner), onto: innerOf(corner), lap: 'inside' },
]);

/** A pail with a lid, all of one card: webs at its corners, folded flat onto the end walls, leave no slit. Geometry: derived from the frustum; construction: common practice, no source. */
export const webPail = defineStyle({
  id: 'web-pail',
  version: 1,
  name: 'Take-out pail',
  source: 'solid geometry of the frustum, web angles derived; construction common practice, no source',
  goodFor:
    'Popcorn, cookies, noodles of paper for a party: no slit at the bottom for crumbs to fall through.',
  watchOut:
    'Plain cardstock is not for wet or greasy food: line it. Ribbon holes tear, so carry it from below.',
  symbols: {
    width: sizeOf('Base width', 'Long side of the base, score to score.', '2 1/2 in', '1 in', '8 in'),
    depth: sizeOf(
      'Base depth',
      'Side of the base under an end wall, score to score.',
      '1 1/2 in',
      '1 in',
      '6 in',
    ),
    slant: sizeOf(
      'Slant',
      'From the base score up the middle of a wall to the rim.',
      '2 1/4 in',
      '2 in',
      '8 in',
    ),
    flare: sizeOf('Flare', 'How far each wall leans out at the rim.', '1/4 in', '1/8 in', '1 in'),
    tuck: allowanceOf(
      'Tuck',
      'The strip of the lid that goes in behind the front.',
      '5/8 in',
      '1/2 in',
      '1 in',
    ),
    endFlap: allowanceOf('End flaps', 'The flaps under the lid, from the rim.', '1/2 in', '3/8 in', '2 in'),
    relief: allowanceOf(
      'Side relief',
      'How much the lid stays clear of each side; the end flaps stay clear by twice as much.',
      '1/16 in',
      '1/16 in',
      '1/8 in',
    ),
    punch: allowanceOf(
      'Hole',
      'Width of the ribbon holes: the hole your punch makes.',
      '1/8 in',
      '1/16 in',
      '1/4 in',
    ),
    holeBelow: allowanceOf(
      'Hole below rim',
      'From the rim to the middle of a ribbon hole.',
      '3/8 in',
      '1/4 in',
      '3/4 in',
    ),
  },
  inside: ['width - t', 'depth - t', 'height - 4t'],
  allowances: { lidShort: '2t + 1/64 in' },
  lets: {
    rimWidth: 'width + 2 flare',
    rimDepth: 'depth + 2 flare',
    lidDepth: 'rimDepth - lidShort',
    lidWidth: 'rimWidth - 2 relief',
    flapInset: '2 relief',
    flapWidth: 'rimDepth - 2 flapInset',
  },
  workings: WEB_WORKINGS,
  quantities: {
    height: {
      means: 'height of the rim above the base',
      formula: 'sqrt(max(0, slant ** 2 - flare ** 2))',
      of: ({ slant = 0, flare = 0 }) => Math.sqrt(Math.max(0, slant * slant - flare * flare)),
    },
    webReach: {
      means:
        'from a corner of the base across, and as far up, to the point of its webs: on the rim, or near the middle of the end wall',
      formula: `min(slant / sin(45 + 2 * lean), (depth / 2 - ${WEB_APART_MM} * mm) / max(0.05, sin(45 - 2 * lean))) / sqrt(2)`,
      of: (values) => {
        const { slant = 0, depth = 0 } = values;
        const lean = leanOf(values);
        const toRim = slant / Math.sin(Math.PI / 4 + 2 * lean);
        const toMiddle = (depth / 2 - WEB_APART_MM) / Math.max(0.05, Math.sin(Math.PI / 4 - 2 * lean));
        return Math.min(toRim, toMiddle) / Math.SQRT2;
      },
    },
    tuckTaper: {
      means: 'how far each end of the tuck slopes in, to go down between walls that draw together',
      formula: 'tuck * max(0.3, 1.5 * tan(lean))',
      of: (values) => (values['tuck'] ?? 0) * Math.max(0.3, 1.5 * Math.tan(leanOf(values))),
      onMark: true,
    },
  },
  angles: WEB_ANGLES,
  addOns: { corners: [{ id: 'tuck', label: 'On the tuck', piece: 'pail', at: ['tuck.e2', 'tuck.e3'] }] },
  pieces: {
    pail: {
      label: 'Pail',
      panels: {
        base: { role: 'base', size: ['width', 'depth'] },
        front: wall('base.down', 'width'),
        right: wall('base.right', 'depth'),
        back: wall('base.up', 'width'),
        left: wall('base.left', 'depth'),
        ...webs(),
        rightFlap: {
          role: 'dustFlap',
          hinge: 'flapWidth',
          outline: [
            ['endFlap/4', 'endFlap'],
            ['flapWidth - endFlap/4', 'endFlap'],
          ],
          on: 'right.e2',
          at: 'flapInset',
          fold: 'rimFold',
        },
        leftFlap: {
          role: 'dustFlap',
          hinge: 'flapWidth',
          outline: [
            ['endFlap/4', 'endFlap'],
            ['flapWidth - endFlap/4', 'endFlap'],
          ],
          on: 'left.e2',
          at: 'flapInset',
          fold: 'rimFold',
        },
        lid: {
          role: 'lid',
          hinge: 'lidWidth',
          outline: [
            ['0', 'lidDepth'],
            ['lidWidth', 'lidDepth'],
          ],
          on: 'back.e2',
          at: 'relief',
          fold: 'rimFold',
        },
        tuck: {
          role: 'tuck',
          outline: [
            ['tuckTaper', 'tuck'],
            ['lidWidth - tuckTaper', 'tuck'],
          ],
          on: 'lid.e2',
          fold: 'rimFold',
        },
      },
      creases: CREASES,
      joints: JOINTS,
      seams: [
        ['front.e3', 'right.e1'],
        ['back.e1', 'right.e3'],
        ['back.e3', 'left.e1'],
        ['front.e1', 'left.e3'],
      ],
      overlaps: [
        ['rightFlap', 'lid'],
        ['leftFlap', 'lid'],
        ['tuck', 'front'],
        ...CORNERS.map((corner) => [corner.end, innerOf(corner), outerOf(corner)]),
      ],
      closing: [
        {
          do: 'fold',
          panels: [...WALLS, ...WEBS],
          through: WEB_STOPS.map((stop) => ({
            ...Object.fromEntries(WALLS.map((name) => [name, `rise${stop}`])),
            ...Object.fromEntries(WEBS.map((name) => [name, `fin${stop}`])),
          })),
          tip: 'Pinch each corner into a fin as the walls come up, then lay the fins flat on the end walls.',
        },
        ...JOINTS.map(({ panel, onto }): ClosingStep => ({ do: 'glue', panel, onto })),
        { do: 'fold', panels: ['rightFlap', 'leftFlap'] },
        { do: 'tuck', panels: ['lid', 'tuck'] },
      ],
      shell: ['base', ...WALLS],
      roomFormula:
        'height * (width * depth + rimWidth * rimDepth + (width + rimWidth) * (depth + rimDepth)) / 6',
      roomMm3: ({ width = 0, depth = 0, rimWidth = 0, rimDepth = 0, height = 0 }) =>
        (height * (width * depth + rimWidth * rimDepth + (width + rimWidth) * (depth + rimDepth))) / 6,
    },
  },
  constraints: [
    {
      code: 'flares-too-much',
      symbol: 'flare',
      atMost: 'slant/6',
      severity: 'stop',
      says: 'Walls {slant} long that lean out by {flare} leave too little card for the webs.',
      remedy: 'Make the flare at most {limit}.',
    },
    {
      code: 'webs-reach-holes',
      symbol: 'slant',
      atLeast: 'depth + holeBelow + punch',
      severity: 'stop',
      says: 'On walls {slant} long the webs reach the ribbon holes.',
      remedy: 'Make the slant at least {limit}, or the base less deep.',
    },
    {
      code: 'hole-near-rim',
      symbol: 'holeBelow',
      atLeast: 'punch/2 + 1/4 in',
      severity: 'stop',
      says: 'Holes {punch} wide, {holeBelow} below the rim, leave less than 1/4 in of card above them.',
      remedy: 'Make it at least {limit}.',
    },
    {
      code: 'end-flaps-meet',
      symbol: 'endFlap',
      atMost: 'width/2',
      severity: 'stop',
      says: 'End flaps {endFlap} long meet under the lid.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'end-flaps-pass-lid',
      symbol: 'endFlap',
      atMost: 'depth',
      severity: 'stop',
      says: 'The sloped ends of flaps {endFlap} long meet on an end wall so narrow.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'tuck-too-long',
      symbol: 'tuck',
      atMost: 'slant/2',
      severity: 'stop',
      says: 'A tuck {tuck} long reaches far down into the pail.',
      remedy: 'Make it at most {limit}.',
    },
  ],
  promises: [{ claim: 'covers', piece: 'pail', panels: ['base'], area: ['width', 'depth'] }],
  fits: [
    {
      // half of the back's score line lies in the lid, half of the front and half of the tuck between
      what: 'lid between back and front',
      room: 'rimDepth',
      body: 'lidDepth',
      card: '3/2 t',
      ease: '0.2 mm',
      marks: 3,
      truest: 'the lid scores and the flare of the front',
      saves: 'Fold the tuck a hair early if it pushes the front out.',
    },
  ],
  traits: ['lid'],
});
