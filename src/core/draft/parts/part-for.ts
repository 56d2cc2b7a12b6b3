import type { Role } from '../../styles/language/types';
import { bottomFlap } from './bottom-flap';
import { glueTab } from './glue-tab';
import { dustFlap, lid, tuck } from './lid';
import { type Build, plainPart } from './spot';

const OWN_WAY: Partial<Readonly<Record<Role, Build>>> = { glueTab, bottomFlap, lid, tuck, dustFlap };

/** The panel of this role for an edge, with the sizes, sums and limits it needs. */
export const partFor = (role: Role): Build => OWN_WAY[role] ?? plainPart(role);
