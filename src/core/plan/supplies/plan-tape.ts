import { tapeJoints } from '../../net/joint-tape';
import { asItStands } from '../../net/lay-net';
import type { DressingPiece, RollSupply } from '../../rows';
import { ticksOfMm } from '../../rows/lengths';
import { inches, type Ticks, ticks } from '../../units';
import type { EventBox } from '../event/event-boxes';
import { remark } from '../event/remarks';
import type { EventFinding, PlannedRolls, TapeStrip } from '../event/types';
import { rollOut } from './plan-rolls';

/** Card left free beside the tape, so that it does not show. source: common practice, no source */
export const TAPE_INSET = inches(0, 1, 8);

/** Strips that hold one dressing piece: across its top and bottom, or the lap of a band. source: common practice, no source */
export const USUAL_STRIPS = {
  liner: 2,
  layer: 2,
  band: 1,
  tag: 0,
  window: 2,
  divider: 0,
  'raised-floor': 0,
  cushion: 0,
} as const satisfies Record<DressingPiece['kind'], number>;

/** A band whose lap nobody typed. source: common practice, no source */
const USUAL_LAP = inches(0, 1, 2);

/** A band is held where its ends lie on one another. */
const lapOf = ({ fit }: DressingPiece): Ticks => (fit?.rule === 'around' ? ticksOfMm(fit.lapMm) : USUAL_LAP);

/** Tape for one box of a line: the joints of its pieces that tape fits, unless they are glued, then every dressing piece. */
export function tapeOfBox(
  { net, pieces }: Pick<EventBox, 'net' | 'pieces'>,
  glued: boolean,
): readonly TapeStrip[] {
  const joints = glued
    ? []
    : asItStands(net).flatMap((piece) => tapeJoints(piece).filter(({ glueOnly }) => !glueOnly));
  const dressed = pieces.map(({ piece, size }): TapeStrip => {
    const strips = (piece.strips ?? USUAL_STRIPS[piece.kind]) * piece.perBox;
    const length = piece.kind === 'band' ? size.up : size.across;
    const depth = piece.kind === 'band' ? lapOf(piece) : size.up;
    return { panel: piece.name, onto: null, length, strips, depth };
  });
  return [...joints, ...dressed.filter(({ strips }) => strips > 0)];
}

export interface TapedLine {
  readonly box: EventBox;
  readonly strips: readonly TapeStrip[];
}

const lengthOfStrips = (strips: readonly TapeStrip[]): Ticks =>
  ticks(strips.reduce((sum, strip) => sum + strip.length * strip.strips, 0));

/** Rolls of tape for all boxes; each strip in one piece. No rolls where nothing is taped, or no tape is chosen. */
export function planTape(
  lines: readonly TapedLine[],
  tape: RollSupply | undefined,
): { readonly rolls: PlannedRolls | null; readonly findings: readonly EventFinding[] } {
  const perBox = ticks(Math.max(0, ...lines.map(({ strips }) => lengthOfStrips(strips))));
  if (perBox === 0) return { rolls: null, findings: [] };
  if (!tape) return { rolls: null, findings: [remark('tape-missing', 'tape', '', { perBox })] };

  const pieces = lines.flatMap(({ box, strips }) =>
    strips.map((strip) => ({ length: strip.length, count: strip.strips * box.making })),
  );
  const { rolls, findings } = rollOut(tape, pieces, perBox);
  return { rolls, findings: [...findings, ...lines.flatMap((line) => tooWide(tape, line))] };
}

function tooWide(tape: RollSupply, { box, strips }: TapedLine): EventFinding[] {
  const width = ticksOfMm(tape.widthMm);
  const shallow = strips.reduce((least, strip) => Math.min(least, strip.depth), Number.POSITIVE_INFINITY);
  if (width + TAPE_INSET <= shallow) return [];
  const facts = { tape: width, depth: ticks(shallow), limit: ticks(Math.max(0, shallow - TAPE_INSET)) };
  return [remark('tape-too-wide', box.line.id, box.recipe.name, facts)];
}
