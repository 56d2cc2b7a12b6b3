export type { BenchCard } from './bench-card';
export { type BoxCard, boxCards, boxPrograms, JOINING } from './box-cards';
export { canonicalCard } from './canonical-card';
export { type CanonicalForm, canonicalNet } from './canonical-form';
export {
  type CardPlace,
  type Lie,
  placeAtBench,
  type Quarters,
  sizeAsItLies,
  toBench,
  toNet,
} from './card-lie';
export type { CardMark, CardStep, CautionCode, StepKind } from './card-step';
export { fallsAway } from './cut-card';
export { deriveProgram, type ProgramChoices } from './derive-program';
export { newEdges, partsOnCard } from './parts-on-card';
export { type CardTrouble, cardTrouble } from './try-card';
export type * from './types';
export { type BenchRun, runProgram } from './virtual-bench';
export { cardSteps } from './words/card-steps';
export { CAUTIONS } from './words/cautions';
export { panelLabels } from './words/panel-labels';
export { type ReadCard, readCard } from './words/read-card';
export type { CardKey } from './words/read-sentence';
