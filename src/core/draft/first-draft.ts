import { readBy } from '../rows/refusals';
import { styleFile } from '../style-file/schema';
import { writeStyle } from '../style-file/write-style';
import { type BoxStyle, defaultChoices } from '../styles';
import { isGiven } from '../styles/shapes/choices';
import { sizeOf } from '../styles/shapes/size-symbols';
import type { LengthUnit } from '../units';
import { type Draft, type Edit, refused, taken } from './draft';
import { openDraft, textOf } from './edit-style';
import { namesIn } from './forms';
import { asDrafted } from './lengths';

/** What an empty base begins with: a floor that walls fold up from, or a wall that others follow in a row. */
export type Base = 'floor' | 'wall';

type Range = readonly [usual: string, least: string, most: string];

/** What a box begins with at either bench. source: our own */
const FIRST_SIZES: Readonly<Record<LengthUnit, Readonly<Record<'width' | 'depth' | 'low', Range>>>> = {
  in: { width: ['4 in', '1 in', '12 in'], depth: ['3 in', '1 in', '12 in'], low: ['2 in', '1 in', '12 in'] },
  mm: {
    width: ['100 mm', '25 mm', '300 mm'],
    depth: ['75 mm', '25 mm', '300 mm'],
    low: ['50 mm', '25 mm', '300 mm'],
  },
};

/** One panel, three sizes, and nothing else. Names are the maker’s own afterwards. */
export function emptyBase(base: Base, name: string, unit: LengthUnit = 'in'): string {
  const isFloor = base === 'floor';
  const say = FIRST_SIZES[unit];
  const size: [string, string] = isFloor ? ['width', 'depth'] : ['width', 'height'];
  const draft: Draft = {
    id: 'my-style',
    name,
    source: 'drawn by its maker',
    goodFor: 'A style of your own.',
    watchOut: 'Fold a test box before you cut a batch.',
    symbols: {
      width: asDrafted(sizeOf('Width', 'Left to right, score to score.', ...say.width)),
      depth: asDrafted(sizeOf('Depth', 'Front to back, score to score.', ...(isFloor ? say.depth : say.low))),
      height: asDrafted(
        sizeOf('Height', 'From the floor up, score to score.', ...(isFloor ? say.low : say.depth)),
      ),
    },
    inside: ['width - t', 'depth - t', 'height - t'],
    pieces: {
      box: {
        label: 'Box',
        panels: {
          [isFloor ? 'base' : 'front']: { role: isFloor ? 'base' : 'wall', size },
        },
        joints: [],
        closing: [],
        shell: [isFloor ? 'base' : 'front'],
        roomFormula: '(width) * (depth) * (height)',
      },
    },
    constraints: [],
    promises: [],
    traits: isFloor ? [] : ['tall'],
  };
  return textOf(draft);
}

/** The text that drawing starts from where it starts from a style of ours; null where that has no file, or is glued together of several pieces. */
export function draftFromStyle(style: BoxStyle, name: string): string | null {
  if (style.whole !== undefined) return null;
  const writing = writeStyle(style);
  if (!writing.ok) return null;
  const file = readBy(styleFile, JSON.parse(writing.text));
  if (!file.ok) return null;
  const one = keepOneWay(defaultChoices(style))({ ...file.value.style, id: 'my-style', name });
  if (!one.ok) return null;
  const text = textOf(one.draft);
  return openDraft(text).ok ? text : null;
}

/** Is the style built in one way, so that the editor can change it? */
export const isEditable = (draft: Draft): boolean => draft.pieces !== undefined && draft.whole === undefined;

/** Keeps one way of building a style, with the sizes and limits that hold for it: the editor changes one. */
export const keepOneWay =
  (chosen: Readonly<Record<string, string>>): Edit =>
  (draft) => {
    if (draft.whole !== undefined)
      return refused(
        'glued-of-pieces',
        'This style is glued together of several pieces, and the editor can’t change those yet.',
        'Start from another style, or change its file.',
      );
    const options = draft.options ?? {};
    const kept = {
      ...Object.fromEntries(Object.entries(options).map(([id, { choices }]) => [id, choices[0]?.id ?? ''])),
      ...chosen,
    };
    const way = draft.pieces ?? draft.ways?.find(({ given }) => isGiven(given, kept))?.pieces;
    if (way === undefined)
      return refused(
        'no-such-way',
        'This style has no pieces for that choice.',
        'Choose another way of building it.',
      );
    const holds = <Given extends { readonly given?: readonly Readonly<Record<string, string>>[] }>(
      each: Given,
    ): Given[] => {
      if (!isGiven(each.given, kept)) return [];
      const { given: _, ...always } = each;
      return [always as unknown as Given];
    };
    const symbols = Object.entries(draft.symbols).flatMap(([name, symbol]) =>
      holds(symbol).map((each) => [name, each] as const),
    );
    const known = new Set(symbols.map(([name]) => name));
    const decided = (text: string) => withChoices(text, kept);
    const { ways: _, options: __, pieces: ___, workings, quantities, angles, fits, ...rest } = draft;
    // What is counted from a size that this way does not ask for is nothing of this box.
    const gone = new Set(Object.keys(draft.symbols).filter((name) => !known.has(name)));
    const formulas = (of: NonNullable<Draft['quantities']>) =>
      Object.fromEntries(
        Object.entries(of).flatMap(([name, quantity]) => {
          const formula = decided(quantity.formula);
          if (![...namesIn(formula)].some((each) => gone.has(each)))
            return [[name, { ...quantity, formula }]];
          gone.add(name);
          return [];
        }),
      );
    return taken({
      ...rest,
      symbols: Object.fromEntries(symbols),
      ...(workings && {
        workings: Object.fromEntries(Object.entries(workings).map(([name, text]) => [name, decided(text)])),
      }),
      ...(quantities && { quantities: formulas(quantities) }),
      ...(angles && { angles: formulas(angles) }),
      pieces: Object.fromEntries(
        Object.entries(way).map(([id, piece]) => [id, { ...piece, roomFormula: decided(piece.roomFormula) }]),
      ),
      constraints: draft.constraints.flatMap(holds).filter(({ symbol }) => known.has(symbol)),
      ...(fits && { fits: fits.flatMap(holds) }),
    });
  };

/** A formula with its questions about options answered, and the numbers they stand for put in. */
const withChoices = (text: string, chosen: Readonly<Record<string, string>>): string =>
  text
    .replace(/\bnumber\(\s*([a-z][a-zA-Z0-9]*)\s*\)/g, (all, option: string) => chosen[option] ?? all)
    .replace(
      /\b([a-z][a-zA-Z0-9]*)\s*(==|!=)\s*(["'])(.*?)\3/g,
      (_, option: string, sign: string, __, id: string) =>
        (chosen[option] === id) === (sign === '==') ? '1 > 0' : '0 > 1',
    );
