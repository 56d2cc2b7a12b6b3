import type { Recipe, Tool } from '../../shared/workbook';
import { type BenchProgram, type BenchTool, type CardStep, cardSteps, deriveProgram } from '../core/bench';
import type { PieceNet } from '../core/net';
import { benchToolOf } from '../core/plan';
import type { Ruler } from '../core/units';
import { boxOfRecipe, countStops } from './box-result';

/** The bench card of one piece: its program, and the program in words. */
export interface BenchCardOfPiece {
  readonly piece: PieceNet;
  readonly program: BenchProgram;
  readonly tool: BenchTool;
  readonly steps: readonly CardStep[];
}

export interface BenchResult {
  /** Findings that must be mended before a card makes sense. */
  readonly stops: number;
  readonly cards: readonly BenchCardOfPiece[];
}

/** The cards of a recipe on the maker's tool. */
export function benchOfRecipe(recipe: Recipe, tool: Tool | undefined, ruler: Ruler): BenchResult | null {
  const box = boxOfRecipe(recipe, tool);
  if (!box) return null;
  const bench = { ...benchToolOf(tool), ...(tool ? {} : { unit: ruler.unit, finestMark: ruler.finest }) };
  const cards = box.net.pieces.map((piece): BenchCardOfPiece => {
    const program = deriveProgram(piece, bench, { faceUp: recipe.faceUp });
    return { piece, program, tool: bench, steps: cardSteps(program, piece, box.net, bench) };
  });
  return { stops: countStops(box), cards };
}
