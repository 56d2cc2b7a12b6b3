import { defineStyle } from '../language/define';
import type { Values } from '../language/types';

/** Radius of the curved score and half the angle it spans, from flat width and rise in mm. */
function arcOf({ width = 0, rise = 0 }: Values): { readonly radius: number; readonly half: number } {
  const radius = (width * width) / (8 * rise) + rise / 2;
  return { radius, half: Math.asin(width / 2 / radius) };
}

/**
 * ∫ of `what`(depth of the score) over the packed width, between the angles ±`upTo` of the arc: there the wall leans by φ, sin φ = tan θ,
 * and its width shrinks by cos φ. Simpson's rule, error far below a tick.
 */
function acrossPack(
  { radius }: { readonly radius: number },
  rise: number,
  upTo: number,
  what: (depth: number) => number,
): number {
  const steps = 400;
  const at = (angle: number) =>
    what(radius * Math.cos(angle) - radius + rise) *
    Math.sqrt(Math.max(0, 1 - Math.tan(angle) ** 2)) *
    radius *
    Math.cos(angle);
  let sum = at(0) + at(upTo);
  for (let k = 1; k < steps; k++) sum += (k % 2 === 1 ? 4 : 2) * at((upTo * k) / steps);
  return (2 * upTo * sum) / (3 * steps);
}

/** The same as text, for a style file: the integral goes over the angle of the arc in degrees. */
const acrossText = (upTo: string, what: string): string =>
  `pi / 90 * integral(a, 0, ${upTo}, sqrt(max(0, 1 - tan(a) ** 2)) * radius * cos(a)${what})`;

/**
 * A flat tube with curved ends. Source: curved-crease pillow boxes, arXiv 2410.17593 and 2509.02049: each wall bends into a cylinder with
 * rulings along the tube, each end flap into one across it, and nothing stretches. ECMA family F (special).
 */
export const pillowPack = defineStyle({
  id: 'pillow-pack',
  version: 1,
  name: 'Pillow pack',
  source: 'curved-crease pillow boxes, arXiv 2410.17593 and 2509.02049',
  goodFor: 'Gift cards, earrings, candy and other small, light items. It stays flat until you fill it.',
  watchOut: 'The four curved scores need a template and a steady hand, and the ends hold by spring alone.',
  symbols: {
    width: {
      role: 'size',
      label: 'Width',
      help: 'Each face while flat, side score to side score.',
      default: '3 in',
      min: '1 in',
      max: '10 in',
    },
    height: {
      role: 'size',
      label: 'Length',
      help: 'Between the tips of the two curved ends.',
      default: '5 in',
      min: '1 1/2 in',
      max: '14 in',
    },
    rise: {
      role: 'size',
      label: 'Rise',
      help: 'How deep each curved score bows in; half the packed thickness.',
      default: '1/2 in',
      min: '1/8 in',
      max: '2 in',
    },
    tab: {
      role: 'allowance',
      label: 'Glue tab',
      help: 'The strip that joins back and front.',
      default: '1/2 in',
      min: '3/8 in',
      max: '1 in',
    },
  },
  inside: ['itemWidth', 'rise - t', 'height - 2 rise'],
  slidesInBy: ['width', 'depth'],
  lets: { fullHeight: 'height + 2 rise' },
  workings: {
    radius: 'width ** 2 / (8 * rise) + rise / 2',
    half: 'asin(width / 2 / radius)',
  },
  quantities: {
    packedWidth: {
      means: 'width across the filled pack',
      formula: acrossText('half', ''),
      of: (values) => acrossPack(arcOf(values), values['rise'] ?? 0, arcOf(values).half, () => 1),
    },
    itemWidth: {
      means: 'widest flat item half as thick as the pack',
      formula: acrossText('acos(1 - rise / 2 / radius)', ''),
      of: (values) => {
        const { rise = 0 } = values;
        const arc = arcOf(values);
        return acrossPack(arc, rise, Math.acos(1 - rise / 2 / arc.radius), () => 1);
      },
    },
  },
  addOns: {
    // the flap that goes in last, and so lies outside
    notch: [
      { id: 'one-end', label: 'In one end', piece: 'pack', at: ['frontLeft.right'] },
      { id: 'both-ends', label: 'In both ends', piece: 'pack', at: ['frontLeft.right', 'frontRight.left'] },
    ],
  },
  sidesRenamed: ['pack'],
  pieces: {
    pack: {
      label: 'Pack',
      panels: {
        front: { role: 'wall', size: ['height', 'width'], bow: 'rise' },
        back: { role: 'wall', size: ['height', 'width'], bow: 'rise', on: 'front.up', fold: 180 },
        tab: {
          role: 'glueTab',
          size: ['height', 'tab'],
          follows: 'front',
          taper: 'tab + 1/8 in',
          on: 'back.up',
          fold: 180,
        },
        frontRight: { role: 'endFlap', lens: 'rise', on: 'front.left' },
        frontLeft: { role: 'endFlap', lens: 'rise', on: 'front.right' },
        backRight: { role: 'endFlap', lens: 'rise', on: 'back.left' },
        backLeft: { role: 'endFlap', lens: 'rise', on: 'back.right' },
      },
      joints: [{ panel: 'tab', onto: 'front', lap: 'inside' }],
      seams: [['back.up', 'front.down']],
      overlaps: [
        ['backRight', 'frontRight'],
        ['backLeft', 'frontLeft'],
      ],
      closing: [
        { do: 'fold', panels: ['tab'], to: 180 },
        { do: 'fold', panels: ['back'], to: 180 },
        { do: 'glue', panel: 'tab', onto: 'front', tip: 'Glue the tab while the pack lies flat.' },
        {
          do: 'fold',
          panels: ['front', 'back', 'tab'],
          bends: true,
          tip: 'Squeeze the two sides together so that both faces bulge.',
        },
        { do: 'fold', panels: ['backRight', 'backLeft'], bends: true },
        { do: 'fold', panels: ['frontRight', 'frontLeft'], bends: true },
      ],
      // a full lens reaches from one face to the other, so one flap an end bounds the room
      shell: ['front', 'back', 'frontRight', 'frontLeft'],
      // source: arXiv 2509.02049; both walls stand `depth` off the middle, and the ends are set in by `depth` each
      roomFormula: acrossText(
        'half',
        ' * 2 * (radius * cos(a) - radius + rise) * (height - 2 * (radius * cos(a) - radius + rise))',
      ),
      roomMm3: (values) => {
        const { height = 0, rise = 0 } = values;
        const arc = arcOf(values);
        return acrossPack(arc, rise, arc.half, (depth) => 2 * depth * (height - 2 * depth));
      },
    },
  },
  constraints: [
    {
      code: 'ends-cannot-stand',
      symbol: 'rise',
      atMost: '207/1000 width',
      severity: 'stop',
      says: 'Ends that bow in {rise} on a face {width} wide cannot stand upright.',
      remedy: 'Make the rise at most {limit}.',
    },
    {
      code: 'ends-meet',
      symbol: 'rise',
      atMost: '1/4 height',
      severity: 'stop',
      says: 'Ends that bow in {rise} leave no room along a pack {height} long.',
      remedy: 'Make the rise at most {limit}.',
    },
    {
      code: 'tab-wider-than-panel',
      symbol: 'tab',
      atMost: 'width/2',
      severity: 'stop',
      says: 'The glue tab {tab} reaches past the middle of a face {width} wide.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'tab-ends-meet',
      symbol: 'tab',
      atMost: 'height/2 - 1/4 in',
      severity: 'stop',
      says: 'The slanted ends of a glue tab {tab} wide meet on a pack {height} long.',
      remedy: 'Make it at most {limit}.',
    },
  ],
  promises: [],
  traits: ['lid', 'flat-packet'],
});
