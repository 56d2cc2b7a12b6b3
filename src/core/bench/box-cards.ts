import type { BoxNet, PieceNet } from '../net/types';
import type { CardStep } from './card-step';
import { closingActs } from './program/closing-acts';
import { deriveProgram, type ProgramChoices } from './program/derive-program';
import type { BenchProgram, BenchTool } from './types';
import { cardSteps } from './words/card-steps';

/** How one piece of a box is made of its blank, or how finished pieces are glued to one another. */
export interface BoxProgram {
  readonly piece: PieceNet;
  readonly program: BenchProgram;
  /** It joins pieces that are made already: no blank, nothing to score or cut; `piece` is what they make together. */
  readonly joins: boolean;
}

/** A program with its words, as they stand on a card. */
export interface BoxCard extends BoxProgram {
  readonly tool: BenchTool;
  readonly steps: readonly CardStep[];
}

/** What a card that joins pieces says in place of its blank. */
export const JOINING = 'The pieces are made: crease them, lay them flat, and glue them to one another.';

/** What hands do to make a whole box: a program a piece, and last the one that joins them where the style glues piece to piece. */
export function boxPrograms(
  { pieces, whole }: BoxNet,
  tool: BenchTool,
  choices: ProgramChoices = {},
): readonly BoxProgram[] {
  return [
    ...pieces.map((piece) => ({ piece, program: deriveProgram(piece, tool, choices), joins: false })),
    ...(whole === undefined ? [] : [{ piece: whole, program: joinPieces(whole), joins: true }]),
  ];
}

/** The same with its words. */
export const boxCards = (box: BoxNet, tool: BenchTool, choices?: ProgramChoices): readonly BoxCard[] =>
  boxPrograms(box, tool, choices).map((made) => ({
    ...made,
    tool,
    steps: cardSteps(made.program, made.piece, box, tool),
  }));

const joinPieces = (whole: PieceNet): BenchProgram => ({
  piece: whole.id,
  faceUp: 'inside',
  ops: closingActs(whole),
  fenceSettings: 0,
  turns: 0,
});
