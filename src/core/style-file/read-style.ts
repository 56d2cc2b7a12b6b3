import { describeValue, type Refusal, readBy } from '../rows/refusals';
import { nestsDeeperThan, repeatedKey, tooWide } from '../rows/scan-json';
import { checkOnce } from '../styles/language/check-style';
import { defineStyle } from '../styles/language/define';
import { StyleError } from '../styles/language/style-error';
import type { BoxStyle, Chosen, PieceSpec, Pieces, Quantity } from '../styles/language/types';
import { everyWay, isGiven } from '../styles/shapes/choices';
import { readFormula, readWorking } from './formula';
import type { KnownNames, Working } from './formula-parts';
import {
  type PieceData,
  SPELLINGS,
  STYLE_FORMAT,
  STYLE_SCHEMA,
  type StyleData,
  type StyleFile,
  styleFile,
} from './schema';
import type { StyleRefusal } from './style-refusal';

export type StyleReading =
  | { readonly ok: true; readonly style: BoxStyle; readonly data: StyleData }
  | { readonly ok: false; readonly refusals: readonly StyleRefusal[] };

/** Gates of a style file before its fields are read. source: our own, several times the largest style here */
const LIMITS = {
  letters: 200_000,
  depth: 16,
  entries: 200,
  fields: 100,
  ways: 64,
  panels: 1000,
  integrals: 6,
};
const MOST_REFUSALS = 20;

/**
 * A style from a file: size, nesting, JSON, header, every field, every formula, then every name, as a style of our own is checked. Never throws;
 * no code comes from the file. `id` is what it is called here, in place of the file's own. Whether its sizes make a box is asked of `notABox`, whether it closes of `proveStyle`.
 */
export function readStyle(text: string, id?: string): StyleReading {
  const parsed = parseFile(text);
  if ('refusals' in parsed) return { ok: false, ...parsed };
  const file = readBy(styleFile, parsed.data);
  if (!file.ok) return { ok: false, refusals: file.refusals.slice(0, MOST_REFUSALS).map(ofField) };
  const many = tooManyWays(file.value.style) ?? tooManyIntegrals(text);
  if (many !== null) return { ok: false, refusals: [many] };
  const refusals: StyleRefusal[] = [...treeFaults(file.value.style)];
  const style = refusals.length > 0 ? null : styleOf(file.value, refusals, id);
  if (style === null || refusals.length > 0) return { ok: false, refusals: refusals.slice(0, MOST_REFUSALS) };
  const slip = declarationSlip(style);
  return slip === null ? { ok: true, style, data: file.value.style } : { ok: false, refusals: [slip] };
}

const refusal = (
  code: string,
  path: string,
  says: string,
  texts: Readonly<Record<string, string>>,
  remedy: string,
): StyleRefusal => ({
  code,
  path,
  says,
  remedy,
  facts: Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, { text }])),
});

const ofField = ({
  code,
  path,
  found,
  expected,
}: Omit<Refusal, 'code'> & { readonly code: string }): StyleRefusal =>
  refusal(
    code,
    path,
    path === ''
      ? 'This file has {found}. It needs {expected}.'
      : 'In {path} the file has {found}. It needs {expected}.',
    { path, found, expected: SPELLINGS.get(expected) ?? expected },
    path === '' || path === 'format'
      ? 'Choose a file that was saved as a style.'
      : 'Change that line of the file.',
  );

/** The parsed text, its header looked at; or why it is no style file. */
function parseFile(
  text: string,
): { readonly data: unknown } | { readonly refusals: readonly StyleRefusal[] } {
  const gate = (code: string, path: string, found: string, expected: string) => ({
    refusals: [ofField({ code, path, found, expected })],
  });
  if (text.length > LIMITS.letters)
    return gate('too-large', '', `${text.length} letters`, `at most ${LIMITS.letters} letters`);
  if (nestsDeeperThan(LIMITS.depth, text))
    return gate('too-deep', '', `more than ${LIMITS.depth} levels`, `at most ${LIMITS.depth} levels`);
  const wide = tooWide(LIMITS, text);
  if (wide) return gate('too-many', wide.path, `more than ${wide.most} ${wide.kind}`, `at most ${wide.most}`);
  let data: unknown;
  try {
    data = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return gate('not-json', '', describeValue(text.slice(0, 40)), 'a box style saved as JSON');
  }
  const key = repeatedKey(text);
  if (key !== null) return gate('repeated-key', key, `“${key}” twice in one place`, 'each name once');
  if (typeof data !== 'object' || data === null || Array.isArray(data))
    return gate('not-a-style', '', describeValue(data), 'a box style saved as JSON');
  const header: Readonly<Record<string, unknown>> = { ...data };
  if (header['format'] !== STYLE_FORMAT)
    return gate('not-a-style', 'format', describeValue(header['format']), STYLE_FORMAT);
  const schema = header['schema'];
  if (typeof schema === 'number' && Number.isSafeInteger(schema) && schema > STYLE_SCHEMA)
    return gate('newer-schema', 'schema', `${schema}`, `at most ${STYLE_SCHEMA}`);
  return { data };
}

/** Every way of choosing is checked, so their number is bounded before anything walks them. */
function tooManyWays({ options = {}, ways, pieces }: StyleData): StyleRefusal | null {
  const count = Object.values(options).reduce((all, { choices }) => all * choices.length, 1);
  if (count > LIMITS.ways)
    return refusal(
      'too-many-ways',
      'options',
      'Its options can be chosen in {count} ways.',
      { count: `${count}` },
      'Leave out an option or a choice: at most 64 ways can be checked.',
    );
  if ((pieces === undefined) === (ways === undefined))
    return refusal(
      'pieces-or-ways',
      'pieces',
      'A style has either pieces or ways, and this one has {found}.',
      { found: pieces === undefined ? 'neither' : 'both' },
      'Use pieces for one way of building it, ways where its options change them.',
    );
  const panels = everyPiece({ ways, pieces } as StyleData).reduce(
    (sum, [, piece]) => sum + Object.keys(piece.panels).length,
    0,
  );
  return panels <= LIMITS.panels
    ? null
    : refusal(
        'too-many-panels',
        'ways',
        'Its ways have {count} panels together.',
        { count: `${panels}` },
        'Leave out an option: at most 1000 panels can be checked.',
      );
}

/** Each is summed over hundreds of parts whenever the box is laid. */
function tooManyIntegrals(text: string): StyleRefusal | null {
  const count = text.split('integral').length - 1;
  return count <= LIMITS.integrals
    ? null
    : refusal(
        'too-many-integrals',
        '',
        'The file has {count} integrals.',
        { count: `${count}` },
        'Use at most 6: put one that is used twice into a working.',
      );
}

/** Every piece of every way, with its place in the file. */
function everyPiece({ ways, pieces, whole }: StyleData): readonly (readonly [string, PieceData])[] {
  const of = (path: string, all: Readonly<Record<string, PieceData>>) =>
    Object.entries(all).map(([id, piece]) => [`${path}.${id}`, piece] as const);
  return [
    ...(pieces === undefined ? [] : of('pieces', pieces)),
    ...(ways ?? []).flatMap((way, at) => of(`ways[${at}].pieces`, way.pieces)),
    ...(whole === undefined ? [] : ([['whole', whole]] as const)),
  ];
}

/** Panels that hang on nothing, or on a panel that comes after them: no net can be laid from such a tree. */
function treeFaults(data: StyleData): readonly StyleRefusal[] {
  return everyPiece(data).flatMap(([path, { panels }]) => {
    const names = Object.keys(panels);
    if (names.length === 0)
      return [refusal('no-panel', `${path}.panels`, 'A piece has no panel.', {}, 'Give it at least one.')];
    return Object.entries(panels).flatMap(([panel, { on }], at): readonly StyleRefusal[] => {
      const where = `${path}.panels.${panel}`;
      if (at === 0)
        return on === undefined
          ? []
          : [
              refusal(
                'first-panel-hangs',
                where,
                'The first panel, {panel}, is joined to {on}, which comes after it.',
                { panel, on },
                'Start with the panel that stays flat on the table, and leave out its “on”.',
              ),
            ];
      const parent = on?.split('.')[0] ?? '';
      if (names.indexOf(parent) >= 0 && names.indexOf(parent) < at) return [];
      return [
        on === undefined
          ? refusal(
              'panel-hangs-on-nothing',
              where,
              'The panel {panel} is joined to no other, so it can’t fold.',
              { panel },
              'Say which edge it is joined to, such as "on": "base.left".',
            )
          : refusal(
              'panel-hangs-on-later',
              where,
              'The panel {panel} is joined to {on}, and no panel before it has that name.',
              { panel, on },
              'List the panel it is joined to before it, or join it to another.',
            ),
      ];
    });
  });
}

/** The declaration with its formulas read; the faults of those are added to `refusals`. */
function styleOf({ style: data }: StyleFile, refusals: StyleRefusal[], id = data.id): BoxStyle | null {
  const { ways, pieces, whole, workings = {}, quantities = {}, angles = {}, ...plain } = data;
  const options = new Map(
    Object.entries(data.options ?? {}).map(([option, { choices }]) => [option, choices.map(({ id }) => id)]),
  );
  const lengths = new Set([
    ...Object.keys(data.symbols),
    't',
    ...Object.keys(data.allowances ?? {}),
    ...Object.keys(data.lets ?? {}),
  ]);
  const steps = new Map<string, Working>();
  const known: KnownNames = { lengths, options, workings: steps };
  for (const [name, text] of Object.entries(workings)) {
    const reading = readWorking(name, text, known, Object.hasOwn({ ...quantities, ...angles }, name));
    if (reading.ok) steps.set(name, reading.working);
    else refusals.push({ code: 'formula', path: `workings.${name}`, ...reading.slip });
  }
  const read = (text: string, power: number, path: string): Quantity['of'] => {
    const reading = readFormula(text, power, known);
    if (reading.ok) return reading.formula.of;
    refusals.push({ code: 'formula', path, ...reading.slip });
    return () => 0;
  };
  const readAll = (all: NonNullable<StyleData['quantities']>, power: number, path: string) =>
    Object.fromEntries(
      Object.entries(all).map(([name, quantity]): [string, Quantity] => {
        const of = read(quantity.formula, power, `${path}.${name}`);
        // a quantity may use those before it; an angle is no length
        if (power === 1) lengths.add(name);
        return [name, { ...quantity, of }];
      }),
    );
  const made = {
    ...plain,
    ...(data.workings === undefined ? {} : { workings }),
    id,
    version: 1 as const,
    quantities: readAll(quantities, 1, 'quantities'),
    angles: readAll(angles, 0, 'angles'),
  };
  const pieceOf = (piece: PieceData, path: string): PieceSpec => {
    const of = read(piece.roomFormula, 3, `${path}.roomFormula`);
    return { ...piece, roomMm3: (values) => finite(of(values, {})) };
  };
  const piecesAt = (all: Readonly<Record<string, PieceData>>, path: string): Pieces =>
    Object.fromEntries(Object.entries(all).map(([id, each]) => [id, pieceOf(each, `${path}.${id}`)]));
  const built = (ways ?? []).map((way, at) => ({
    given: way.given,
    pieces: piecesAt(way.pieces, `ways[${at}].pieces`),
  }));
  const one = pieces === undefined ? null : piecesAt(pieces, 'pieces');
  const missing = one === null ? unbuilt(data, built) : null;
  if (missing !== null) refusals.push(missing);
  if (refusals.length > 0) return null;
  return defineStyle<BoxStyle>({
    ...made,
    ...(whole === undefined ? {} : { whole: pieceOf(whole, 'whole') }),
    pieces: one ?? ((chosen) => built.find(({ given }) => isGiven(given, chosen))?.pieces ?? {}),
  });
}

/** source: our own, a cube of ten meters */
const MOST_ROOM_MM3 = 1e12;
const finite = (room: number): number => (Number.isFinite(room) ? Math.min(room, MOST_ROOM_MM3) : 0);

/** A way of choosing its options for which the file has no pieces. */
function unbuilt(
  { options }: StyleData,
  built: readonly { readonly given: readonly Chosen[] }[],
): StyleRefusal | null {
  const without = everyWay(options).find((chosen) => !built.some(({ given }) => isGiven(given, chosen)));
  return without === undefined
    ? null
    : refusal(
        'way-without-pieces',
        'ways',
        'No way has the pieces for {chosen}.',
        {
          chosen:
            Object.entries(without)
              .map(([option, id]) => `${option} ${id}`)
              .join(', ') || 'a style without options',
        },
        'Add a way with these choices, or use pieces in place of ways.',
      );
}

/** The same check of names and forms that our own styles pass, as a value. */
function declarationSlip(style: BoxStyle): StyleRefusal | null {
  try {
    checkOnce(style);
    return null;
  } catch (error) {
    if (!(error instanceof StyleError || error instanceof RangeError)) throw error;
    return refusal(
      'declaration',
      '',
      'The style does not fit together: {slip}.',
      { slip: error.message },
      'Change the name or the form it speaks of.',
    );
  }
}
