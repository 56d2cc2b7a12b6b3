import { type BenchTool, cardTrouble } from '../bench';
import { checkBox } from '../checks';
import { checkClosingPath } from '../checks/check-closing-path';
import { checkItemRoom } from '../checks/check-item-room';
import { checkLimits } from '../checks/check-limits';
import { type BoxNet, foldTextOf, layNet, nameValues, readFold } from '../net';
import { type BoxStyle, StyleError, symbolsFor } from '../styles';
import type { Reason } from '../units/reason';
import { inches } from '../units/ticks';
import { swayFrom } from '../yield/stock/sway';
import { type AskedBox, legalBoxes } from './legal-boxes';

/** What a style is proven by; `declaration`: it does not hang together as it is written, and nothing else was tried. */
type ProofCheck =
  | 'declaration'
  | 'closes'
  | 'closing path'
  | 'item in card'
  | 'bench card'
  | 'FOLD and back'
  | 'limits';

/** One thing that a style gets wrong, at the first box that shows it. A template with its facts, as findings are. */
export interface StyleFault extends Reason {
  readonly check: ProofCheck;
  /** The panel, piece or size it is about. */
  readonly where: string;
  readonly remedy: string;
  /** The box that shows it; null for the declaration itself. */
  readonly at: AskedBox | null;
  /** How many of the boxes show it. */
  readonly boxes: number;
}

export interface StyleProof {
  readonly style: string;
  readonly tried: number;
  readonly faults: readonly StyleFault[];
}

type Fault = Omit<StyleFault, 'check' | 'at' | 'boxes'>;

const TOOLS: readonly BenchTool[] = [
  { name: 'inch ruler', unit: 'in', finestMark: inches(0, 1, 16), kind: 'fence' },
  { name: 'metric board', unit: 'mm', finestMark: inches(0, 1, 16), kind: 'grooves' },
].map((tool) => ({ ...tool, reach: inches(100), longestCut: inches(100) }) as BenchTool);

/** A stop that some choices of add-ons rightly meet: the maker is told to choose otherwise. */
const MAKERS_CHOICE: ReadonlySet<string> = new Set(['opening-glued-over', 'opening-crosses-edge']);

/** What is asked of every box. Each names the panel, the numbers and a remedy. */
const CHECKS: Readonly<
  Record<Exclude<ProofCheck, 'declaration' | 'limits'>, (style: BoxStyle, box: BoxNet) => readonly Fault[]>
> = {
  closes: (style, box) =>
    checkBox(style, box).filter(({ severity, code }) => severity === 'stop' && !MAKERS_CHOICE.has(code)),
  'closing path': (_, box) => checkClosingPath(box),
  'item in card': (_, box) => checkItemRoom(box),
  'bench card': (_, box) =>
    TOOLS.flatMap((tool) =>
      (['inside', 'outside'] as const).flatMap((faceUp) =>
        box.pieces.flatMap((piece) => cardTrouble(piece, tool, { faceUp }) ?? []),
      ),
    ),
  'FOLD and back': (style, box) => {
    const reading = readFold(foldTextOf(box, style.name));
    const back = reading.ok ? reading.pieces : [];
    return box.pieces
      .filter((piece, at) => !alike(piece, back[at]))
      .map(({ id, label }) => ({
        where: id,
        facts: { piece: label.toLowerCase() },
        says: 'The {piece} is another net after a trip through a FOLD file.',
        remedy: 'Keep panels simple: no corner twice, no edge of no length, names of letters and figures.',
      }));
  },
};

/**
 * Tries a style at many boxes within its own limits: does each close with no gap and nothing colliding, can it be closed in the order declared,
 * does the item it promises lie inside, does a bench card make exactly its net, does it come back from a FOLD file, and does each of its
 * limits stop a size beyond it. The same proof for every style of ours and of yours; `seed` names another set of boxes.
 */
export function proveStyle(
  style: BoxStyle,
  {
    boxes = 50,
    seed = 1,
    onBox,
  }: {
    readonly boxes?: number;
    readonly seed?: number;
    /** Told after each box: how many are tried, of how many. */
    readonly onBox?: (done: number, of: number) => void;
  } = {},
): StyleProof {
  try {
    const asked = legalBoxes(style, boxes, swayFrom(seed));
    const faults = new Map<string, StyleFault>();
    for (const [done, at] of asked.entries()) {
      const box = layNet(style, at);
      const found = new Map<string, StyleFault>();
      for (const [check, judge] of Object.entries(CHECKS))
        for (const { where, says, facts, remedy } of judge(style, box)) {
          const key = `${check} ${says}`;
          const fault = {
            check: check as ProofCheck,
            where,
            says,
            facts,
            remedy,
            at: asItMatters(style, at),
          };
          if (!found.has(key)) found.set(key, { ...fault, boxes: 1 });
        }
      for (const [key, fault] of found) {
        const first = faults.get(key);
        faults.set(key, first ? { ...first, boxes: first.boxes + 1 } : fault);
      }
      onBox?.(done + 1, asked.length);
    }
    return {
      style: style.id,
      tried: asked.length,
      faults: [...faults.values(), ...idleLimits(style, asked)],
    };
  } catch (error) {
    if (!(error instanceof StyleError || error instanceof RangeError)) throw error;
    const fault: StyleFault = {
      check: 'declaration',
      where: style.id,
      facts: { slip: { text: error.message } },
      says: 'The declaration does not hang together: {slip}.',
      remedy: 'Mend the name or the form it speaks of.',
      at: null,
      boxes: 0,
    };
    return { style: style.id, tried: 0, faults: [fault] };
  }
}

/** A box with only those sizes that its choices give a meaning to. */
const asItMatters = (style: BoxStyle, { sizes, ...box }: AskedBox): AskedBox => ({
  ...box,
  sizes: Object.fromEntries(
    symbolsFor(style, box.options).flatMap(([symbol]) => {
      const size = sizes[symbol];
      return size === undefined ? [] : [[symbol, size]];
    }),
  ),
});

/** Are two plain values equal, whatever the order of their fields? A field left out equals one that is undefined. */
function alike(one: unknown, other: unknown): boolean {
  if (Object.is(one, other) || one === other) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one) || Array.isArray(other))
    return (
      Array.isArray(one) &&
      Array.isArray(other) &&
      one.length === other.length &&
      one.every((value, at) => alike(value, other[at]))
    );
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].every((key) => alike(Reflect.get(one, key), Reflect.get(other, key)));
}

/** Limits that let every size pass: tried with their symbol far beyond them, in each way of building that they hold for. */
function idleLimits(style: BoxStyle, asked: readonly AskedBox[]): readonly StyleFault[] {
  return style.constraints
    .filter((bound) => {
      const ways = bound.given ?? [{}];
      return !asked.some((box, at) => {
        const chosen = { ...box.options, ...ways[at % ways.length] };
        const { lengths } = nameValues(style, { ...box, options: chosen });
        const broken = { ...lengths, [bound.symbol]: bound.atLeast === undefined ? inches(100) : inches(0) };
        return checkLimits(style, broken, box.mark, chosen).some(({ code }) => code === bound.code);
      });
    })
    .map((bound) => ({
      check: 'limits',
      where: bound.symbol,
      facts: { limit: bound.code, symbol: bound.symbol },
      says: 'The limit {limit} stops no size of {symbol}, however far beyond it.',
      remedy: 'Look at which way it bounds, and which choices it is given for.',
      at: asked[0] ?? null,
      boxes: asked.length,
    }));
}
