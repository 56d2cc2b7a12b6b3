import type { Len, SymbolSpec } from '../styles/language/types';
import type { Draft, SymbolDraft } from './draft';
import { freeName } from './rename';

/** Words of forms and formulas that no length may be called by. source: `core/style-file/formula-functions` */
const WORDS = new Set(
  't in mm pi min max hypot abs sqrt sin cos tan asin acos atan atan2 number integral'.split(' '),
);

/** Every length that forms may speak of, in the order they are worked out. */
export const lengthNames = (draft: Draft): readonly string[] => [
  ...Object.keys(draft.symbols),
  't',
  ...Object.keys(draft.allowances ?? {}),
  ...Object.keys(draft.lets ?? {}),
  ...Object.keys(draft.quantities ?? {}),
];

export const isTakenLength = (draft: Draft, name: string): boolean =>
  WORDS.has(name) || lengthNames(draft).includes(name) || name in { ...draft.options, ...draft.workings };

type Named = readonly [draft: Draft, name: string];

/** A size of our own styles as a draft has it: asked for always. */
export function asDrafted({ given: _, ...symbol }: SymbolSpec): SymbolDraft {
  return symbol;
}

/** The draft with a size of this name and label, and what it is called; one that is there already is used again. */
export function withSymbol(draft: Draft, wanted: string, spec: SymbolSpec): Named {
  if (draft.symbols[wanted]?.label === spec.label) return [draft, wanted];
  const name = freeName(wanted, (each) => isTakenLength(draft, each));
  return [{ ...draft, symbols: { ...draft.symbols, [name]: asDrafted(spec) } }, name];
}

/** The draft with a sum that card adds (`allowances`), or any other named sum (`lets`). */
export function withSum(draft: Draft, kind: 'allowances' | 'lets', wanted: string, form: Len): Named {
  const known = draft[kind] ?? {};
  if (known[wanted] === form) return [draft, wanted];
  const name = freeName(wanted, (each) => isTakenLength(draft, each));
  return [{ ...draft, [kind]: { ...known, [name]: form } }, name];
}

/** The draft with a length that no plain sum gives. */
export function withQuantity(
  draft: Draft,
  wanted: string,
  quantity: NonNullable<Draft['quantities']>[string],
): Named {
  const known = draft.quantities ?? {};
  if (known[wanted]?.formula === quantity.formula) return [draft, wanted];
  const name = freeName(wanted, (each) => isTakenLength(draft, each));
  return [{ ...draft, quantities: { ...known, [name]: quantity } }, name];
}

type Limit = Draft['constraints'][number];

/** The draft with a bound on a size; the same bound is not set twice. `{size}` in its sentence stands for the size’s own name. */
export function withLimit(draft: Draft, { code, says, ...limit }: Omit<Limit, 'remedy' | 'severity'>): Draft {
  const same = draft.constraints.some(
    (other) =>
      other.symbol === limit.symbol && other.atLeast === limit.atLeast && other.atMost === limit.atMost,
  );
  if (same) return draft;
  const name = freeName(code, (each) => draft.constraints.some((other) => other.code === each));
  return {
    ...draft,
    constraints: [
      ...draft.constraints,
      {
        ...limit,
        code: name,
        severity: 'stop',
        says: says.replaceAll('{size}', `{${limit.symbol}}`),
        remedy: limit.atMost === undefined ? 'Make it at least {limit}.' : 'Make it at most {limit}.',
      },
    ],
  };
}

/** The draft with a side of its room said in another way, where it is still said the first way: a part has taken room from it since. */
export const withRoomSaid = (draft: Draft, was: Len, is: Len): Draft => ({
  ...draft,
  inside: draft.inside.map((side) => (side === was ? is : side)) as Draft['inside'],
});
