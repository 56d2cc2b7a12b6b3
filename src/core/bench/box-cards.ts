import type { BoxNet, PieceNet } from '../net/types';
import { closingActs } from './assembly-acts';
import type { CardStep } from './card-step';
import { deriveProgram, type ProgramChoices } from './derive-program';
import type { BenchProgram, BenchTool } from './types';
import { cardSteps } from './words/card-steps';

/** One card of a box: how a piece is made of its blank, or how finished pieces are glued to one another. */
export interface BoxCard {
  readonly piece: PieceNet;
  readonly program: BenchProgram;
  readonly tool: BenchTool;
  readonly steps: readonly CardStep[];
  /** It joins pieces that are made already: no blank, nothing to score or cut; `piece` is what they make together. */
  readonly joins: boolean;
}

/** What hands do to make a whole box: a card a piece, and last the one that joins them where the style glues piece to piece. */
export function boxCards(box: BoxNet, tool: BenchTool, choices: ProgramChoices = {}): readonly BoxCard[] {
  const card = (piece: PieceNet, program: BenchProgram, joins: boolean): BoxCard => ({
    piece,
    program,
    tool,
    steps: cardSteps(program, piece, box, tool),
    joins,
  });
  return [
    ...box.pieces.map((piece) => card(piece, deriveProgram(piece, tool, choices), false)),
    ...(box.whole === undefined ? [] : [card(box.whole, joinPieces(box.whole), true)]),
  ];
}

const joinPieces = (whole: PieceNet): BenchProgram => ({
  piece: whole.id,
  faceUp: 'inside',
  ops: closingActs(whole),
  fenceSettings: 0,
  turns: 0,
});
