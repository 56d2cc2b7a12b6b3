import { toDegrees } from '../../units/angles';
import type { ConstraintSpec, CreaseSpec, FitSpec, PanelSpec, Quantity, Values } from '../language/types';
import { sizeOf } from './size-symbols';

/** How far a roof leans in over its slant, as a share of it. */
const lean = ({ depth = 0, roof = 0 }: Values): number => depth / 2 / roof;

export const GABLE_SYMBOLS = {
  roof: sizeOf('Roof', 'From the eave score to the ridge score, up the slant.', '1 1/2 in', '1/2 in', '6 in'),
} as const;

/** Two halves of the depth that add up to it whatever its last tick. */
export const GABLE_LETS = { nearHalf: 'depth/2', farHalf: 'depth - nearHalf', seamRelief: '0' } as const;

export const GABLE_ANGLES = {
  eave: {
    means: 'fold of a roof at the eave',
    of: (values) => toDegrees(Math.asin(lean(values))),
    formula: 'asin(depth / 2 / roof)',
  },
  backToUpright: {
    means: 'fold that turns the ridge strip upright again',
    of: (values) => -toDegrees(Math.asin(lean(values))),
    formula: '-asin(depth / 2 / roof)',
  },
  gussetFold: {
    means: 'fold of a gusset’s slanted creases',
    of: (values) => -(180 - toDegrees(Math.acos(lean(values) ** 2))),
    formula: '-(180 - acos((depth / 2 / roof) ** 2))',
  },
} as const satisfies Record<string, Quantity>;

/**
 * Roofs on front and back, and over each side a gusset that folds in between them: a triangle on the side wall, and beside it two more that
 * hang on the roofs and fold shut under them. The slanted creases are off the tree and close as seams. The last triangle hangs on the tab.
 */
export const GABLE_PANELS: Readonly<Record<string, PanelSpec>> = {
  frontRoof: { role: 'roof', size: ['width', 'roof'], on: 'front.up', fold: 'eave' },
  backRoof: { role: 'roof', size: ['width', 'roof'], on: 'back.up', fold: 'eave' },
  roofTab: { role: 'glueTab', size: ['tab', 'roof'], on: 'tab.up', fold: 'eave' },
  leftGusset: { role: 'gusset', outline: [['nearHalf', 'roof']], on: 'left.up', fold: 'eave' },
  rightGusset: { role: 'gusset', outline: [['nearHalf', 'roof']], on: 'right.up', fold: 'eave' },
  leftFrontFold: { role: 'gusset', outline: [['roof', 'farHalf']], on: 'frontRoof.right', fold: 180 },
  leftBackFold: { role: 'gusset', outline: [['0', 'nearHalf']], on: 'backRoof.left', fold: 180 },
  rightBackFold: { role: 'gusset', outline: [['roof', 'farHalf']], on: 'backRoof.right', fold: 180 },
  rightFrontFold: { role: 'gusset', outline: [['0', 'nearHalf']], on: 'roofTab.left', fold: 180 },
};

export const GABLE_CREASES: readonly CreaseSpec[] = [
  { between: ['leftGusset.e2', 'leftFrontFold.e1'], fold: 'gussetFold' },
  { between: ['leftGusset.e1', 'leftBackFold.e2'], fold: 'gussetFold' },
  { between: ['rightGusset.e2', 'rightBackFold.e1'], fold: 'gussetFold' },
  { between: ['rightGusset.e1', 'rightFrontFold.e2'], fold: 'gussetFold' },
];

/** Faces under the ridge that bound the room with the walls; what folds shut counts once each way and bounds nothing. */
export const GABLE_SHELL = Object.keys(GABLE_PANELS).filter((name) => name !== 'roofTab');

/** Walls and a hip roof whose ridge is shorter than the width by the depth. mm³. */
export const gableRoom = (values: Values): number => {
  const { width = 0, depth = 0, height = 0, roof = 0 } = values;
  const rise = Math.sqrt(roof * roof - (depth * depth) / 4);
  return width * depth * height + (depth * rise * (3 * width - depth)) / 6;
};

/** The same as text, for a style file. */
export const GABLE_ROOM =
  'width * depth * height + depth * sqrt(roof * roof - depth * depth / 4) * (3 * width - depth) / 6';

export const GABLE_LIMITS: readonly ConstraintSpec[] = [
  {
    code: 'roofs-do-not-meet',
    symbol: 'roof',
    atLeast: '3/5 depth',
    severity: 'stop',
    says: 'Roofs {roof} long are too short to meet over a box {depth} deep.',
    remedy: 'Make them at least {limit}.',
  },
  {
    code: 'gussets-meet',
    symbol: 'width',
    atLeast: 'depth',
    severity: 'stop',
    says: 'The two gussets of a box {depth} deep meet under a ridge {width} long.',
    remedy: 'Make the width at least {limit}.',
  },
  {
    code: 'gussets-touch',
    symbol: 'width',
    atLeast: 'depth + 1/16 in',
    severity: 'note',
    says: 'The two gussets of a box {depth} deep touch under a ridge {width} long; one that is a hair long pushes the other.',
    remedy: 'Make the width at least {limit}.',
  },
  {
    code: 'tab-touches-gusset',
    symbol: 'tab',
    atMost: 'width - farHalf - 1/16 in',
    severity: 'note',
    says: 'The glue tab {tab} touches the gusset folded in under the front roof, {farHalf} wide.',
    remedy: 'Make it at most {limit}.',
  },
  {
    code: 'tab-meets-gusset',
    symbol: 'tab',
    atMost: 'width - farHalf',
    severity: 'stop',
    says: 'The glue tab {tab} runs into the gusset folded in under the front roof, {farHalf} wide.',
    remedy: 'Make it at most {limit}.',
  },
];

/** What is folded in under the ridge lies side by side there. */
export const GABLE_FITS: readonly FitSpec[] = [
  {
    what: 'gussets beside each other under the ridge',
    room: 'width',
    body: 'nearHalf + farHalf',
    card: '0 in',
    ease: '1/32 in',
    marks: 4,
    truest: 'the four scores between the walls',
    saves: 'Score the four walls from one edge, without turning the blank round.',
    saidBy: 'gussets-touch',
  },
  {
    what: 'glue tab beside the gusset under the front roof',
    room: 'width',
    body: 'farHalf + tab',
    card: '0 in',
    ease: '1/32 in',
    marks: 4,
    truest: 'the score and the free edge of the glue tab',
    saves: 'Pare the tab where the gusset folds in.',
    saidBy: 'tab-touches-gusset',
  },
];
