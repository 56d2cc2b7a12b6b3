import { inflateSync, strToU8, unzlibSync, zlibSync } from 'fflate';
import type { Refusal, RefusalCode } from '../src/core/rows/refusals';
import { readWorkbook, type WorkbookReading } from './read-workbook';
import { withoutPrices, withoutStock } from './without-private';
import type { WorkbookFile } from './workbook';
import { inOrder } from './write-workbook';

/**
 * A recipe in an address: `#v2.` and the file, deflated with its checksum (RFC 1950) and in base64url (RFC 4648, section 5, without padding).
 * Links of the first kind, `#v1.`, have no checksum (RFC 1951) and are read as ever. The fragment of an address is not sent to any server
 * (RFC 9110, from memory); it does stay in histories and messages, so a link carries no photos or stock, and notes and prices only where the maker ticks them.
 */
const LINK_MARK = 'v2.';
const OLD_MARK = 'v1.';

/** Most letters of a link, since messages cut long ones (source: our own); most bytes it may unpack to (source: our own). */
export const LINK_LIMITS = { letters: 8000, unpackedBytes: 200_000 };

export type LinkWriting =
  | { readonly ok: true; readonly fragment: string }
  /** Too long to be sent as a link; a file holds it. */
  | { readonly ok: false; readonly letters: number };

/** What of the maker's own business a link takes along; nothing unless it is said. */
export interface SentToo {
  readonly notes?: boolean;
  readonly prices?: boolean;
}

/** The fragment (without `#`) that holds a file, without what is the maker's own business. The same file always gives the same fragment. */
export function writeLink(file: WorkbookFile, sentToo: SentToo = {}): LinkWriting {
  const bare = inOrder(withoutPrivate(file, sentToo));
  const fragment = LINK_MARK + toBase64Url(zlibSync(strToU8(JSON.stringify(bare)), { level: 9 }));
  return fragment.length <= LINK_LIMITS.letters
    ? { ok: true, fragment }
    : { ok: false, letters: fragment.length };
}

/** What stays at home: photos, what is on hand, and, unless they are sent too, private notes and prices. A price of nothing is one that is not known yet. */
const withoutPrivate = (file: WorkbookFile, { notes = false, prices = false }: SentToo): WorkbookFile => ({
  ...file,
  photos: [],
  recipes: notes ? file.recipes : file.recipes.map((recipe) => ({ ...recipe, notes: '' })),
  papers: file.papers.map((paper) => ({ ...paper, ...(!prices && { packs: [] }), onHandSheets: 0 })),
  supplies: file.supplies.map(withoutStock).map(prices ? (supply) => supply : withoutPrices),
});

/** The file in a fragment (without `#`), through the gates of any file after the link's own. Nothing is kept; never throws. */
export function readLink(fragment: string): WorkbookReading {
  const refuse = (code: RefusalCode, found: string, expected: string): WorkbookReading => ({
    ok: false,
    refusals: [{ code, path: 'link', found, expected } satisfies Refusal],
    original: fragment,
  });
  const { letters, unpackedBytes } = LINK_LIMITS;
  const checked = fragment.startsWith(LINK_MARK);
  if (!checked && !fragment.startsWith(OLD_MARK))
    return refuse('not-a-workbook', `"${fragment.slice(0, 20)}"`, `a link that begins with ${LINK_MARK}`);
  if (fragment.length > letters)
    return refuse('too-large', `${fragment.length} letters`, `at most ${letters} letters`);
  const bytes = unpack(fragment.slice(LINK_MARK.length), checked);
  if (!bytes) return refuse('damaged', 'letters that do not unpack', 'the whole link, unchanged');
  if (bytes.length > unpackedBytes)
    return refuse('too-large', `${bytes.length} bytes`, `at most ${unpackedBytes} bytes`);
  const reading = readWorkbook(bytes);
  if (!reading.ok) return { ...reading, original: fragment };
  const { kind, recipes } = reading.file;
  if (kind !== 'recipe' || recipes.length !== 1)
    return refuse('too-many', `${recipes.length} recipes`, 'one recipe in a link');
  return reading;
}

/** A link's limit on letters bounds what it can unpack to (deflate gains at most about a thousandfold), so this cannot run away. */
function unpack(text: string, checked: boolean): Uint8Array | null {
  if (!/^[A-Za-z0-9_-]+$/.test(text)) return null;
  const packed = fromBase64Url(text);
  try {
    if (!checked) return inflateSync(packed);
    const bytes = unzlibSync(packed);
    return isWhole(packed, bytes) ? bytes : null;
  } catch {
    return null;
  }
}

/** Whether the last four bytes are the Adler-32 of what was unpacked. source: RFC 1950, section 2.2 */
function isWhole(packed: Uint8Array, bytes: Uint8Array): boolean {
  let [low, high] = [1, 0];
  for (const byte of bytes) {
    low = (low + byte) % 65_521;
    high = (high + low) % 65_521;
  }
  const end = packed.length;
  return (
    end >= 4 && new DataView(packed.buffer, packed.byteOffset).getUint32(end - 4) === high * 65_536 + low
  );
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const VALUES = new Map(Array.from(LETTERS, (letter, value) => [letter, value]));

/** Three bytes are four letters of six bits each; a last one or two bytes are two or three letters. */
function toBase64Url(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 3) {
    const [a = 0, b = 0, c = 0] = bytes.subarray(at, at + 3);
    const bits = (a << 16) | (b << 8) | c;
    const letters = Math.min(4, bytes.length - at + 1);
    for (let index = 0; index < letters; index++) text += LETTERS.charAt((bits >> (18 - 6 * index)) & 63);
  }
  return text;
}

function fromBase64Url(text: string): Uint8Array {
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  for (let at = 0, to = 0; at < text.length; at += 4) {
    let bits = 0;
    for (let index = 0; index < 4; index++) bits = (bits << 6) | (VALUES.get(text[at + index] ?? 'A') ?? 0);
    for (let index = 0; index < 3 && to < bytes.length; index++)
      bytes[to++] = (bits >> (16 - 8 * index)) & 255;
  }
  return bytes;
}
