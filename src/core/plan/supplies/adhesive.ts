import { tapeJoints } from '../../net/joint-tape';
import type { GlueSupply } from '../../rows';
import { ticksOfMm } from '../../rows/lengths';
import { TICKS_PER_MM, type Ticks, ticks } from '../../units';
import { type Reason, reason } from '../../units/reason';
import type { EventBox } from '../event/event-boxes';
import type { TapeStrip } from '../event/types';
import { TAPE_INSET, tapeOfBox } from './plan-tape';

/** What holds one joint or one dressing piece: tape in strips, or liquid glue on the whole glued panel. */
export interface AdhesiveRow extends TapeStrip {
  readonly by: 'tape' | 'glue';
  /** The widest tape that still leaves card free beside it; nothing for glue. */
  readonly widest: Ticks | null;
  readonly why: readonly Reason[];
}

/** The adhesive plan of one box. */
export interface AdhesivePlan {
  readonly rows: readonly AdhesiveRow[];
  /** Tape of one box, every strip added up. */
  readonly tape: Ticks;
  /** Liquid glue of one box, in milligrams, wet. */
  readonly glueMg: number;
  /** How long each joint is rubbed down or held, and left alone before it is loaded; minutes. */
  readonly pressMinutes: number;
  readonly setMinutes: number;
}

/**
 * Tape is rubbed down and holds at once; its full hold comes with the hours. source: common practice, no source; the bottle of a liquid glue
 * says its own.
 */
const TAPE_TIMES = { pressMinutes: 0, setMinutes: 0 } as const;

/** Strip by strip and joint by joint what one box of a line takes; the boxes' own joints are glued where a glue is given. */
export function planAdhesive(box: Pick<EventBox, 'net' | 'pieces'>, glue: GlueSupply | null): AdhesivePlan {
  const taped = tapeOfBox(box, glue !== null).map((strip): AdhesiveRow => {
    const widest = ticks(Math.max(0, strip.depth - TAPE_INSET));
    return { ...strip, by: 'tape', widest, why: whyStrip(strip, widest) };
  });
  const glued = glue
    ? box.net.pieces
        .flatMap((piece) => tapeJoints(piece, 1))
        .map((strip): AdhesiveRow => ({ ...strip, by: 'glue', widest: null, why: whyGlue(strip, glue) }))
    : [];
  return {
    rows: [...glued, ...taped],
    tape: ticks(taped.reduce((sum, { length, strips }) => sum + length * strips, 0)),
    glueMg: glue ? glued.reduce((sum, strip) => sum + glueMg(strip, glue), 0) : 0,
    ...(glue ? { pressMinutes: glue.pressMinutes, setMinutes: glue.dryMinutes } : TAPE_TIMES),
  };
}

/** Milligrams on one joint, taken up: area × what is spread on a square meter. */
const glueMg = ({ length, depth }: TapeStrip, { gramsPerSquareMetre }: GlueSupply): number =>
  Math.ceil((length * depth * gramsPerSquareMetre) / (1000 * TICKS_PER_MM * TICKS_PER_MM));

const whyStrip = ({ length, strips, depth, onto }: TapeStrip, widest: Ticks): readonly Reason[] => [
  reason(saysOf(strips, onto), { strips, length: { length }, total: { length: ticks(length * strips) } }),
  reason('Tape no wider than {depth} − {inset} = {widest}.', {
    depth: { length: depth },
    inset: { length: TAPE_INSET },
    widest: { length: widest },
  }),
];

const saysOf = (strips: number, onto: string | null): string => {
  if (strips === 1) return 'One strip of {length}.';
  return onto === null
    ? '{strips} strips of {length}: {total}.'
    : 'This joint carries weight, so {strips} strips of {length} side by side: {total}.';
};

const whyGlue = (strip: TapeStrip, glue: GlueSupply): readonly Reason[] => [
  reason('{length} × {depth} spread thinly: {mg} mg.', {
    length: { length: strip.length },
    depth: { length: strip.depth },
    mg: glueMg(strip, glue),
  }),
];

/** Whether a tape this wide (mm) keeps within a row. */
export const tapeFits = ({ widest }: AdhesiveRow, widthMm: number): boolean =>
  widest === null || ticksOfMm(widthMm) <= widest;
