export { type BoxCard, boxCards, boxPrograms, JOINING } from './box-cards';
export type { CardMark, CardStep, CautionCode, StepKind } from './card-step';
export type { BenchCard } from './equal/bench-card';
export { canonicalCard } from './equal/canonical-card';
export { type CanonicalForm, canonicalNet } from './equal/canonical-form';
export {
  type CardPlace,
  type Lie,
  placeAtBench,
  type Quarters,
  sizeAsItLies,
  toBench,
  toNet,
} from './equal/card-lie';
export { fallsAway } from './equal/cut-card';
export { newEdges, partsOnCard } from './equal/parts-on-card';
export { type CardTrouble, cardTrouble } from './equal/try-card';
export { type BenchRun, runProgram } from './equal/virtual-bench';
export { deriveProgram, type ProgramChoices } from './program/derive-program';
export type * from './types';
export { cardSteps } from './words/card-steps';
export { CAUTIONS } from './words/cautions';
export { panelLabels } from './words/panel-labels';
export { type ReadCard, readCard } from './words/read-card';
export type { CardKey } from './words/read-sentence';
