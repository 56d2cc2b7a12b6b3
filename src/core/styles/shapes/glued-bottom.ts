import type { ClosingStep, ConstraintSpec, FitSpec, JointSpec, PanelSpec } from '../language/types';
import type { Tube } from './glued-tube';
import { allowanceOf } from './size-symbols';

export const BOTTOM_SYMBOLS = {
  flap: allowanceOf(
    'Bottom flap',
    'From the bottom score to the flap’s free edge.',
    '1 1/4 in',
    '1/4 in',
    '12 in',
  ),
} as const;

export const BOTTOM_LETS = { hole: 'depth - 2 flap', lap: '2 flap - depth' } as const;

/** Four flaps that lap and are glued: the side flaps innermost, then the front, the back outermost. */
export const bottomFlaps = ({ across }: Tube): Readonly<Record<string, PanelSpec>> => ({
  frontFlap: { role: 'bottomFlap', size: [across.front, 'flap'], on: 'front.down', fold: 90 },
  leftFlap: { role: 'bottomFlap', size: [across.left, 'flap'], on: 'left.down', fold: 90 },
  backFlap: { role: 'bottomFlap', size: [across.back, 'flap'], on: 'back.down', fold: 90 },
  rightFlap: { role: 'bottomFlap', size: [across.right, 'flap'], on: 'right.down', fold: 90 },
});

export const BOTTOM_JOINTS: readonly JointSpec[] = [
  { panel: 'frontFlap', onto: 'leftFlap', lap: 'outside', carries: true },
  { panel: 'frontFlap', onto: 'rightFlap', lap: 'outside', carries: true },
  { panel: 'backFlap', onto: 'frontFlap', lap: 'outside', carries: true, when: 'lap' },
  { panel: 'backFlap', onto: 'leftFlap', lap: 'outside', carries: true, unless: 'lap' },
  { panel: 'backFlap', onto: 'rightFlap', lap: 'outside', carries: true, unless: 'lap' },
];

export const BOTTOM_OVERLAP = ['leftFlap', 'rightFlap', 'frontFlap', 'backFlap'] as const;

export const BOTTOM_CLOSING: readonly ClosingStep[] = [
  { do: 'fold', panels: ['leftFlap'] },
  { do: 'fold', panels: ['rightFlap'] },
  { do: 'fold', panels: ['frontFlap'] },
  { do: 'glue', panel: 'frontFlap', onto: 'leftFlap' },
  { do: 'glue', panel: 'frontFlap', onto: 'rightFlap' },
  { do: 'fold', panels: ['backFlap'] },
  { do: 'glue', panel: 'backFlap', onto: 'frontFlap' },
  { do: 'glue', panel: 'backFlap', onto: 'leftFlap' },
  { do: 'glue', panel: 'backFlap', onto: 'rightFlap' },
];

export const BOTTOM_LIMITS: readonly ConstraintSpec[] = [
  {
    code: 'bottom-leaves-hole',
    symbol: 'flap',
    atLeast: 'depth/2',
    severity: 'stop',
    says: 'Bottom flaps {flap} leave a hole {hole} wide.',
    remedy: 'Make them at least {limit}.',
  },
  {
    code: 'bottom-laps-little',
    symbol: 'flap',
    atLeast: 'depth/2 + 1/8 in',
    severity: 'warn',
    says: 'Bottom flaps {flap} overlap by only {lap}, too little for 1/4 in tape.',
    remedy: 'Make them at least {limit}.',
  },
  {
    code: 'flap-meets-wall',
    symbol: 'flap',
    atMost: 'depth',
    severity: 'stop',
    says: 'Bottom flaps {flap} are longer than the box is deep ({depth}) and meet the far wall.',
    remedy: 'Make them at most {limit}.',
  },
  {
    code: 'flap-binds',
    symbol: 'flap',
    atMost: 'depth - 1/16 in',
    severity: 'note',
    says: 'Bottom flaps {flap} long bind against the far wall of a box {depth} deep, because of the cardstock’s thickness.',
    remedy: 'Make them at most {limit}.',
  },
  {
    code: 'side-flap-meets-wall',
    symbol: 'flap',
    atMost: 'width',
    severity: 'stop',
    says: 'Bottom flaps {flap} are longer than the box is wide ({width}), so the side flaps meet the far wall.',
    remedy: 'Make them at most {limit}.',
  },
  {
    code: 'side-flap-binds',
    symbol: 'flap',
    atMost: 'width - 1/16 in',
    severity: 'note',
    says: 'Bottom flaps {flap} long bind against the far wall of a box {width} wide, because of the cardstock’s thickness.',
    remedy: 'Make them at most {limit}.',
  },
];

/** Every flap ends before the wall across from it, whose half thickness lies inside its score line. */
export const BOTTOM_FITS: readonly FitSpec[] = (
  [
    ['front to back', 'depth', 'flap-binds'],
    ['side to side', 'width', 'side-flap-binds'],
  ] as const
).map(([way, room, saidBy]) => ({
  what: `bottom flaps between the walls, ${way}`,
  room,
  body: 'flap',
  card: '1/2 t',
  ease: '1/32 in',
  marks: 4,
  truest: 'the bottom score and the free edge of the flaps',
  saves: 'Pare a little off the end of a flap that binds.',
  saidBy,
}));
