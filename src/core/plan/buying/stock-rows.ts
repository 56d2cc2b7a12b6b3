import type { BenchTool } from '../../bench/types';
import type { Paper, RollSupply, Supply, Tool } from '../../rows';
import { ticksOfMm } from '../../rows/lengths';
import { LONGEST_LENGTH, rulerBeside, type Ticks, USUAL_FINEST } from '../../units';
import type { CuttingTool, SheetPaper } from '../../yield/types';

/** A saved paper as the sheet that is cut. Print that stands one way decides how parts lie, whatever the grain. */
export const sheetOfPaper = (paper: Paper): SheetPaper => ({
  id: paper.id,
  across: ticksOfMm(paper.acrossMm),
  up: ticksOfMm(paper.upMm),
  ...(paper.oneWay ? { grain: 'up', oneWay: true } : { grain: paper.grain }),
  squaring: {
    left: ticksOfMm(paper.squaringMm.left),
    right: ticksOfMm(paper.squaringMm.right),
    near: ticksOfMm(paper.squaringMm.near),
    far: ticksOfMm(paper.squaringMm.far),
  },
  onHand: paper.onHandSheets,
});

const none = ticksOfMm(0);

/** A sheet as any shop sells it: not squared, its grain not known, none on hand. */
export const sheetAsSold = ({ id, across, up }: Pick<SheetPaper, 'id' | 'across' | 'up'>): SheetPaper => ({
  id,
  across,
  up,
  grain: 'none',
  squaring: { left: none, right: none, near: none, far: none },
  onHand: 0,
});

/** Tape, ribbon or twine: sold by the roll. */
export const isRolled = (supply: Supply): supply is RollSupply => 'rollMm' in supply;

/** A saved tool as a trimmer; without one, a ruler and a knife that cut any length. */
export const cuttingToolOf = (tool: Tool | undefined): CuttingTool => ({
  longestCut: tool ? ticksOfMm(tool.longestCutMm) : null,
  kerf: ticksOfMm(tool?.kerfMm ?? 0),
  stack: tool?.stack ?? 1,
  stages: tool?.quarterTurns === undefined ? 'free' : tool.quarterTurns === 1 ? 2 : 3,
});

/** A saved tool as the bench it scores on; without one, a ruler of sixteenths. */
export const benchToolOf = (tool: Tool | undefined): BenchTool => ({
  name: tool?.name ?? 'Ruler and bone folder',
  unit: tool?.unit ?? 'in',
  finestMark: tool ? ticksOfMm(tool.finestMarkMm) : USUAL_FINEST.in,
  reach: tool ? ticksOfMm(tool.reachMm) : LONGEST_LENGTH,
  longestCut: tool ? ticksOfMm(tool.longestCutMm) : LONGEST_LENGTH,
  kind: tool?.kind ?? 'fence',
  ...(tool?.leftHanded ? { fence: 'right' } : {}),
});

/** The marks that cuts are set to: a trimmer's own; beside a scoring board, which cuts nothing, those of the ruler. */
export const cutMarkOf = ({ kind, unit, finestMark }: BenchTool): Ticks =>
  kind === 'fence' ? finestMark : rulerBeside(unit, finestMark).finest;
