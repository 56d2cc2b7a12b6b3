import { inEdges, inPanels } from '../add-ons/places';
import { defineStyle } from '../language/define';
import type { HoleSpec, Len } from '../language/types';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

const slot = (along: Len): HoleSpec => ({
  hole: 'slot',
  size: ['slot', 'slotLength'],
  at: [along, 'margin + height/2'],
});

/** A folded card whose back is doubled; both ends of a gift card go through slots into the double. Construction: common practice, no source. */
export const cardHolder = defineStyle({
  id: 'card-holder',
  version: 1,
  name: 'Card holder',
  source: 'common practice, no source; size of a gift card ISO/IEC 7810 ID-1 (from memory)',
  goodFor: 'A gift card, a hotel key, a tag of seeds: seen in full once the cover is lifted.',
  watchOut: 'The liner bows while the card goes in, so thick cardstock may crease.',
  symbols: {
    width: sizeOf('Card length', 'The long side of the card it holds.', '3 3/8 in', '2 in', '6 in'),
    height: sizeOf('Card height', 'The short side of the card it holds.', '2 1/8 in', '1 in', '4 in'),
    margin: sizeOf('Border', 'From the card to the edges of the cover.', '1/2 in', '7/16 in', '1 1/2 in'),
    spine: sizeOf('Spine', 'Between the two spine scores.', '1/4 in', '1/8 in', '1/2 in'),
    catch: allowanceOf(
      'Behind the liner',
      'How much of each end of the card goes behind, to the middle of its slot.',
      '3/8 in',
      '1/4 in',
      '1 in',
    ),
    slot: allowanceOf(
      'Slot',
      'Width of the slots. Punch a hole this wide at each end, then cut from hole to hole.',
      '1/8 in',
      '1/8 in',
      '1/4 in',
    ),
    play: allowanceOf(
      'Ease',
      'How much longer a slot is than the card is high.',
      '1/8 in',
      '1/16 in',
      '1/4 in',
    ),
    tab: allowanceOf(
      'Liner tab',
      'The strip that holds the liner at the spine.',
      '3/8 in',
      '5/16 in',
      '1 in',
    ),
    relief: allowanceOf(
      'Liner relief',
      'How much the liner stays clear of the spine, and its tab of both ends.',
      '1/16 in',
      '1/16 in',
      '1/8 in',
    ),
  },
  inside: ['width', 'spine - 3t', 'height + play'],
  slidesInBy: ['width', 'height'],
  lets: {
    coverAcross: 'width + 2 margin',
    coverUp: 'height + 2 margin',
    linerUp: 'coverUp - relief',
    slotLength: 'height + play',
    firstSlot: 'margin + catch',
    lastSlot: 'coverAcross - firstSlot',
  },
  addOns: {
    window: inPanels('holder', 'front'),
    notch: inEdges('holder', 'front.down'),
    corners: [{ id: 'front', label: 'On the front', piece: 'holder', at: ['front.down', 'front.right'] }],
  },
  pieces: {
    holder: {
      label: 'Holder',
      panels: {
        front: { role: 'cover', size: ['coverAcross', 'coverUp'] },
        spine: { role: 'wall', size: ['coverAcross', 'spine'], on: 'front.up', fold: 90 },
        back: { role: 'cover', size: ['coverAcross', 'coverUp'], on: 'spine.up', fold: 90 },
        liner: {
          role: 'liner',
          size: ['coverAcross', 'linerUp'],
          on: 'back.up',
          fold: 180,
          holes: [slot('firstSlot'), slot('lastSlot')],
        },
        tab: {
          role: 'glueTab',
          size: ['coverAcross - 2 relief', 'tab'],
          on: 'liner.up',
          at: 'relief',
          fold: 180,
          taper: '1/4 tab',
        },
      },
      joints: [{ panel: 'tab', onto: 'back', lap: 'inside' }],
      overlaps: [['liner', 'tab', 'back']],
      closing: [
        { do: 'fold', panels: ['tab'] },
        {
          do: 'fold',
          panels: ['liner'],
          tip: 'Try the card in both slots before you glue; widen a slot that holds it too tightly.',
        },
        { do: 'glue', panel: 'tab', onto: 'back' },
        { do: 'fold', panels: ['spine', 'back'] },
      ],
      // open on three sides: it bounds no room
      shell: [],
      roomMm3: () => 0,
      roomFormula: '0',
    },
  },
  constraints: [
    {
      code: 'tab-behind-card',
      symbol: 'tab',
      atMost: 'margin - relief',
      severity: 'stop',
      says: 'A liner tab {tab} wide lies where the card goes, {margin} from the spine.',
      remedy: 'Make it at most {limit}, or the border wider.',
    },
    {
      code: 'slots-near-score',
      symbol: 'margin',
      atLeast: '3/8 in + 1/2 play',
      severity: 'stop',
      says: 'A border of {margin} leaves less than 3/8 in between the slots and a score.',
      remedy: 'Make it at least {limit}.',
    },
    {
      code: 'card-mostly-behind',
      symbol: 'catch',
      atMost: 'width/4',
      severity: 'stop',
      says: 'With {catch} of each end behind the liner, half of a card {width} long is hidden.',
      remedy: 'Make it at most {limit}.',
    },
  ],
  promises: [],
  fits: [
    {
      what: 'liner beside the spine',
      room: 'coverUp',
      body: 'linerUp',
      card: 't',
      ease: '1/32 in',
      marks: 2,
      truest: 'the spine score and the end of the liner',
      saves: 'Pare the end of a liner that pushes the spine open.',
    },
  ],
  traits: ['lid', 'flat-packet'],
});
