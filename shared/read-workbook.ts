import '../src/core/rows/jitless';
import { describeValue, type Refusal, type RefusalCode, readBy } from '../src/core/rows/refusals';
import { nestsDeeperThan, repeatedKey, tooWide } from '../src/core/rows/scan-json';
import { moveToNewest } from './migrations';
import { TABLES } from './tables';
import { FORMAT, SCHEMA, type WorkbookFile, workbookFile } from './workbook';

// In every browser and in Node; the core's own compiler settings know neither.
declare const TextDecoder: new (
  label: 'utf-8',
  options: { readonly fatal: true },
) => { decode(bytes: Uint8Array): string };

const MEGABYTE = 1_048_576;
/**
 * Limits on size in bytes (letters, where text is given) and on nesting: `bytes` for a file of one thing without its photos, `backupBytes`
 * for any file whole. Source: our own, twenty times a season's workbook. `entries` of one list and `fields` of one object are far above what the
 * fields' own limits let in: they keep what is no workbook from being looked through entry by entry.
 */
export const FILE_LIMITS = {
  bytes: 5 * MEGABYTE,
  backupBytes: 20 * MEGABYTE,
  depth: 64,
  entries: 50_000,
  fields: 1000,
};

export type WorkbookReading =
  | { readonly ok: true; readonly file: WorkbookFile }
  | { readonly ok: false; readonly refusals: readonly Refusal[]; readonly original: string | Uint8Array };

/** A file that came through the gates: parsed, of our format and no newer than we are, its other fields not yet looked at. */
export type GateReading =
  | { readonly ok: true; readonly data: Readonly<Record<string, unknown>>; readonly schema: number }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** The gates that any file of ours passes before its fields are read, in this order: size, UTF-8, nesting, width, JSON, header. Never throws. */
export function passGates(original: string | Uint8Array, limits = FILE_LIMITS): GateReading {
  const refuse = (code: RefusalCode, path: string, found: string, expected: string): GateReading => ({
    ok: false,
    refusals: [{ code, path, found, expected }],
  });

  const size = original.length;
  if (size > limits.backupBytes)
    return refuse('too-large', '', `${size} bytes`, `at most ${limits.backupBytes} bytes`);

  const text = typeof original === 'string' ? original : decode(original);
  if (text === null) return refuse('not-utf8', '', 'bytes that are not text', 'text in UTF-8');
  if (nestsDeeperThan(limits.depth, text))
    return refuse('too-deep', '', `more than ${limits.depth} levels`, `at most ${limits.depth} levels`);

  const wide = tooWide(limits, text);
  if (wide)
    return refuse('too-many', wide.path, `more than ${wide.most} ${wide.kind}`, `at most ${wide.most}`);

  const data = parse(text);
  if (data === undefined) return refuse('not-json', '', describeValue(text.slice(0, 40)), 'a saved workbook');
  const key = repeatedKey(text);
  if (key !== null) return refuse('repeated-key', key, `“${key}” twice in one place`, 'each name once');

  if (!isObject(data) || data['format'] !== FORMAT)
    return refuse('not-a-workbook', 'format', describeValue(isObject(data) ? data['format'] : data), FORMAT);
  const schema = data['schema'];
  if (typeof schema !== 'number' || !Number.isSafeInteger(schema) || schema < 1)
    return refuse('not-a-workbook', 'schema', describeValue(schema), `a whole number from 1 to ${SCHEMA}`);
  if (schema > SCHEMA) return refuse('newer-schema', 'schema', `${schema}`, `at most ${SCHEMA}`);
  const bare = size - lettersOfPhotos(data['photos']);
  if (data['kind'] !== 'everything' && bare > limits.bytes)
    return refuse('too-large', '', `${bare} bytes without photos`, `at most ${limits.bytes} bytes`);
  return { ok: true, data, schema };
}

/**
 * A workbook somebody hands us: the gates, then every field. The first gate that closes gives the refusals; nothing is changed and the
 * original is handed back. Never throws.
 */
export function readWorkbook(original: string | Uint8Array, limits = FILE_LIMITS): WorkbookReading {
  const refuseAll = (refusals: readonly Refusal[]): WorkbookReading => ({ ok: false, refusals, original });
  const gates = passGates(original, limits);
  if (!gates.ok) return refuseAll(gates.refusals);
  const moved = moveToNewest(gates.data, gates.schema);
  const reading = readBy(workbookFile, moved);
  if (!reading.ok) return refuseAll(reading.refusals);
  const twice = repeatedIds(reading.value);
  return twice.length > 0 ? refuseAll(twice) : { ok: true, file: reading.value };
}

const isObject = (data: unknown): data is Readonly<Record<string, unknown>> =>
  typeof data === 'object' && data !== null && !Array.isArray(data);

/** How much of a file its photos are: each was made small when it was taken, and the list itself is bounded. */
const lettersOfPhotos = (photos: unknown): number =>
  Array.isArray(photos)
    ? photos.reduce<number>((sum, photo) => {
        const jpeg = isObject(photo) ? photo['jpeg'] : null;
        return sum + (typeof jpeg === 'string' ? jpeg.length : 0);
      }, 0)
    : 0;

function decode(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** The parsed text; undefined, which no JSON text gives, if it is not JSON. A leading byte order mark is let pass. */
function parse(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return undefined;
  }
}

function repeatedIds(file: WorkbookFile): readonly Refusal[] {
  return TABLES.flatMap((table) => {
    const seen = new Set<string>();
    return file[table].flatMap(({ id }, index): Refusal[] => {
      if (!seen.has(id)) {
        seen.add(id);
        return [];
      }
      return [{ code: 'same-id', path: `${table}[${index}].id`, found: id, expected: 'an id used once' }];
    });
  });
}
