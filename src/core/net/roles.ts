import type { Role } from '../styles/language/types';

/** Every role a panel can have, for reading files. */
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
] as const satisfies readonly Role[];
