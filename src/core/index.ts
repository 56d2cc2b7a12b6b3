/**
 * The core in forty names: from a box style to its net, its folding, its bench program and the sheets it takes. Pure: no page, clock, file or
 * chance. Lengths are whole ticks of 1/320 mm. `src/core/package/README.md` shows each at work, and a test runs what it shows.
 */

// what hands do, and whether that makes the net
export { type BenchTool, boxCards, boxPrograms, canonicalCard, canonicalNet, runProgram } from './bench';
// what a maker should know
export { checkBox, type Finding } from './checks';
// folded in space
export { closePiece, foldPiece, followClosing, roomInside } from './fold';
export type { Sizing } from './net';
// a style and sizes to a flat net, and its files
export { type BoxNet, dxfOf, fillSizes, foldTextOf, layNet, type PieceNet, readFold, svgOf } from './net';
// is a style sound?
export { legalBoxes, proveStyle, type StyleFault, sayProof } from './proof';
// styles
export { type BoxStyle, defineStyle, STYLES, StyleError, styleById } from './styles';
// lengths
export { inches, millimetres, printLength, readLength, rulerBeside, type Ticks, ticks, toMm } from './units';
export { sayReason } from './units/reason';
// how many sheets, with proof
export {
  type CuttingTool,
  checkPlan,
  planSheets,
  type SheetPaper,
  type SheetPart,
  type SheetPlan,
} from './yield';
