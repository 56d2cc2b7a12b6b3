import { defineStyle } from '../language/define';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';
import { trayPiece } from '../shapes/tray-piece';

/** FEFCO family 05 (slide: sleeve and inner); construction: common practice, no source. */
export const sleeveDrawer = defineStyle({
  id: 'sleeve-drawer',
  version: 1,
  name: 'Sleeve and drawer',
  source: 'common practice, no source; FEFCO family 05 is its corrugated cousin',
  goodFor: 'Chocolates in a row, a bracelet, a set of cards: it opens like a matchbox.',
  watchOut: 'The fit is everything: cut one sleeve and try it before cutting forty.',
  symbols: {
    width: sizeOf('Width', 'Drawer floor, score to score, across the slide.', '3 in', '1 in', '10 in'),
    depth: sizeOf('Length', 'Drawer floor, score to score, in the slide direction.', '4 in', '1 in', '12 in'),
    height: sizeOf('Height', 'Drawer wall, from its score to the rim.', '1 in', '3/8 in', '4 in'),
    tab: allowanceOf('Sleeve tab', 'The strip that closes the sleeve.', '1/2 in', '3/8 in', '1 1/2 in'),
    relief: allowanceOf(
      'Tab relief',
      'How much each corner tab of the drawer is kept short.',
      '1/16 in',
      '0 in',
      '1/4 in',
    ),
    ease: allowanceOf(
      'Ease',
      'How much smaller the drawer is than its sleeve, both sides together.',
      '3/64 in',
      '0 in',
      '1/8 in',
    ),
  },
  inside: ['width - t', 'depth - t', 'height - t'],
  allowances: { growth: '2t + ease', rise: '5/2 t + ease' },
  lets: { sleeveWidth: 'width + growth', sleeveHeight: 'height + rise' },
  addOns: {
    ribbon: [{ id: 'drawer', label: 'A pull in the front of the drawer', piece: 'drawer', at: ['front'] }],
    pull: [{ id: 'drawer', label: 'In the front of the drawer', piece: 'drawer', at: ['front'] }],
    window: [{ id: 'top', label: 'In the top of the sleeve', piece: 'sleeve', at: ['top'] }],
    notch: [
      { id: 'one-end', label: 'At one end of the sleeve', piece: 'sleeve', at: ['top.up', 'bottom.up'] },
      {
        id: 'both-ends',
        label: 'At both ends of the sleeve',
        piece: 'sleeve',
        at: ['top.up', 'bottom.up', 'top.down', 'bottom.down'],
      },
      { id: 'drawer', label: 'In the front of the drawer', piece: 'drawer', at: ['front.down'] },
    ],
  },
  quantities: {
    drawerTab: {
      means: 'corner tab of the drawer: short of the rim, and of half the wall it is glued to',
      of: ({ height = 0, depth = 0, relief = 0 }) => Math.min(height, depth / 2) - relief,
      formula: 'min(height, depth / 2) - relief',
    },
  },
  pieces: {
    drawer: trayPiece('Drawer', { width: 'width', depth: 'depth', height: 'height', tab: 'drawerTab' }),
    sleeve: {
      label: 'Sleeve',
      panels: {
        bottom: { role: 'base', size: ['sleeveWidth', 'depth'] },
        right: { role: 'wall', size: ['sleeveHeight', 'depth'], on: 'bottom.right', fold: 90 },
        top: { role: 'cover', size: ['sleeveWidth', 'depth'], on: 'right.right', fold: 90 },
        left: { role: 'wall', size: ['sleeveHeight', 'depth'], on: 'top.right', fold: 90 },
        tab: { role: 'glueTab', size: ['tab', 'depth'], on: 'left.right', fold: 90 },
      },
      joints: [{ panel: 'tab', onto: 'bottom', lap: 'inside' }],
      seams: [['left.right', 'bottom.left']],
      closing: [
        { do: 'fold', panels: ['left'], to: 180 },
        { do: 'fold', panels: ['right'], to: 180 },
        {
          do: 'glue',
          panel: 'tab',
          onto: 'bottom',
          tip: 'Glue the sleeve while it lies flat, then try the drawer in it.',
        },
        { do: 'fold', panels: ['right', 'top', 'left', 'tab'] },
      ],
      shell: ['bottom', 'right', 'top', 'left'],
      roomMm3: ({ sleeveWidth = 0, sleeveHeight = 0, depth = 0 }) => sleeveWidth * sleeveHeight * depth,
      roomFormula: 'sleeveWidth * sleeveHeight * depth',
    },
  },
  constraints: [
    {
      code: 'relief-eats-tab',
      symbol: 'relief',
      atMost: 'height - 1/4 in',
      severity: 'stop',
      says: 'Relief {relief} leaves too little of the corner tabs to glue.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'tab-wider-than-bottom',
      symbol: 'tab',
      atMost: 'width',
      severity: 'stop',
      says: 'The sleeve’s tab {tab} is wider than its bottom, {width}.',
      remedy: 'Make it at most {limit}.',
    },
  ],
  promises: [{ claim: 'nests', inner: 'drawer', outer: 'sleeve', gap: ['growth', 'rise'], slides: true }],
  fits: [
    {
      what: 'drawer in its sleeve, across',
      room: 'sleeveWidth',
      body: 'width',
      card: '2t',
      ease: 'ease',
      marks: 4,
      truest: 'the side scores of the drawer and the first two scores of the sleeve',
      saves: 'Make the drawer first and try it in one sleeve before you cut the rest.',
    },
    {
      // half of the sleeve's top and bottom, its glue tab, and half of the drawer's floor
      what: 'drawer in its sleeve, up and down',
      room: 'sleeveHeight',
      body: 'height',
      card: '5/2 t',
      ease: 'ease',
      marks: 4,
      truest: 'the height of the drawer wall and of the sleeve wall',
      saves: 'Make the drawer first and try it in one sleeve before you cut the rest.',
    },
  ],
  traits: ['lid'],
});
