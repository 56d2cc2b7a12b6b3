export { clipTo, deepestOverlap, outsideParts, overlapDepth } from './clip';
export { type LabelShape, labelOutline } from './label-outline';
export { convexParts, fewConvexParts, hullOf, type Triangle, trianglesOf } from './parts';
export {
  type At,
  areaOf,
  atOf,
  type Box,
  boxesOverlap,
  boxOf,
  boxRing,
  contains,
  cornerAt,
  counterClockwise,
  distanceOutside,
  distanceToBorder,
  gcd,
  isConvex,
  type Ring,
  sideOf,
} from './ring';
