import { readBy } from '../rows/refusals';
import { checkOnce } from '../styles/language/check-style';
import { defineStyle } from '../styles/language/define';
import { StyleError } from '../styles/language/style-error';
import type { BoxStyle, PieceSpec, Pieces, Quantity } from '../styles/language/types';
import { isGiven } from '../styles/shapes/choices';
import { readFormula, readWorking } from './formula';
import type { KnownNames, Working } from './formula-parts';
import { parseStyleFile, refusedField } from './parse-style-file';
import type { PieceData } from './piece-schema';
import { tooManyWays, treeFaults, unbuilt } from './pieces-of-file';
import { type StyleData, type StyleFile, styleFile } from './schema';
import { refusalOf, type StyleRefusal } from './style-refusal';

export type StyleReading =
  | { readonly ok: true; readonly style: BoxStyle; readonly data: StyleData }
  | { readonly ok: false; readonly refusals: readonly StyleRefusal[] };

/** source: our own, several times what the largest style here has */
const MOST_INTEGRALS = 6;
const MOST_REFUSALS = 20;

/**
 * A style from a file: size, nesting, JSON, header, every field, every formula, then every name, as a style of our own is checked. Never throws;
 * no code comes from the file. `id` is what it is called here, in place of the file's own. Whether its sizes make a box is asked of `notABox`, whether it closes of `proveStyle`.
 */
export function readStyle(text: string, id?: string): StyleReading {
  const parsed = parseStyleFile(text);
  if ('refusals' in parsed) return { ok: false, ...parsed };
  const file = readBy(styleFile, parsed.data);
  if (!file.ok) return { ok: false, refusals: file.refusals.slice(0, MOST_REFUSALS).map(refusedField) };
  const many = tooManyWays(file.value.style) ?? tooManyIntegrals(text);
  if (many !== null) return { ok: false, refusals: [many] };
  const refusals: StyleRefusal[] = [...treeFaults(file.value.style)];
  const style = refusals.length > 0 ? null : styleOf(file.value, refusals, id);
  if (style === null || refusals.length > 0) return { ok: false, refusals: refusals.slice(0, MOST_REFUSALS) };
  const slip = declarationSlip(style);
  return slip === null ? { ok: true, style, data: file.value.style } : { ok: false, refusals: [slip] };
}

/** Each is summed over hundreds of parts whenever the box is laid. */
function tooManyIntegrals(text: string): StyleRefusal | null {
  const count = text.split('integral').length - 1;
  return count <= MOST_INTEGRALS
    ? null
    : refusalOf(
        'too-many-integrals',
        '',
        'The file has {count} integrals.',
        { count: `${count}` },
        'Use at most 6: put one that is used twice into a working.',
      );
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

/** The same check of names and forms that our own styles pass, as a value. */
function declarationSlip(style: BoxStyle): StyleRefusal | null {
  try {
    checkOnce(style);
    return null;
  } catch (error) {
    if (!(error instanceof StyleError || error instanceof RangeError)) throw error;
    return refusalOf(
      'declaration',
      '',
      'The style does not fit together: {slip}.',
      { slip: error.message },
      'Change the name or the form it speaks of.',
    );
  }
}
