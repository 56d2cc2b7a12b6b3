import type { BoxStyle } from '../../src/core/styles';

/** What may be added to a style. */
export const ADD_ONS = ['window', 'notch', 'slot', 'ribbon', 'corners', 'hangTab', 'pull'] as const;
export type AddOn = (typeof ADD_ONS)[number];

export const bears = (style: BoxStyle, addOn: AddOn): boolean => (style.addOns?.[addOn] ?? []).length > 0;

/** A style that has it from the start, and so is not asked. */
export const BUILT_IN: Readonly<Record<string, Partial<Record<AddOn, string>>>> = {
  'gift-bag': { ribbon: 'two holes in front and back' },
  'square-pyramid': { ribbon: 'four holes at its tips, where it is tied' },
  'web-pail': { ribbon: 'a hole in each end' },
  'handle-basket': { slot: 'a strip to carry it by' },
  'lid-flap': { corners: 'the tuck is cut slanted, round or with slits' },
  'straight-tuck': { corners: 'the tuck is cut slanted, round or with slits' },
  'reverse-tuck': { corners: 'the tuck is cut slanted, round or with slits' },
  'snap-lock': { corners: 'the tuck is cut slanted, round or with slits' },
  'crash-lock': { corners: 'the tuck is cut slanted, round or with slits' },
};

const MADE_TWICE =
  'its panels are cut in two pieces and laid a second time as one; an add-on would have to be both';
const BENDS = 'its walls bend, and an opening tears there';
const NO_CUTS = 'it is folded from whole squares, without a cut';
const TRIANGLES = 'its panels are triangles that close on glued edges';
const LIDDED_RIM = 'every edge of its rim carries a flap, a lid or a seam';
const UNDER_LID = 'a lid slides over its walls and covers a notch or binds on ribbon';
const ALL_JOINED = 'every corner of its card lies at a fold or a seam';
const NOTHING_TO_GRIP = 'it opens without a grip in an edge';
const CARRIED_FROM_BELOW = 'it is too small or too light to be carried by a slot';
const TABLE_BOX = 'it stands on a table; a header would tip it when it hangs';
const LAYERS = 'another layer lies behind each of its panels';
const SMALL_WALLS = 'its walls are narrower than a window worth a film';

/** Why only drawers have a ribbon pull. */
export const NO_DRAWER = 'nothing of it slides out';

/** Why a style bears no such add-on: what a maker would meet. */
export const WHY_NOT: Readonly<Record<string, Partial<Record<AddOn, string>>>> = {
  'open-top': { corners: ALL_JOINED },
  'two-part-box': {
    window: MADE_TWICE,
    notch: MADE_TWICE,
    slot: MADE_TWICE,
    ribbon: MADE_TWICE,
    hangTab: MADE_TWICE,
    corners: ALL_JOINED,
  },
  'lid-flap': { slot: UNDER_LID, ribbon: LIDDED_RIM },
  'snap-lock': { slot: UNDER_LID, ribbon: LIDDED_RIM },
  'crash-lock': { slot: UNDER_LID, ribbon: LIDDED_RIM },
  'straight-tuck': { slot: UNDER_LID, ribbon: LIDDED_RIM },
  'reverse-tuck': { slot: UNDER_LID, ribbon: LIDDED_RIM },
  'gable-top': {
    notch: LIDDED_RIM,
    hangTab: LIDDED_RIM,
    corners: 'a glued tab lies behind one corner of its handle',
  },
  'fin-top': {
    notch: LIDDED_RIM,
    hangTab: LIDDED_RIM,
    slot: 'six layers meet in its fin',
    ribbon: 'its gussets lie in the fin and may meet in the middle of it',
    corners: 'a glued tab lies behind one corner of its fin',
  },
  'petal-top': {
    notch: LIDDED_RIM,
    slot: LIDDED_RIM,
    ribbon: LIDDED_RIM,
    hangTab: LIDDED_RIM,
    corners: 'its petals are round already',
  },
  house: {
    notch: LIDDED_RIM,
    slot: LIDDED_RIM,
    ribbon: 'the ridge flap and the gable tabs lie behind both roofs',
    hangTab: LIDDED_RIM,
    corners: ALL_JOINED,
  },
  'gift-bag': {
    notch: 'ribbon holes lie below its rim',
    slot: 'ribbon holes lie below its rim',
    hangTab: 'ribbon holes lie below its rim',
    corners: ALL_JOINED,
  },
  'hinged-lid': { slot: UNDER_LID, hangTab: TABLE_BOX },
  tray: {
    window: 'its walls are low and its floor carries what is in it',
    corners: ALL_JOINED,
    hangTab: TABLE_BOX,
  },
  'handle-basket': {
    window: MADE_TWICE,
    notch: MADE_TWICE,
    ribbon: MADE_TWICE,
    hangTab: TABLE_BOX,
    corners: ALL_JOINED,
  },
  'tray-lid': { corners: ALL_JOINED, hangTab: TABLE_BOX },
  'opening-out': {
    notch: UNDER_LID,
    slot: UNDER_LID,
    corners: 'two rounded walls leave a hole where they meet',
    hangTab: TABLE_BOX,
  },
  'folded-square': {
    window: NO_CUTS,
    notch: NO_CUTS,
    slot: NO_CUTS,
    ribbon: NO_CUTS,
    corners: NO_CUTS,
    hangTab: NO_CUTS,
  },
  'double-wall': {
    window: 'its walls are low and its floor carries what is in it',
    slot: 'two of its walls are double and the other two hold them',
    corners: ALL_JOINED,
    hangTab: TABLE_BOX,
  },
  'sleeve-drawer': { slot: CARRIED_FROM_BELOW, corners: ALL_JOINED, hangTab: 'the drawer would slide out' },
  'prism-lid': {
    notch: UNDER_LID,
    slot: UNDER_LID,
    ribbon: UNDER_LID,
    corners: ALL_JOINED,
    hangTab: UNDER_LID,
  },
  'star-box': {
    window: SMALL_WALLS,
    notch: SMALL_WALLS,
    slot: SMALL_WALLS,
    corners: ALL_JOINED,
    hangTab: SMALL_WALLS,
  },
  'lidded-star': {
    window: SMALL_WALLS,
    notch: UNDER_LID,
    slot: SMALL_WALLS,
    ribbon: UNDER_LID,
    corners: ALL_JOINED,
    hangTab: UNDER_LID,
  },
  'pillow-pack': { window: BENDS, slot: BENDS, ribbon: BENDS, corners: ALL_JOINED, hangTab: BENDS },
  'square-pyramid': {
    window: TRIANGLES,
    notch: TRIANGLES,
    slot: TRIANGLES,
    corners: TRIANGLES,
    hangTab: TRIANGLES,
  },
  'twist-pouch': {
    window: TRIANGLES,
    notch: TRIANGLES,
    slot: TRIANGLES,
    ribbon: TRIANGLES,
    corners: TRIANGLES,
    hangTab: TRIANGLES,
  },
  cornet: {
    window: TRIANGLES,
    notch: TRIANGLES,
    slot: TRIANGLES,
    ribbon: TRIANGLES,
    corners: TRIANGLES,
    hangTab: TRIANGLES,
  },
  'rolled-cone': { window: BENDS, notch: BENDS, slot: BENDS, ribbon: BENDS, corners: BENDS, hangTab: BENDS },
  'flared-bowl': {
    window: TABLE_BOX,
    notch: NOTHING_TO_GRIP,
    slot: CARRIED_FROM_BELOW,
    corners: ALL_JOINED,
    hangTab: TABLE_BOX,
  },
  'web-pail': {
    window: 'its walls flare and its webs lie on both ends',
    notch: LIDDED_RIM,
    slot: LIDDED_RIM,
    hangTab: LIDDED_RIM,
  },
  wedge: {
    notch: LIDDED_RIM,
    slot: LIDDED_RIM,
    ribbon: LIDDED_RIM,
    corners: ALL_JOINED,
    hangTab: LIDDED_RIM,
  },
  'three-sided-bar': {
    notch: LIDDED_RIM,
    slot: CARRIED_FROM_BELOW,
    ribbon: LIDDED_RIM,
    corners: 'its end tabs are cut slanted already',
    hangTab: LIDDED_RIM,
  },
  'envelope-box': {
    notch: NOTHING_TO_GRIP,
    slot: CARRIED_FROM_BELOW,
    ribbon: LAYERS,
    hangTab: LIDDED_RIM,
  },
  'pocket-envelope': { slot: CARRIED_FROM_BELOW, ribbon: LAYERS, hangTab: LIDDED_RIM },
  wallet: { window: LAYERS, slot: CARRIED_FROM_BELOW, ribbon: LAYERS, hangTab: 'it opens like a book' },
  'card-holder': { slot: CARRIED_FROM_BELOW, ribbon: LAYERS, hangTab: 'it opens like a book' },
  'bag-topper': {
    window: LAYERS,
    notch: NOTHING_TO_GRIP,
    hangTab: 'it is a header itself: punch it for ribbon',
  },
  'bar-wrapper': {
    notch: 'it is glued round what is in it and torn open',
    slot: CARRIED_FROM_BELOW,
    ribbon: 'it is glued round what is in it and torn open',
    corners: ALL_JOINED,
    hangTab: 'it is glued round what is in it and torn open',
  },
};
