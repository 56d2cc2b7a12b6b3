export { canonicalCard } from './canonical-card';
export { type CanonicalForm, canonicalNet } from './canonical-form';
export { type Lie, type Quarters, sizeAsItLies, toBench, toNet } from './card-lie';
export type { CardMark, CardStep, CautionCode, StepKind } from './card-step';
export { deriveProgram, type ProgramChoices } from './derive-program';
export type * from './types';
export { type BenchRun, runProgram } from './virtual-bench';
