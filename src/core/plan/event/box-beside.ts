import { type BenchTool, boxPrograms } from '../../bench';
import { asItStands, type BoxNet } from '../../net';
import type { Ticks } from '../../units';
import type { CuttingTool, SheetPaper } from '../../yield';
import { handSecondsOfBox } from './one-box';
import { sheetsOfPieces } from './style-facts';

/** A box in the numbers by which a maker weighs it against another. */
export interface BoxBeside {
  readonly inside: BoxNet['inside'];
  readonly cards: readonly { readonly piece: string; readonly across: Ticks; readonly up: Ticks }[];
  /** Scores made from the fence or by a ruler, all pieces together. */
  readonly scores: number;
  /** Of the distances set for scores and slits, those that lie between the tool's marks. */
  readonly betweenMarks: number;
  /** Different distances that the fence is set to. */
  readonly settings: number;
  /** Boxes from one sheet if a batch is cut, each piece by itself; null where a piece is larger than the sheet. */
  readonly boxesPerSheet: number | null;
  /** Room within the score lines of the piece that holds the contents (a drawer, not its sleeve), mm³; null where a style closes round none, or the net does not tell. */
  readonly roomMm3: number | null;
  /** Hand work, by usual hand times. */
  readonly seconds: number;
}

/** A laid box as one column of a comparison, on this bench and cut from this sheet (none: not counted). */
export function boxBeside(
  net: BoxNet,
  bench: BenchTool,
  cutting: CuttingTool,
  sheet: SheetPaper | null,
): BoxBeside {
  const ops = boxPrograms(net, bench).flatMap(({ program }) => program.ops);
  const set = ops.flatMap((act) => (act.op === 'score' || act.op === 'slit' ? [act.at] : []));
  const sheets = sheet && sheetsOfPieces(net.pieces, sheet, cutting);
  return {
    inside: net.inside,
    cards: net.pieces.map(({ label, blank: { across, up } }) => ({ piece: label, across, up })),
    scores: ops.filter(({ op }) => op === 'score' || op === 'scoreLine' || op === 'scoreCurve').length,
    betweenMarks: set.filter((at) => at % bench.finestMark !== 0).length,
    settings: new Set(set).size,
    boxesPerSheet: sheets === null ? null : 1 / sheets,
    roomMm3: asItStands(net).find(({ lid, roomMm3 }) => !lid && roomMm3 > 0)?.roomMm3 ?? null,
    seconds: handSecondsOfBox(net, bench),
  };
}
