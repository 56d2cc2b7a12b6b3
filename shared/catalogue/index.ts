export {
  type Caution,
  cautionsOf,
  type Hazard,
} from '../../src/core/rows/cautions';
export { HAND_TIMES } from '../../src/core/rows/hand-times';

export {
  BASIS_GRADES,
  type BasisGrade,
  estimateCaliperUm,
  FINISHES,
  gsmOfPounds,
  poundsOfGsm,
  readCaliperUm,
  readGrammage,
  soldAs,
  weightWays,
} from './paper-weights';
export { type CatalogueSheet, SHEETS, sheetById } from './sheets';
