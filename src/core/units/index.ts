export { setFraction } from './fraction-signs';
export { LENGTH_REFUSALS } from './length-refusals';
export {
  isOnMark,
  type LengthUnit,
  MARK_STEPS,
  markAbove,
  markBelow,
  markRoughness,
  nearestMark,
  type Ruler,
  rulerBeside,
  USUAL_FINEST,
} from './marks';
export { type PrintedLength, printLength, spellLength } from './print-length';
export { readGrams } from './read-grams';
export {
  LONGEST_LENGTH,
  type ReadLength,
  readLength,
} from './read-length';
export { readSizes } from './read-sizes';
export * from './ticks';
