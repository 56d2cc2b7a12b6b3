import type { InsertPlan } from '../../dress/inserts';
import { type At, boxRing } from '../../plane';
import { type Ruler, toMm } from '../../units';
import type { Ticks } from '../../units/ticks';
import { drawDimension } from '../strokes/dimension';
import { lengthWords } from '../strokes/length-text';
import { areaMark, centredText, frameMarks, lineMark, textMark } from '../strokes/marks';
import type { Drawing, Mark } from '../strokes/types';

const WORDS_MM = 2.4;
const CLEAR_MM = 1.4;
/** What numbers take round the card, mm on paper. */
const ROUND_MM = { across: 36, up: 26 };
/** A slot drawn to scale would be a hair: so wide at least, mm on paper. */
const SLOT_MM = 0.8;

/** An insert with its slots or holes and the numbers they are cut by; as large as fits this width and height, mm on paper. */
export function drawInsert(
  insert: InsertPlan,
  name: string,
  ruler: Ruler,
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
): Drawing & { readonly scale: number; readonly origin: At } {
  const [wide, high] = [widthMm - ROUND_MM.across, heightMm - ROUND_MM.up];
  const scale = Math.min(1, wide / toMm(insert.across), high / toMm(insert.up));
  const mm = (length: number): number => toMm(length) * scale;
  const say = (length: Ticks): string => lengthWords(length, ruler);
  const [right, top] = [mm(insert.across), mm(insert.up)];
  const paper: OnPaper = { corner: [right, top], mm, say };
  const level = insert.slots?.from === 'bottom' ? top : 0;
  const marks = [
    ...outlineOf(insert, mm),
    ...(insert.slots ? slotMarks(insert.slots, paper) : []),
    ...(insert.holes ? holeMarks(insert.holes, paper) : []),
    ...drawDimension([0, level], [right, level], [0, level > 0 ? 1 : -1], say(insert.across), WORDS_MM),
    ...drawDimension([0, 0], [0, top], [-1, 0], say(insert.up), WORDS_MM),
  ];
  return { ...frameMarks(marks, name, `${name}: ${described(insert, say)}`), scale };
}

const list = (places: readonly Ticks[], say: (length: Ticks) => string): string => places.map(say).join(', ');

function described({ slots, holes, rise }: InsertPlan, say: (length: Ticks) => string): string {
  if (slots) return `slots at ${list(slots.at, say)} from the left end, ${say(slots.deep)} deep.`;
  const sides = rise > 0 ? `scores ${say(rise)} from every edge` : 'no scores';
  if (!holes) return `${sides}.`;
  return `${sides}; holes ${say(holes.wide)} wide at ${list(holes.across, say)} across, ${list(holes.up, say)} up.`;
}

/** Its card, less the four corners where sides fold down along scores. */
function outlineOf({ across, up, rise }: InsertPlan, mm: (length: number) => number): readonly Mark[] {
  const [right, top, by] = [mm(across), mm(up), mm(rise)];
  if (rise === 0) {
    const ring = boxRing({ left: 0, bottom: 0, right, top });
    return [areaMark('paper', ring), areaMark('cut', ring)];
  }
  const [x, y] = [right - by, top - by];
  const ring: readonly At[] = [
    [by, 0], [x, 0], [x, by], [right, by], [right, y], [x, y], [x, top], [by, top], [by, y], [0, y], [0, by], [by, by],
  ]; // biome-ignore format: one row
  const score = (a: At, b: At) => lineMark('score-mountain', [a, b]);
  return [
    areaMark('paper', ring),
    areaMark('cut', ring),
    score([by, by], [x, by]),
    score([x, by], [x, y]),
    score([x, y], [by, y]),
    score([by, y], [by, by]),
  ];
}

/** The insert's far corner on paper, how long a length is there, and how it is said. */
interface OnPaper {
  readonly corner: At;
  readonly mm: (length: number) => number;
  readonly say: (length: Ticks) => string;
}

function slotMarks(
  { at, deep, wide, from }: NonNullable<InsertPlan['slots']>,
  { corner: [right, top], mm, say }: OnPaper,
): readonly Mark[] {
  const half = Math.max(SLOT_MM, mm(wide)) / 2;
  const [end, edge] = from === 'top' ? [top - mm(deep), top] : [mm(deep), 0];
  const out = from === 'top' ? CLEAR_MM : -CLEAR_MM;
  const slots = at.flatMap((place): Mark[] => {
    const x = mm(place);
    const words = textMark(say(place), [x + (WORDS_MM * 0.7) / 2, edge + out], WORDS_MM, {
      turnDeg: 90,
      anchor: from === 'top' ? 'start' : 'end',
    });
    const sides: readonly At[] = [[x - half, edge], [x - half, end], [x + half, end], [x + half, edge]]; // biome-ignore format: one row
    return [lineMark('cut', sides), words];
  });
  const depth = drawDimension(
    [right, Math.min(end, edge)],
    [right, Math.max(end, edge)],
    [1, 0],
    say(deep),
    WORDS_MM,
  );
  return [...slots, ...depth];
}

function holeMarks(
  { shape, wide, across, up }: NonNullable<InsertPlan['holes']>,
  { corner: [right, top], mm, say }: OnPaper,
): readonly Mark[] {
  const half = mm(wide) / 2;
  const holes = up.flatMap((y) =>
    across.map((x): Mark => {
      const [u, v] = [mm(x), mm(y)];
      return shape === 'round'
        ? { kind: 'arc', ink: 'cut', centre: [u, v], radius: half, fromDeg: 0, sweepDeg: 360 }
        : areaMark('cut', boxRing({ left: u - half, right: u + half, bottom: v - half, top: v + half }));
    }),
  );
  return [
    ...holes,
    ...across.map((x) =>
      textMark(say(x), [mm(x) + (WORDS_MM * 0.7) / 2, top + CLEAR_MM], WORDS_MM, { turnDeg: 90 }),
    ),
    ...up.map((y) => textMark(say(y), [right + CLEAR_MM, mm(y) - (WORDS_MM * 0.7) / 2], WORDS_MM)),
    ...(across.length * up.length === 1 && half > 4
      ? [centredText(say(wide), [mm(across[0] ?? 0), mm(up[0] ?? 0)], WORDS_MM)]
      : []),
  ];
}
