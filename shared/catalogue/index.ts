export {
  type Caution,
  cautionsOf,
  type Hazard,
} from './cautions';
export { HAND_TIMES } from './hand-times';

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
} from './paper-weights';
export { type CatalogueSheet, SHEETS, sheetById } from './sheets';
