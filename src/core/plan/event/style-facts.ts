import { type BenchTool, deriveProgram } from '../../bench';
import { layNet } from '../../net/lay-net';
import type { PieceNet } from '../../net/types';
import type { BoxStyle } from '../../styles/language/types';
import { inches, type Ticks, ticks } from '../../units';
import { type CuttingTool, countOnSheet, type SheetPaper, sheetsEach } from '../../yield';

const UNTRIMMED = { left: ticks(0), right: ticks(0), near: ticks(0), far: ticks(0) };
/** source: ANSI/ASME Y14.1, size A, 8.5 × 11 in */
export const LETTER: SheetPaper = {
  id: 'letter',
  across: inches(8, 1, 2),
  up: inches(11),
  grain: 'none',
  squaring: UNTRIMMED,
  onHand: 0,
};

/** What a maker picks a style by. */
export type StyleMerit = 'lid' | 'tall' | 'flat-packet' | 'no-glue' | 'trimmer-only' | 'one-sheet';

export interface StyleFacts {
  readonly id: string;
  readonly merits: ReadonlySet<StyleMerit>;
  /** Sheets that one favor takes when a batch is cut: each piece laid alone, as many as the sheet gives. Null: a piece is larger than the sheet. */
  readonly sheetsPerFavor: number | null;
}

export interface FactsAsked {
  /** Sizes by symbol; what a style does not know, or what is not given, keeps the style's own. */
  readonly sizes: Readonly<Record<string, Ticks>>;
  readonly caliperUm: number;
  readonly sheet: SheetPaper;
  readonly cutting: CuttingTool;
  readonly bench: BenchTool;
}

/**
 * A style as this maker would make it. Whether it has a lid, stands tall or lies flat its declaration says; that it takes no glue, and that its
 * scores all run the full width of the card, is read off the net and its bench program.
 */
export function factsOfStyle(
  style: BoxStyle,
  { sizes, caliperUm, sheet, cutting, bench }: FactsAsked,
): StyleFacts {
  const known = Object.fromEntries(Object.entries(sizes).filter(([symbol]) => symbol in style.symbols));
  const { pieces } = layNet(style, { sizes: known, caliperUm });
  const sheetsPerFavor = sheetsOfPieces(pieces, sheet, cutting);
  return { id: style.id, merits: meritsOf(style, pieces, bench, sheetsPerFavor), sheetsPerFavor };
}

/** What a laid box has to offer. `sheets`: what one box takes; null where a piece is larger than the sheet. */
export function meritsOf(
  style: BoxStyle,
  pieces: readonly PieceNet[],
  bench: BenchTool,
  sheets: number | null,
): ReadonlySet<StyleMerit> {
  const merits = new Set<StyleMerit>(style.traits);
  const isGlued = pieces.some(
    ({ joints, faces }) => joints.length > 0 || faces.some(({ role }) => role === 'glueTab'),
  );
  if (!isGlued) merits.add('no-glue');
  const scoredOnTrimmer = pieces.every((piece) =>
    deriveProgram(piece, bench).ops.every(
      (act) => act.op !== 'scoreLine' && act.op !== 'scoreCurve' && (act.op !== 'score' || act.span === null),
    ),
  );
  if (scoredOnTrimmer) merits.add('trimmer-only');
  if (sheets !== null && sheets <= 1) merits.add('one-sheet');
  return merits;
}

/** Sheets one box takes when a batch is cut, its pieces lying as they like. */
export const sheetsOfPieces = (
  pieces: readonly PieceNet[],
  sheet: SheetPaper,
  cutting: CuttingTool,
): number | null =>
  sheetsEach(
    pieces,
    ({ id, blank: { across, up } }) => countOnSheet({ id, across, up, grain: 'free' }, sheet, cutting).count,
  );
