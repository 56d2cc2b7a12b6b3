/** Every role a panel can have. */
export const ROLES = [
  'wall',
  'base',
  'roof',
  'gusset',
  'lid',
  'tuck',
  'dustFlap',
  'bottomFlap',
  'lockFlap',
  'glueTab',
  'liner',
  'handle',
  'hangTab',
  'endFlap',
  'cover',
] as const;

export type Role = (typeof ROLES)[number];
