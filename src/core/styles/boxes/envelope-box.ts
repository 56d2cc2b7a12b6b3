import { inPanels } from '../add-ons/places';
import { defineStyle } from '../language/define';
import type { PanelSpec } from '../language/types';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

type Way = 'left' | 'right' | 'up' | 'down';

/** A spine as high as the packet and a flap that folds over it. Each layer of flaps lies one caliper higher, so nothing is drawn for it. */
const cover = (
  way: Way,
  spine: readonly [string, string],
  flap: readonly [string, string],
): Readonly<Record<string, PanelSpec>> => ({
  [`${way}Spine`]: { role: 'wall', size: spine, on: `base.${way}`, fold: 90 },
  [`${way}Flap`]: { role: 'lid', size: flap, on: `${way}Spine.${way}`, fold: 90 },
});

/** A flat packet that folds round what is in it. Construction: common practice, no source; FEFCO family 04 has wraps of this kind. */
export const envelopeBox = defineStyle({
  id: 'envelope-box',
  version: 1,
  name: 'Envelope box',
  source: 'common practice, no source; FEFCO family 04 has its corrugated cousins',
  goodFor: 'A folded scarf, a set of cards, a chocolate bar: a thick letter.',
  watchOut:
    'The corners are open, so don’t fill it with anything loose or fine. A band or a seal keeps it shut.',
  symbols: {
    width: sizeOf('Width', 'Back, score to score, left to right.', '4 1/4 in', '1 1/2 in', '10 in'),
    height: sizeOf('Height', 'Back, score to score, bottom to top.', '5 1/2 in', '1 1/2 in', '12 in'),
    thick: sizeOf('Thickness', 'The spines, score to score.', '1/2 in', '1/4 in', '2 in'),
    sideFlap: allowanceOf(
      'Side flap',
      'How far the left and right flaps reach over.',
      'width/2 + 1/4 in',
      '1/2 in',
      '8 in',
    ),
    endFlap: allowanceOf(
      'End flap',
      'How far the lower and upper flaps reach over.',
      'height/2 + 1/4 in',
      '1/2 in',
      '8 in',
    ),
  },
  inside: ['width - t', 'height - t', 'thick - 3t'],
  slidesInBy: ['width', 'height'],
  lets: { sideLap: '2 sideFlap - width', endLap: '2 endFlap - height' },
  addOns: {
    window: inPanels('envelope', 'base'),
    corners: [
      { id: 'flap', label: 'On the outer flap', piece: 'envelope', at: ['upFlap.up', 'upFlap.left'] },
    ],
  },
  pieces: {
    envelope: {
      label: 'Envelope',
      panels: {
        base: { role: 'base', size: ['width', 'height'] },
        ...cover('left', ['thick', 'height'], ['sideFlap', 'height']),
        ...cover('right', ['thick', 'height'], ['sideFlap', 'height']),
        ...cover('down', ['width', 'thick'], ['width', 'endFlap']),
        ...cover('up', ['width', 'thick'], ['width', 'endFlap']),
      },
      joints: [],
      overlaps: [['leftFlap', 'rightFlap', 'downFlap', 'upFlap']],
      closing: [
        { do: 'fold', panels: ['leftSpine'] },
        { do: 'fold', panels: ['leftFlap'] },
        { do: 'fold', panels: ['rightSpine'] },
        { do: 'fold', panels: ['rightFlap'] },
        { do: 'fold', panels: ['downSpine'] },
        { do: 'fold', panels: ['downFlap'] },
        { do: 'fold', panels: ['upSpine'] },
        { do: 'fold', panels: ['upFlap'], tip: 'Close it with a seal or a band.' },
      ],
      seams: [
        ['leftSpine.down', 'downSpine.left'],
        ['rightSpine.down', 'downSpine.right'],
        ['leftSpine.up', 'upSpine.left'],
        ['rightSpine.up', 'upSpine.right'],
      ],
      shell: ['base', 'leftSpine', 'rightSpine', 'downSpine', 'upSpine'],
      roomMm3: ({ width = 0, height = 0, thick = 0 }) => width * height * thick,
      roomFormula: 'width * height * thick',
    },
  },
  constraints: [
    {
      code: 'corners-leave-hole',
      symbol: 'cornerRadius',
      atMost: '2 endFlap - height',
      severity: 'stop',
      given: [{ corners: 'flap' }],
      says: 'Corners rounded by {cornerRadius} reach past the flap below, and leave holes at the sides.',
      remedy: 'Make the radius at most {limit}, or the end flaps longer.',
    },
    {
      code: 'side-flaps-gape',
      symbol: 'sideFlap',
      atLeast: 'width/2',
      severity: 'warn',
      says: 'Side flaps {sideFlap} do not meet over a packet {width} wide.',
      remedy: 'Make them at least {limit}.',
    },
    {
      code: 'side-flap-too-long',
      symbol: 'sideFlap',
      atMost: 'width - 1/16 in',
      severity: 'stop',
      says: 'Side flaps {sideFlap} are too long for a packet {width} wide and meet the far spine.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'end-flaps-gape',
      symbol: 'endFlap',
      atLeast: 'height/2',
      severity: 'stop',
      says: 'End flaps {endFlap} leave a gap over a packet {height} high.',
      remedy: 'Make them at least {limit}.',
    },
    {
      code: 'end-flap-too-long',
      symbol: 'endFlap',
      atMost: 'height - 1/16 in',
      severity: 'stop',
      says: 'End flaps {endFlap} are too long for a packet {height} high and meet the far spine.',
      remedy: 'Make them at most {limit}.',
    },
  ],
  promises: [
    { claim: 'covers', piece: 'envelope', panels: ['downFlap', 'upFlap'], area: ['width', 'height'] },
  ],
  fits: (
    [
      ['side', 'width', 'sideFlap', 'side-flap-too-long'],
      ['end', 'height', 'endFlap', 'end-flap-too-long'],
    ] as const
  ).map(([name, room, body, saidBy]) => ({
    what: `${name} flaps between the spines`,
    room,
    body,
    card: '1/2 t',
    ease: '1/32 in',
    marks: 4,
    truest: `the spine scores and the free edge of the ${name} flaps`,
    saves: 'Pare a little off the end of a flap that binds.',
    saidBy,
  })),
  traits: ['lid', 'flat-packet'],
});
