export {
  CAUTIONS,
  type Caution,
  cautionsAbout,
  cautionsOf,
  type Hazard,
  hazardsInside,
  hazardsNamed,
} from './cautions';
export { ALLOWANCE_PERCENT, HAND_TIMES, type HandAct, type HandTime, LEARNING_PERCENT } from './hand-times';
export { PACK_SIZES, ROLLS, TAPE_WIDTHS } from './packs';
export {
  BASIS_GRADES,
  type BasisGrade,
  estimateCaliperUm,
  FINISHES,
  type Finish,
  gsmOfPounds,
  poundsOfGsm,
  readCaliperUm,
  readGrammage,
  soldAs,
} from './paper-weights';
export { type CatalogueSheet, SHEETS, sheetById } from './sheets';
