export { type BoxCard, boxCards, boxPrograms, JOINING } from './box-cards';
export type { CardMark, CardStep, CautionCode, StepKind } from './card-step';
export { type BenchCard, faceUpOf } from './equal/bench-card';
export { canonicalCard } from './equal/canonical-card';
export { canonicalNet } from './equal/canonical-form';
export {
  asSeen,
  type CardPlace,
  type Lie,
  placeAtBench,
  sizeAsItLies,
  toBench,
  toNet,
} from './equal/card-lie';
export { fallsAway } from './equal/cut-card';
export { newEdges, partsOnCard } from './equal/parts-on-card';
export { cardTrouble } from './equal/try-card';
export { runProgram } from './equal/virtual-bench';
export { drawnLie } from './first-lie';
export { deriveProgram } from './program/derive-program';
export { type StepSubject, subjectOf } from './step-subject';
export type * from './types';
export { cardSteps } from './words/card-steps';
export { CAUTIONS } from './words/cautions';
export { panelLabels } from './words/panel-labels';
