import { ticksOfMm } from '../../../shared/lengths';
import type { DressingPiece, RollSupply } from '../../../shared/workbook';
import { inches, millimetres, type Ticks, ticks } from '../units';
import type { EventBox } from './event-boxes';
import { STRIPS_UNDER_LOAD, tapeJoints } from './joint-tape';
import { remark } from './remarks';
import { fillRolls } from './rolls';
import type { EventFinding, PlannedRolls, TapeStrip } from './types';

/** Card left free beside the tape, so that it does not show. source: common practice, no source */
const TAPE_INSET = inches(0, 1, 8);

/** Strips that hold one dressing piece: across its top and bottom, or the lap of a band. source: common practice, no source */
const STRIPS_OF_PIECE = { liner: 2, layer: 2, band: 1, tag: 0, window: 2 } as const satisfies Record<
  DressingPiece['kind'],
  number
>;

/** Tape for one box of a line: every joint of its pieces, then every dressing piece. */
export function tapeOfBox({ net, dressing }: EventBox, underLoad = STRIPS_UNDER_LOAD): readonly TapeStrip[] {
  const joints = net.pieces.flatMap((piece) => tapeJoints(piece, underLoad));
  const pieces = (dressing?.pieces ?? []).map((piece): TapeStrip => {
    const [width, height] = [ticksOfMm(piece.widthMm), ticksOfMm(piece.heightMm)];
    const strips = STRIPS_OF_PIECE[piece.kind] * piece.perBox;
    return {
      panel: piece.name,
      onto: null,
      length: piece.kind === 'band' ? height : width,
      strips,
      depth: height,
    };
  });
  return [...joints, ...pieces.filter(({ strips }) => strips > 0)];
}

const lengthOfStrips = (strips: readonly TapeStrip[]): Ticks =>
  ticks(strips.reduce((sum, strip) => sum + strip.length * strip.strips, 0));

/** Rolls of tape for all boxes; each strip in one piece. Null when nothing is taped, or no tape is chosen. */
export function planTape(
  boxes: readonly EventBox[],
  tape: RollSupply | undefined,
): { readonly rolls: PlannedRolls | null; readonly findings: readonly EventFinding[] } {
  const perLine = boxes.map((box) => ({ making: box.making, strips: tapeOfBox(box), box }));
  const perBox = ticks(Math.max(0, ...perLine.map(({ strips }) => lengthOfStrips(strips))));
  if (perBox === 0) return { rolls: null, findings: [] };
  if (!tape) return { rolls: null, findings: [remark('tape-missing', 'tape', '', { perBox })] };

  const pieces = perLine.flatMap(({ making, strips }) =>
    strips.map((strip) => ({ length: strip.length, count: strip.strips * making })),
  );
  const rollLength = millimetres(tape.rollMm);
  const rolls = fillRolls(pieces, rollLength);
  const total = ticks(pieces.reduce((sum, { length, count }) => sum + length * count, 0));
  const findings = [
    ...rolls.tooLong.map(({ length }) =>
      remark('longer-than-roll', tape.id, tape.name, { length, roll: rollLength }),
    ),
    ...perLine.flatMap(({ strips, box }) => tooWide(tape, strips, box)),
  ];
  return {
    rolls: { supplyId: tape.id, name: tape.name, kind: 'tape', perBox, total, rollLength, rolls },
    findings,
  };
}

function tooWide(tape: RollSupply, strips: readonly TapeStrip[], { line, recipe }: EventBox): EventFinding[] {
  const width = ticksOfMm(tape.widthMm);
  const shallow = strips.reduce((least, strip) => Math.min(least, strip.depth), Number.POSITIVE_INFINITY);
  if (width + TAPE_INSET <= shallow) return [];
  const facts = { tape: width, depth: ticks(shallow), limit: ticks(Math.max(0, shallow - TAPE_INSET)) };
  return [remark('tape-too-wide', line.id, recipe.name, facts)];
}
