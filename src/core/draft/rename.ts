import { panelWords } from '../net/panel-words';
import { type Draft, type Edit, type PieceDraft, refused, taken } from './draft';
import { renamedIn } from './forms';

/** Fields of a declaration that hold a form or a formula. */
const FORMS: ReadonlySet<string> = new Set(
  `size taper bow at hinge outline side lens leaf sector default min max margin across long radius gap when unless atLeast atMost room body
  card ease area inside formula roomFormula seams`.split(/\s+/),
);
/** Records of forms by name. */
const RECORDS: ReadonlySet<string> = new Set(['allowances', 'lets', 'facts', 'workings']);
/** Records whose names are names of lengths. */
const NAMED: ReadonlySet<string> = new Set(['symbols', 'allowances', 'lets', 'quantities']);

const EDGE = /^[a-z][a-zA-Z0-9]*\.(?:left|right|up|down|e\d+)$/;

/** The draft with one length called otherwise, in every form, formula and sentence. */
export function withLengthCalled(draft: Draft, from: string, to: string): Draft {
  const walk = (value: unknown, key: string): unknown => {
    if (typeof value === 'string') {
      if (FORMS.has(key) && !EDGE.test(value)) return renamedIn(value, from, to);
      if (key === 'symbol') return value === from ? to : value;
      return key === 'says' || key === 'remedy' ? value.replaceAll(`{${from}}`, `{${to}}`) : value;
    }
    if (Array.isArray(value)) return value.map((each) => walk(each, key));
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([name, each]) => [
        NAMED.has(key) && name === from ? to : name,
        // a cut is `at` an edge, everything else at a length
        walk(each, RECORDS.has(key) ? 'size' : key === 'cuts' && name === 'at' ? 'edge' : name),
      ]),
    );
  };
  return walk(draft, '') as Draft;
}

/** A maker’s words as a name of the file: `Front flap` is `frontFlap`. Empty where no letter is left. */
export function nameOfWords(words: string): string {
  const [first = '', ...others] =
    words
      .normalize('NFD')
      .replace(/[\u0300-\u036f]/g, '')
      .match(/[a-zA-Z0-9]+/g) ?? [];
  const joined = [first, ...others.map((part) => part.charAt(0).toUpperCase() + part.slice(1))].join('');
  const lettered = joined.replace(/^[0-9]+/, '');
  return (lettered.charAt(0).toLowerCase() + lettered.slice(1)).slice(0, 32);
}

/** A name not yet taken, with a number behind it where it is. */
export function freeName(wanted: string, isTaken: (name: string) => boolean): string {
  if (!isTaken(wanted)) return wanted;
  for (let at = 2; ; at++) {
    const name = `${wanted.slice(0, 29)}${at}`;
    if (!isTaken(name)) return name;
  }
}

const edgeCalled = (where: string, from: string, to: string): string =>
  where.split('.')[0] === from ? `${to}${where.slice(from.length)}` : where;

/** Calls a panel otherwise, wherever the style speaks of it. */
export const renamePanel =
  (piece: string, panel: string, words: string): Edit =>
  (draft) => {
    const to = nameOfWords(words);
    const of = draft.pieces?.[piece];
    if (of?.panels[panel] === undefined || to === panel) return taken(draft);
    if (to === '')
      return refused(
        'no-name',
        'A panel needs a name, and {words} has no letter in it.',
        'Use a name such as front flap.',
        { words: words || '“”' },
      );
    if (to in of.panels)
      return refused(
        'name-taken',
        'Another panel is called {name} already.',
        'Choose another name, such as {name} 2.',
        { name: panelWords(to) },
      );
    const next = { piece, panel: to };
    return taken(
      withPlaces(draft, piece, (name) => (name === panel ? to : name)),
      next,
    );
  };

/** The draft with the panels of a piece called otherwise. */
function withPlaces(draft: Draft, piece: string, called: (panel: string) => string): Draft {
  const edge = <Where extends string>(where: Where): Where => {
    const [name = ''] = where.split('.');
    return edgeCalled(where, name, called(name)) as Where;
  };
  const keys = <Value>(record: Readonly<Record<string, Value>>) =>
    Object.fromEntries(Object.entries(record).map(([name, value]) => [called(name), value]));
  const renamed = (of: PieceDraft): PieceDraft => ({
    ...of,
    panels: Object.fromEntries(
      Object.entries(of.panels).map(([name, spec]) => [
        called(name),
        {
          ...spec,
          ...(spec.on === undefined ? {} : { on: edge(spec.on) }),
          ...('follows' in spec ? { follows: called(spec.follows ?? '') } : {}),
        },
      ]),
    ),
    ...(of.creases && {
      creases: of.creases.map(({ between: [a, b], fold }) => ({
        between: [edge(a), edge(b)] as [typeof a, typeof b],
        fold,
      })),
    }),
    joints: of.joints.map((joint) => ({ ...joint, panel: called(joint.panel), onto: called(joint.onto) })),
    ...(of.seams && {
      seams: of.seams.map(([a, b, ...gap]) => [edge(a), edge(b), ...gap]),
    }),
    closing: of.closing.map((step) =>
      step.do === 'glue'
        ? { ...step, panel: called(step.panel), onto: called(step.onto) }
        : {
            ...step,
            panels: step.panels.map(called),
            ...('through' in step ? { through: (step.through ?? []).map(keys) } : {}),
          },
    ),
    ...(of.overlaps && { overlaps: of.overlaps.map((group) => group.map(called)) }),
    ...(of.rings && { rings: of.rings.map((ring) => ring.map(called)) }),
    shell: of.shell.map(called),
  });
  const places = draft.addOns;
  return {
    ...draft,
    pieces: Object.fromEntries(
      Object.entries(draft.pieces ?? {}).map(([id, of]) => [id, id === piece ? renamed(of) : of]),
    ),
    promises: draft.promises.map((promise) =>
      promise.claim === 'covers' && promise.piece === piece
        ? { ...promise, panels: promise.panels.map(called) }
        : promise,
    ),
    ...(places && {
      addOns: Object.fromEntries(
        Object.entries(places).map(([kind, list]) => [
          kind,
          Array.isArray(list)
            ? list.map((place) =>
                place.piece === piece ? { ...place, at: place.at.map((where) => edge(where)) } : place,
              )
            : list,
        ]),
      ),
    }),
  };
}
