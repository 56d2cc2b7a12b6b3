import { CAUTIONS } from '../../../shared/catalogue';
import type { CautionCode } from '../../core/bench';

/** The catalogue's words for a caution of the card. */
export const sayCaution = (code: CautionCode): string =>
  CAUTIONS.find(({ hazard }) => hazard === code)?.says ?? code;
