import { caliperTicks } from '../net/name-values';
import type { BoxNet } from '../net/types';
import type { Dressing, DressingPiece, PieceFit } from '../rows/dressing';
import { ticksOfMm } from '../rows/lengths';
import { inches, markAbove, markBelow, nearestMark, type Ticks, ticks } from '../units';
import { type Reason, reason } from '../units/reason';
import type { FlatSize } from './panel-size';

type Divides = Extract<PieceFit, { rule: 'divides' }>;
type OnFloor = Extract<PieceFit, { rule: 'on-floor' }>;

/** Least card between two holes, and half of it beside the outer ones. source: common practice, no source */
const BETWEEN_HOLES = inches(0, 1, 4);
/** A slot is so much wider than the card that goes into it. source: 1/64 in, our choice */
const SLOT_EASE = inches(0, 1, 64);

/**
 * What an insert is smaller than the room: the maker's ease. A room as large as the style says it is takes a body smaller by two calipers
 * (`checkItemRoom`), and two sides folded down stand half a card beyond their scores: an insert is never larger than that.
 */
export function insertEase(net: BoxNet, fit: Divides | OnFloor): Ticks {
  const calipers = fit.rule === 'on-floor' && fit.riseMm > 0 ? 3 : 2;
  return ticks(Math.max(ticksOfMm(fit.easeMm), calipers * caliperTicks(net.caliperUm)));
}

/**
 * A strip that divides the room: from wall to wall less its ease, as high as it is asked to be; null where the room is lower, or where its
 * cells are so narrow that marks would make the outer ones less than half as wide as the others. Its length is an even number of marks, so
 * that its slots lie alike from both ends.
 */
export function dividerSize(net: BoxNet, fit: Divides, mark: Ticks): FlatSize | null {
  const { width, depth, height } = net.inside;
  const up = ticksOfMm(fit.heightMm);
  const room = fit.runs === 'across' ? width : depth;
  const across = markBelow(ticks(room - insertEase(net, fit)), ticks(2 * mark));
  const { first, step } = partings(across, cellsAlong(fit), mark);
  return up > height || step <= 0 || 2 * first < step ? null : { across, up };
}

const cellsAlong = ({ runs, columns, rows }: Divides): number => (runs === 'across' ? columns : rows);

/** Equal steps along a length, in the middle of it: where the first is and how far each is from the one before. */
interface Steps {
  readonly count: number;
  readonly first: Ticks;
  readonly step: Ticks;
}

/** So many cuts that part a length into cells alike, on the maker's marks and alike from both ends: a strip may be turned end for end. */
function partings(length: Ticks, cells: number, mark: Ticks): Steps {
  const steps = cells - 2;
  const step = nearestMark(ticks(Math.round(length / cells)), ticks(steps % 2 === 0 ? mark : 2 * mark));
  return { count: cells - 1, step, first: ticks((length - steps * step) / 2) };
}

/** The slots of a divider: where they lie along it, how deep and how wide they are, and from which edge. */
export interface Slots extends Steps {
  readonly deep: Ticks;
  readonly wide: Ticks;
  readonly from: 'top' | 'bottom';
}

/** Two strips of one height meet half-way; where half the height is no mark, both slots reach a little farther, so that both strips stand. */
export function slotsOf(net: BoxNet, fit: Divides, size: FlatSize, mark: Ticks): Slots {
  return {
    ...partings(size.across, cellsAlong(fit), mark),
    deep: markAbove(ticks(Math.ceil(size.up / 2)), mark),
    wide: ticks(caliperTicks(net.caliperUm) + SLOT_EASE),
    from: fit.runs === 'across' ? 'top' : 'bottom',
  };
}

/** The plate that lies on the floor, or stands on the sides folded down: between its scores. */
const plateOf = (net: BoxNet, fit: OnFloor, mark: Ticks): FlatSize => {
  const ease = insertEase(net, fit);
  return {
    across: markBelow(ticks(net.inside.width - ease), mark),
    up: markBelow(ticks(net.inside.depth - ease), mark),
  };
};

/** Cut size of a floor; null where it stands higher than the room, or its holes leave too little card. */
export function floorSize(net: BoxNet, fit: OnFloor, mark: Ticks): FlatSize | null {
  const plate = plateOf(net, fit, mark);
  const rise = ticksOfMm(fit.riseMm);
  if (rise > net.inside.height) return null;
  const { holes } = fit;
  if (holes) {
    const wide = ticksOfMm(holes.acrossMm);
    const leaves = (length: Ticks, count: number) => leavesCard(length, wide, middles(length, count, mark));
    if (!leaves(plate.across, holes.columns) || !leaves(plate.up, holes.rows)) return null;
  }
  return { across: ticks(plate.across + 2 * rise), up: ticks(plate.up + 2 * rise) };
}

/** The middles of so many holes along a plate, each in its share of it, on the maker's marks. */
function middles(length: Ticks, count: number, mark: Ticks): Steps {
  const step = nearestMark(ticks(Math.round(length / count)), mark);
  const first = nearestMark(ticks(Math.round((length - (count - 1) * step) / 2)), mark);
  return { count, step, first };
}

/** Whether holes leave enough card: by their number, and where marks have put them. */
function leavesCard(length: Ticks, wide: Ticks, { count, first, step }: Steps): boolean {
  const last = first + (count - 1) * step;
  return (
    count * (wide + BETWEEN_HOLES) + BETWEEN_HOLES <= length &&
    (count === 1 || step - wide >= BETWEEN_HOLES) &&
    Math.min(first, length - last) - wide / 2 >= BETWEEN_HOLES / 2
  );
}

const length = (of: Ticks) => ({ length: of });

/** What is cut and scored on an insert once it has its size, in sentences; nothing for a plain piece. */
export function insertCuts(
  net: BoxNet,
  { fit }: DressingPiece,
  size: FlatSize,
  mark: Ticks,
): readonly Reason[] {
  if (fit?.rule === 'divides') {
    const { count, first, step, deep, wide, from } = slotsOf(net, fit, size, mark);
    const facts = { count: { count }, first: length(first), step: length(step), deep: length(deep) };
    const isTop = from === 'top';
    const one = isTop
      ? 'Slot from the top edge at {first} from the left end, {deep} deep.'
      : 'Slot from the bottom edge at {first} from the left end, {deep} deep.';
    const many = isTop
      ? '{count} slots from the top edge, {deep} deep: the first at {first} from the left end, then every {step}.'
      : '{count} slots from the bottom edge, {deep} deep: the first at {first} from the left end, then every {step}.';
    return [
      reason(count === 1 ? one : many, facts),
      reason('Cut each slot {wide} wide: the thickness of the cardstock and a hair more.', {
        wide: length(wide),
      }),
    ];
  }
  return fit?.rule === 'on-floor' ? floorCuts(net, fit, mark) : [];
}

/** How an insert is cut, in numbers: what its picture shows. All places from the left end and from below. */
export interface InsertPlan extends FlatSize {
  readonly slots: null | (Pick<Slots, 'deep' | 'wide' | 'from'> & { readonly at: readonly Ticks[] });
  /** How far sides are folded down all round; 0 where it lies flat. */
  readonly rise: Ticks;
  readonly holes: null | {
    readonly shape: 'round' | 'square';
    readonly wide: Ticks;
    readonly across: readonly Ticks[];
    readonly up: readonly Ticks[];
  };
}

const placesOf = ({ count, first, step }: Steps, from: Ticks = ticks(0)): readonly Ticks[] =>
  Array.from({ length: count }, (_, at) => ticks(from + first + at * step));

/** Null for a piece that is cut plain. */
export function insertPlan(
  net: BoxNet,
  { fit }: DressingPiece,
  size: FlatSize,
  mark: Ticks,
): InsertPlan | null {
  if (fit?.rule === 'divides') {
    const slots = slotsOf(net, fit, size, mark);
    return { ...size, rise: ticks(0), holes: null, slots: { ...slots, at: placesOf(slots) } };
  }
  if (fit?.rule !== 'on-floor' || (fit.riseMm === 0 && !fit.holes)) return null;
  const rise = ticksOfMm(fit.riseMm);
  const plate = plateOf(net, fit, mark);
  const { holes } = fit;
  return {
    ...size,
    rise,
    slots: null,
    holes: holes
      ? {
          shape: holes.shape,
          wide: ticksOfMm(holes.acrossMm),
          across: placesOf(middles(plate.across, holes.columns, mark), rise),
          up: placesOf(middles(plate.up, holes.rows, mark), rise),
        }
      : null,
  };
}

const holeWords = ({ shape, columns, rows }: NonNullable<OnFloor['holes']>): string => {
  if (columns * rows === 1)
    return shape === 'round' ? 'One round hole, {wide} wide.' : 'One square hole, {wide} wide.';
  return shape === 'round'
    ? '{columns} × {rows} round holes, {wide} wide.'
    : '{columns} × {rows} square holes, {wide} wide.';
};

function floorCuts(net: BoxNet, fit: OnFloor, mark: Ticks): readonly Reason[] {
  const rise = ticksOfMm(fit.riseMm);
  const legs =
    fit.riseMm > 0
      ? [
          reason('Score {rise} from every edge, cut the four corners away, and fold the sides down.', {
            rise: length(rise),
          }),
        ]
      : [];
  const { holes } = fit;
  if (!holes) return legs;
  const plate = plateOf(net, fit, mark);
  const fromEdge = (of: Ticks, count: number): Steps => {
    const places = middles(of, count, mark);
    return { ...places, first: ticks(rise + places.first) };
  };
  const across = fromEdge(plate.across, holes.columns);
  const up = fromEdge(plate.up, holes.rows);
  const wide = length(ticksOfMm(holes.acrossMm));
  const facts = { wide, columns: { text: `${across.count}` }, rows: { text: `${up.count}` } };
  return [
    ...legs,
    reason(holeWords(holes), facts),
    across.count === 1
      ? reason('Middle across: {first}.', { first: length(across.first) })
      : reason('Middles across: the first at {first}, then every {step}.', {
          first: length(across.first),
          step: length(across.step),
        }),
    up.count === 1
      ? reason('Middle up: {first}.', { first: length(up.first) })
      : reason('Middles up: the first at {first}, then every {step}.', {
          first: length(up.first),
          step: length(up.step),
        }),
  ];
}

/** A dressing whose dividers make so many cells: both families follow, and as many strips of each as are needed. */
export const withCells = (
  dressing: Dressing,
  cells: Partial<Pick<Divides, 'columns' | 'rows' | 'heightMm' | 'easeMm'>>,
): Dressing => ({
  ...dressing,
  pieces: dressing.pieces.map((piece) => {
    if (piece.fit?.rule !== 'divides') return piece;
    const fit = { ...piece.fit, ...cells };
    return { ...piece, fit, perBox: (fit.runs === 'across' ? fit.rows : fit.columns) - 1 };
  }),
});
