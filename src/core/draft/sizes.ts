import { panelWords } from '../net/panel-words';
import { evaluateForm, formOf } from '../styles/language/linear-form';
import { formFault } from './change-panel';
import { type Draft, type Edit, refused, type SymbolDraft, taken, without } from './draft';
import { namesIn, readable } from './forms';
import { isTakenLength, withLimit } from './lengths';
import { freeName, nameOfWords, withLengthCalled } from './rename';

const nameless = (label: string) =>
  refused(
    'no-name',
    'A size needs a name, and {words} has no letter in it.',
    'Use a name such as roof height.',
    { words: label || '“”' },
  );

/** Adds a size by its label, from the least to the most a maker may choose. */
export const addSize =
  (label: string, spec: Pick<SymbolDraft, 'default' | 'min' | 'max'>): Edit =>
  (draft) => {
    const wanted = nameOfWords(label);
    if (wanted === '') return nameless(label);
    const name = freeName(wanted, (each) => isTakenLength(draft, each));
    const symbol: SymbolDraft = { role: 'size', label, help: 'Score to score.', ...spec };
    const fault = symbolFault(draft, symbol);
    return fault ?? taken({ ...draft, symbols: { ...draft.symbols, [name]: symbol } });
  };

/** Changes what a size usually is, its limits, or what it is called. */
export const changeSize =
  (
    name: string,
    change: Partial<Pick<SymbolDraft, 'label' | 'help' | 'default' | 'min' | 'max' | 'role'>>,
  ): Edit =>
  (draft) => {
    const symbol = draft.symbols[name];
    if (symbol === undefined) return NO_SUCH_SIZE;
    const changed = { ...symbol, ...change };
    const fault = symbolFault(draft, changed, name);
    return fault ?? taken({ ...draft, symbols: { ...draft.symbols, [name]: changed } });
  };

/** Calls a size otherwise, in every form as well. */
export const renameSize =
  (name: string, label: string): Edit =>
  (draft) => {
    const symbol = draft.symbols[name];
    if (symbol === undefined) return NO_SUCH_SIZE;
    const wanted = nameOfWords(label);
    if (wanted === '') return nameless(label);
    const relabeled = { ...draft, symbols: { ...draft.symbols, [name]: { ...symbol, label } } };
    if (wanted === name) return taken(relabeled);
    const to = freeName(wanted, (each) => each !== name && isTakenLength(draft, each));
    return taken(to === name ? relabeled : withLengthCalled(relabeled, name, to));
  };

/** Takes a size out; refused while a form speaks of it, and where. */
export const removeSize =
  (name: string): Edit =>
  (draft) => {
    const symbol = draft.symbols[name];
    if (symbol === undefined) return NO_SUCH_SIZE;
    const uses = usesOf(draft, name);
    if (uses.length > 0)
      return refused(
        'size-in-use',
        '{label} is still used by {places}.',
        'Write another length there first.',
        { label: symbol.label, places: uses.slice(0, 6).join(', ') },
      );
    return taken({
      ...draft,
      symbols: without(draft.symbols, name),
      // a limit on nothing but this size goes with it
      constraints: draft.constraints.filter((limit) => limit.symbol !== name),
    });
  };

/** Where a length is used, in a maker’s words. */
function usesOf(draft: Draft, name: string): readonly string[] {
  const speaks = (value: unknown): boolean =>
    typeof value === 'string'
      ? namesIn(value).has(name)
      : Array.isArray(value)
        ? value.some(speaks)
        : typeof value === 'object' && value !== null && Object.values(value).some(speaks);
  const records = { ...draft.allowances, ...draft.lets, ...draft.workings };
  return [
    ...Object.values(draft.pieces ?? {}).flatMap(({ panels, joints, seams = [], roomFormula }) => [
      ...Object.entries(panels).flatMap(([panel, { role: _, on: __, fold: ___, ...forms }]) =>
        speaks(forms) ? [panelWords(panel)] : [],
      ),
      ...joints.flatMap(({ panel, gap, when, unless }) =>
        speaks([gap ?? '', when ?? '', unless ?? '']) ? [`the joint of the ${panelWords(panel)}`] : [],
      ),
      ...(seams.some(([, , gap]) => speaks(gap ?? '')) ? ['a seam'] : []),
      ...(namesIn(roomFormula).has(name) ? ['the room inside'] : []),
    ]),
    ...Object.entries(draft.symbols).flatMap(([other, spec]) =>
      other !== name && speaks(spec.default) ? [spec.label] : [],
    ),
    ...Object.entries(records).flatMap(([other, form]) => (namesIn(form).has(name) ? [other] : [])),
    ...Object.entries({ ...draft.quantities, ...draft.angles }).flatMap(([other, { formula }]) =>
      namesIn(formula).has(name) ? [other] : [],
    ),
    ...(speaks(draft.inside) ? ['the inside size'] : []),
    ...draft.constraints.flatMap(({ symbol, atLeast, atMost, facts }) =>
      symbol !== name && speaks([atLeast ?? '', atMost ?? '', facts ?? {}])
        ? [`a limit of ${draft.symbols[symbol]?.label ?? symbol}`]
        : [],
    ),
    ...(speaks(draft.fits ?? []) ? ['a fit'] : []),
    ...draft.promises.flatMap((promise) =>
      speaks(promise.claim === 'covers' ? promise.area : promise.gap) ? ['a promise'] : [],
    ),
  ];
}

const NO_SUCH_SIZE = refused('no-such-size', 'That size is no longer there.', 'Choose another size.');

const ticksOf = (text: string): number | null => {
  const form = readable(text);
  return form === null || form.terms.length > 0 ? null : evaluateForm(form, {});
};

/** What is wrong with a size; null where nothing is. */
function symbolFault(draft: Draft, symbol: SymbolDraft, name?: string) {
  const order = Object.keys(draft.symbols);
  const later = name === undefined ? [] : order.slice(order.indexOf(name));
  const [usual, least, most] = [symbol.default, symbol.min, symbol.max].map(ticksOf);
  const plain = [symbol.min, symbol.max].find((text) => ticksOf(text) === null);
  if (plain !== undefined)
    return refused(
      'limit-unread',
      'We couldn’t read {text} as a plain length.',
      'Write a length with its unit, such as 1/2 in or 12 mm.',
      { text: plain || '“”' },
    );
  const fault = formFault(draft, symbol.default);
  if (fault) return fault;
  const early = [...namesIn(symbol.default)].find(
    (each) =>
      each === 't' || later.includes(each) || (!(each in draft.symbols) && each !== 'in' && each !== 'mm'),
  );
  if (early !== undefined)
    return refused(
      'default-too-early',
      'The usual size of {label} can’t follow {name}, which is worked out after it.',
      'Write a plain length, or a size listed above it.',
      { label: symbol.label, name: early },
    );
  if (least !== null && most !== null && least !== undefined && most !== undefined && least > most)
    return refused(
      'limits-crossed',
      'The smallest {label}, {least}, is more than the largest, {most}.',
      'Make the largest more than the smallest.',
      { label: symbol.label, least: symbol.min, most: symbol.max },
    );
  if (usual !== null && usual !== undefined && ((least ?? 0) > usual || (most ?? usual) < usual))
    return refused(
      'default-beyond-limits',
      'The usual {label}, {usual}, is outside its limits, {least} to {most}.',
      'Change the limits first, or choose a size between them.',
      { label: symbol.label, usual: symbol.default, least: symbol.min, most: symbol.max },
    );
  return null;
}

/** Adds a limit that one size sets to another. */
export const addLimit =
  (symbol: string, bound: 'atLeast' | 'atMost', text: string): Edit =>
  (draft) => {
    const label = draft.symbols[symbol]?.label;
    if (label === undefined) return NO_SUCH_SIZE;
    const fault = formFault(draft, text);
    if (fault) return fault;
    const form = formOf(text).text.trim();
    const [limit, wrong] = bound === 'atMost' ? [{ atMost: form }, 'large'] : [{ atLeast: form }, 'small'];
    const says = `${label.replaceAll(/[{}]/g, '')} {size} is too ${wrong} here.`;
    return taken(withLimit(draft, { code: `${symbol.toLowerCase()}-limit`, symbol, ...limit, says }));
  };

export const removeLimit =
  (code: string): Edit =>
  (draft) =>
    taken({ ...draft, constraints: draft.constraints.filter((limit) => limit.code !== code) });

/** Sets one side of the room inside. */
export const setInside =
  (side: 0 | 1 | 2, text: string): Edit =>
  (draft) => {
    const inside = [...draft.inside] as [string, string, string];
    inside[side] = text.trim();
    return formFault(draft, text) ?? taken({ ...draft, inside });
  };
