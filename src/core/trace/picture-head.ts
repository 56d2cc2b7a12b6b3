/** What a picture file is, told by its first bytes and never by its name. */
type PictureKind = 'png' | 'jpeg' | 'webp' | 'svg';

/** Why a file is not taken as a picture to draw over. */
export type PictureRefusal = 'unknown' | 'too-large' | 'too-many-pixels' | 'tangled';

interface PictureHead {
  readonly kind: PictureKind;
  /** Null for an outline, which has no pixels of its own. */
  readonly pixels: readonly [wide: number, high: number] | null;
}

/** Longest file read, bytes. source: our own; a scan of a large sheet at 600 dots an inch, and an outline several times the longest we tried */
export const MOST_BYTES = 25_000_000;
const MOST_OUTLINE_BYTES = 2_000_000;
/** Most pixels: a browser takes four bytes each to show them. source: our own */
const MOST_PIXELS = 80_000_000;
const LONGEST_SIDE = 20_000;

type Reading =
  | { readonly ok: true; readonly head: PictureHead }
  | { readonly ok: false; readonly why: PictureRefusal };

const refused = (why: PictureRefusal): Reading => ({ ok: false, why });

/**
 * Looks at a picture file before a browser opens it: its kind, and how many pixels it would unpack to. Source: PNG (ISO/IEC 15948), JPEG
 * (ITU T.81), WebP (RFC 9649). An outline is looked through for what makes a small file endless to draw. Never throws.
 */
export function readPictureHead(bytes: Uint8Array): Reading {
  if (bytes.length > MOST_BYTES) return refused('too-large');
  for (const [kind, read] of RASTERS) {
    const pixels = read(bytes);
    if (pixels === undefined) continue;
    if (pixels === null) return refused('unknown');
    const [wide, high] = pixels;
    if (wide < 1 || high < 1) return refused('unknown');
    if (wide > LONGEST_SIDE || high > LONGEST_SIDE || wide * high > MOST_PIXELS)
      return refused('too-many-pixels');
    return { ok: true, head: { kind, pixels } };
  }
  return outline(bytes);
}

/** Pixels; null where the file breaks off before it says them; undefined for a file of another kind. */
type Read = (bytes: Uint8Array) => readonly [number, number] | null | undefined;

const at = (bytes: Uint8Array, place: number): number => bytes[place] ?? 0;
const big = (bytes: Uint8Array, place: number, count: number): number => {
  let sum = 0;
  for (let k = 0; k < count; k++) sum = sum * 256 + at(bytes, place + k);
  return sum;
};
const little = (bytes: Uint8Array, place: number, count: number): number => {
  let sum = 0;
  for (let k = count - 1; k >= 0; k--) sum = sum * 256 + at(bytes, place + k);
  return sum;
};
const letters = (bytes: Uint8Array, from: number, to: number): string => {
  let text = '';
  for (let place = from; place < Math.min(to, bytes.length); place++)
    text += String.fromCharCode(at(bytes, place));
  return text;
};

const png: Read = (bytes) => {
  if (letters(bytes, 0, 8) !== '\u0089PNG\r\n\u001a\n') return undefined;
  return letters(bytes, 12, 16) === 'IHDR' && bytes.length >= 24
    ? [big(bytes, 16, 4), big(bytes, 20, 4)]
    : null;
};

/** Marks of frames: those from C0 to CF but for tables and restarts. */
const isFrame = (mark: number): boolean => mark >= 0xc0 && mark <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(mark);

const jpeg: Read = (bytes) => {
  if (at(bytes, 0) !== 0xff || at(bytes, 1) !== 0xd8) return undefined;
  let place = 2;
  while (place + 9 <= bytes.length) {
    if (at(bytes, place) !== 0xff) return null;
    const mark = at(bytes, place + 1);
    if (mark === 0xff) place++;
    else if (isFrame(mark)) return [big(bytes, place + 7, 2), big(bytes, place + 5, 2)];
    else place += 2 + Math.max(2, big(bytes, place + 2, 2));
  }
  return null;
};

const webp: Read = (bytes) => {
  if (letters(bytes, 0, 4) !== 'RIFF' || letters(bytes, 8, 12) !== 'WEBP') return undefined;
  if (bytes.length < 30) return null;
  const chunk = letters(bytes, 12, 16);
  if (chunk === 'VP8X') return [little(bytes, 24, 3) + 1, little(bytes, 27, 3) + 1];
  if (chunk === 'VP8 ') return [little(bytes, 26, 2) % 16384, little(bytes, 28, 2) % 16384];
  if (chunk !== 'VP8L') return null;
  const sides = little(bytes, 21, 4);
  return [(sides % 16384) + 1, (Math.floor(sides / 16384) % 16384) + 1];
};

const RASTERS: readonly (readonly [PictureKind, Read])[] = [
  ['png', png],
  ['jpeg', jpeg],
  ['webp', webp],
];

/** How often an outline may use a part again, or fill with one: ten of each inside another are ten thousand million. source: our own */
const MOST_USES = 16;

/** Names for other text: drawing programs write a few short ones, and one that holds others can grow without end. source: our own, letters */
const LONGEST_ENTITY = 200;

function outline(bytes: Uint8Array): Reading {
  if (!/^(?:\u00ef\u00bb\u00bf)?\s*<(?:\?xml|!--|!DOCTYPE|svg)/i.test(letters(bytes, 0, 200)))
    return refused('unknown');
  if (bytes.length > MOST_OUTLINE_BYTES) return refused('too-large');
  const text = letters(bytes, 0, bytes.length);
  if (!/<(?:\w+:)?svg[\s/>]/i.test(text)) return refused('unknown');
  const entities = text.match(/<!ENTITY[^>]*>?/gi) ?? [];
  const uses = text.match(/<(?:\w+:)?(?:use|pattern|mask|filter|marker|image|feImage)[\s/>]/gi)?.length ?? 0;
  if (uses > MOST_USES || entities.some((each) => each.length > LONGEST_ENTITY || /["'][^"']*&/.test(each)))
    return refused('tangled');
  return { ok: true, head: { kind: 'svg', pixels: null } };
}
