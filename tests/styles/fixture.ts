import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { layNet, linesOf, type PieceNet } from '../../src/core/net';
import type { BoxStyle } from '../../src/core/styles';
import { millimetres, TICKS_PER_INCH, TICKS_PER_MM, type Ticks, ticks } from '../../src/core/units/ticks';

type Line = readonly [x1: number, y1: number, x2: number, y2: number];

interface HandWorkedPiece {
  readonly blank: readonly [number, number];
  readonly scores: readonly Line[];
  readonly curves?: readonly (readonly [...Line, radius: number])[];
  readonly slits: readonly Line[];
  readonly room: number;
}

export interface HandWorked {
  readonly title: string;
  readonly unit: 'in' | 'mm';
  readonly caliperUm: number;
  readonly mark?: number;
  readonly options?: Readonly<Record<string, string>>;
  readonly sizes: Readonly<Record<string, number>>;
  readonly pieces: Readonly<Record<string, HandWorkedPiece>>;
}

/** Hand-worked sizes of one style, the arithmetic beside them; `convex` says whether its room is its own convex hull. */
export interface StyleFixture {
  readonly comment: readonly string[];
  readonly convex: boolean;
  readonly cases: readonly HandWorked[];
}

const pathOf = (style: string) => join('tests/fixtures/styles', `${style}.json`);
const ROOT = join(import.meta.dirname, '../..');

/** What a style's fixture must hold and does not, in words; nothing when it is there with two cases. */
export function missingFixture(style: BoxStyle): readonly string[] {
  const path = join(ROOT, pathOf(style.id));
  const cases = existsSync(path) ? readFixture(style.id).cases.length : 0;
  if (cases >= 2) return [];
  const pieces = layNet(style, { sizes: {}, caliperUm: 305 }).pieces.map(({ id }) => id);
  return [
    `${pathOf(style.id)} ${cases === 0 ? 'is missing' : `holds ${cases} case`}. Work two sizes by hand, one in inches, one in millimetres:`,
    '  comment: the arithmetic in words, a line a case',
    '  convex:  true if the room is the hull of its corners, else false',
    '  cases:   two of { title, unit, caliperUm, sizes, pieces }; mark and options where they matter',
    `  sizes:   ${Object.keys(style.symbols).join(', ')} (the defaults where left out)`,
    `  pieces:  ${pieces.join(', ')}, each { blank: [across, up], scores, slits, room }`,
    '  scores and slits: [x1, y1, x2, y2] from the lower left corner of the blank, inside up;',
    '  curves: the same with the radius behind; room in cubic units, 0 where a piece holds nothing',
  ];
}

export const readFixture = (style: string): StyleFixture =>
  JSON.parse(readFileSync(join(ROOT, pathOf(style)), 'utf8')) as StyleFixture;

/** A hand-worked number as ticks, to the nearest. */
const lengthOf = ({ unit }: HandWorked, value: number): Ticks =>
  unit === 'mm' ? millimetres(value) : ticks(Math.round(value * TICKS_PER_INCH));

/** A case as `layNet` takes it. */
export const sizingOf = (worked: HandWorked) => ({
  sizes: Object.fromEntries(
    Object.entries(worked.sizes).map(([name, value]) => [name, lengthOf(worked, value)]),
  ),
  caliperUm: worked.caliperUm,
  ...(worked.mark === undefined ? {} : { mark: lengthOf(worked, worked.mark) }),
  ...(worked.options === undefined ? {} : { options: worked.options }),
});

/** Cubic units of a case in mm³. */
const roomMm3 = ({ unit }: HandWorked, room: number): number =>
  room * (unit === 'mm' ? 1 : (TICKS_PER_INCH / TICKS_PER_MM) ** 3);

type Numbers = readonly number[];

const turned = ([a = 0, b = 0, c = 0, d = 0]: Numbers): Numbers => [c, d, a, b];
/** Irrational corners are worked to five places, and hang on corners rounded before: two ticks (.006 mm) either way is the same line. */
const same = (p: Numbers, q: Numbers): boolean => p.every((value, at) => Math.abs(value - (q[at] ?? 0)) <= 2);

/** Lines on one side that the other side does not have, whichever way they run. */
const missing = (lines: readonly Numbers[], among: readonly Numbers[]): readonly Numbers[] =>
  lines.filter((line) => !among.some((other) => same(line, other) || same(turned(line), other)));

const endsOf = ({ from, to }: ReturnType<typeof linesOf>[number]): Numbers => [from.x, from.y, to.x, to.y];

/** Where a net is not what was worked by hand, a line a fault: the piece, the numbers by hand and those of the net. */
export function faultsByHand(style: BoxStyle, worked: HandWorked): readonly string[] {
  const box = layNet(style, sizingOf(worked));
  const ids = box.pieces.map(({ id }) => id);
  const wanted = Object.keys(worked.pieces);
  if (ids.join() !== wanted.join())
    return [`pieces: ${wanted.join(', ')} by hand, ${ids.join(', ')} in the net`];
  return box.pieces.flatMap((piece) => {
    const hand = worked.pieces[piece.id];
    return hand === undefined
      ? []
      : faultsOfPiece(piece, hand, worked).map((fault) => `${piece.id}: ${fault}`);
  });
}

function faultsOfPiece(piece: PieceNet, hand: HandWorkedPiece, worked: HandWorked): readonly string[] {
  const inTicks = (line: Numbers): Numbers => line.map((value) => lengthOf(worked, value));
  const asWorked = (line: Numbers) =>
    line
      .map((length) =>
        Number((worked.unit === 'mm' ? length / TICKS_PER_MM : length / TICKS_PER_INCH).toFixed(4)),
      )
      .join(', ');
  const lines = linesOf(piece);
  const straight = (kind: string) =>
    lines.filter((line) => line.kind === kind && line.curve === null).map(endsOf);
  const compare = (what: string, net: readonly Numbers[], byHand: readonly Numbers[]) => [
    ...missing(byHand, net).map((line) => `${what} ${asWorked(line)} by hand is not in the net`),
    ...missing(net, byHand).map((line) => `${what} ${asWorked(line)} of the net is not worked by hand`),
    ...(net.length === byHand.length ? [] : [`${byHand.length} ${what}s by hand, ${net.length} in the net`]),
  ];
  const curves = lines.filter(({ kind, curve }) => kind === 'score' && curve !== null);
  const blank = [piece.blank.across, piece.blank.up];
  const room = roomMm3(worked, hand.room);
  const isRoom = room === 0 ? piece.roomMm3 === 0 : Math.abs(piece.roomMm3 / room - 1) < 5e-5;
  return [
    ...(same(blank, inTicks(hand.blank))
      ? []
      : [`blank ${asWorked(inTicks(hand.blank))} by hand, ${asWorked(blank)} in the net`]),
    ...compare('score', straight('score'), hand.scores.map(inTicks)),
    ...compare('slit', straight('slit'), hand.slits.map(inTicks)),
    ...compare(
      'curve',
      curves.map(endsOf),
      (hand.curves ?? []).map((curve) => inTicks(curve.slice(0, 4))),
    ),
    ...curves.flatMap((line, at) => {
      const radius = piece.curves[line.curve ?? 0]?.radius ?? 0;
      const byHand = lengthOf(worked, hand.curves?.[at]?.[4] ?? 0);
      return Math.abs(radius - byHand) < 1
        ? []
        : [`radius ${asWorked([byHand])} by hand, ${asWorked([radius])} in the net`];
    }),
    ...(isRoom ? [] : [`room ${room.toFixed(1)} mm3 by hand, ${piece.roomMm3.toFixed(1)} in the net`]),
  ];
}
