import { deflateSync, inflateSync, strToU8 } from 'fflate';
import type { Refusal, RefusalCode } from '../src/core/rows/refusals';
import { readWorkbook, type WorkbookReading } from './read-workbook';
import type { WorkbookFile } from './workbook';
import { inOrder } from './write-workbook';

/**
 * A recipe in an address: `#v1.` and the file, deflated (RFC 1951) and in base64url (RFC 4648, section 5, without padding). The fragment of
 * an address is not sent to any server (RFC 9110, from memory); it does stay in histories and messages, so a link carries no photos.
 */
const LINK_MARK = 'v1.';

/** Most letters of a link, since messages cut long ones (source: our own); most bytes it may unpack to (source: our own). */
export const LINK_LIMITS = { letters: 8000, unpackedBytes: 200_000 };

export type LinkWriting =
  | { readonly ok: true; readonly fragment: string }
  /** Too long to be sent as a link; a file holds it. */
  | { readonly ok: false; readonly letters: number };

/** The fragment (without `#`) that holds a file. The same file always gives the same fragment. */
export function writeLink(file: WorkbookFile): LinkWriting {
  const bare = inOrder({ ...file, photos: [] });
  const fragment = LINK_MARK + toBase64Url(deflateSync(strToU8(JSON.stringify(bare)), { level: 9 }));
  return fragment.length <= LINK_LIMITS.letters
    ? { ok: true, fragment }
    : { ok: false, letters: fragment.length };
}

/** The file in a fragment (without `#`), through the gates of any file after the link's own. Nothing is kept; never throws. */
export function readLink(fragment: string): WorkbookReading {
  const refuse = (code: RefusalCode, found: string, expected: string): WorkbookReading => ({
    ok: false,
    refusals: [{ code, path: 'link', found, expected } satisfies Refusal],
    original: fragment,
  });
  const { letters, unpackedBytes } = LINK_LIMITS;
  if (!fragment.startsWith(LINK_MARK))
    return refuse('not-a-workbook', `"${fragment.slice(0, 20)}"`, `a link that begins with ${LINK_MARK}`);
  if (fragment.length > letters)
    return refuse('too-large', `${fragment.length} letters`, `at most ${letters} letters`);
  const bytes = unpack(fragment.slice(LINK_MARK.length));
  if (!bytes) return refuse('not-json', 'letters that do not unpack', 'the whole link, unchanged');
  if (bytes.length > unpackedBytes)
    return refuse('too-large', `${bytes.length} bytes`, `at most ${unpackedBytes} bytes`);
  const reading = readWorkbook(bytes);
  return reading.ok ? reading : { ...reading, original: fragment };
}

/** A link's limit on letters bounds what it can unpack to (deflate gains at most about a thousandfold), so this cannot run away. */
function unpack(text: string): Uint8Array | null {
  if (!/^[A-Za-z0-9_-]+$/.test(text)) return null;
  try {
    return inflateSync(fromBase64Url(text));
  } catch {
    return null;
  }
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
