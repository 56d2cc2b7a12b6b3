/** What a device holds of a shared shelf: what opens the rows, and what it shows the server. */
export interface ShelfKeys {
  /** The shelf's name on the server: 128 random bits. */
  readonly name: string;
  readonly token: string;
  /** Opens and seals rows; never leaves the device except in a link that the maker hands over. */
  readonly content: CryptoKey;
  /** Names the places of rows so that the server cannot read them; null where nothing is written. */
  readonly places: CryptoKey | null;
}

/** A link holds the name and one secret. Who has the secret of writers can do everything; that of readers opens rows and proves no more. */
export type ShelfLink =
  | { readonly may: 'write' | 'count'; readonly name: string; readonly secret: string }
  | { readonly may: 'look'; readonly name: string; readonly content: string; readonly reading: string };

const utf8 = new TextEncoder();

export const toText = (bytes: Uint8Array): string =>
  btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replaceAll('=', '');

export const toBytes = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0));

const random = (bytes: number): string => toText(crypto.getRandomValues(new Uint8Array(bytes)));

/** A shelf nobody could guess. */
export const newShelf = (may: 'write' | 'count' = 'write'): ShelfLink & { readonly secret: string } => ({
  may,
  name: random(16),
  secret: random(32),
});

/** Bytes made of the secret for one purpose; HKDF with SHA-256 (RFC 5869). */
async function derive(secret: string, purpose: string): Promise<Uint8Array<ArrayBuffer>> {
  const key = await crypto.subtle.importKey('raw', toBytes(secret), 'HKDF', false, ['deriveBits']);
  const how = { name: 'HKDF', hash: 'SHA-256', salt: new Uint8Array(), info: utf8.encode(purpose) };
  return new Uint8Array(await crypto.subtle.deriveBits(how, key, 256));
}

const sha256 = async (bytes: Uint8Array<ArrayBuffer>) =>
  new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));

export async function keysOf(link: ShelfLink): Promise<ShelfKeys> {
  const isLook = link.may === 'look';
  const raw = isLook ? toBytes(link.content) : await derive(link.secret, 'rows');
  const content = await crypto.subtle.importKey('raw', raw, 'AES-GCM', false, ['encrypt', 'decrypt']);
  if (isLook) return { name: link.name, token: `r.${link.reading}`, content, places: null };
  const hmac = { name: 'HMAC', hash: 'SHA-256' };
  const places = await crypto.subtle.importKey('raw', await derive(link.secret, 'places'), hmac, false, [
    'sign',
  ]);
  return { name: link.name, token: `w.${toText(await derive(link.secret, 'writing'))}`, content, places };
}

/** What a learner gets: it opens every row, and proves no right to write. */
export async function lookLink(link: ShelfLink): Promise<ShelfLink> {
  if (link.may === 'look') return link;
  const reading = toText(await sha256(await derive(link.secret, 'writing')));
  return { may: 'look', name: link.name, content: toText(await derive(link.secret, 'rows')), reading };
}

const MARKS = { write: 'join', count: 'helper', look: 'look' } as const;

/** The address after `#/`: `join/…`, `helper/…` or `look/…`. */
export const writeLink = (link: ShelfLink): string =>
  `${MARKS[link.may]}/${link.may === 'look' ? `${link.name}.${link.content}.${link.reading}` : `${link.name}.${link.secret}`}`;

/** Reads a whole address or its last part; null: it is no such link. */
export function readLink(text: string): ShelfLink | null {
  const [, mark, name = '', rest = ''] =
    /(?:^|[#/])(join|helper|look)\/([\w-]{22})\.([\w.-]+)$/.exec(text.trim()) ?? [];
  const parts = rest.split('.');
  if (!mark || parts.some((part) => !/^[\w-]{43}$/.test(part))) return null;
  const [first = '', second] = parts;
  if (mark === 'look')
    return second && parts.length === 2 ? { may: 'look', name, content: first, reading: second } : null;
  return parts.length === 1 ? { may: mark === 'join' ? 'write' : 'count', name, secret: first } : null;
}

/** Seals a value for one shelf; AES-GCM with 96 random bits in front (NIST SP 800-38D, 8.2.2). */
export async function seal({ content, name }: ShelfKeys, value: unknown): Promise<Uint8Array> {
  const iv = crypto.getRandomValues(new Uint8Array(12));
  const how = { name: 'AES-GCM', iv, additionalData: utf8.encode(name) };
  const sealed = new Uint8Array(
    await crypto.subtle.encrypt(how, content, utf8.encode(JSON.stringify(value))),
  );
  const all = new Uint8Array(iv.length + sealed.length);
  all.set(iv);
  all.set(sealed, iv.length);
  return all;
}

/** What was sealed; undefined if it was not sealed for this shelf, or was changed since. */
export async function unseal({ content, name }: ShelfKeys, sealed: unknown): Promise<unknown> {
  if (!(sealed instanceof Uint8Array) || sealed.length < 28) return undefined;
  const bytes = Uint8Array.from(sealed);
  const how = { name: 'AES-GCM', iv: bytes.subarray(0, 12), additionalData: utf8.encode(name) };
  try {
    const plain = await crypto.subtle.decrypt(how, content, bytes.subarray(12));
    return JSON.parse(new TextDecoder().decode(plain));
  } catch {
    return undefined;
  }
}

/** The place of a value, by what it is a value of; says nothing to whoever has not the key. */
export async function placeOf({ places }: ShelfKeys, path: readonly string[]): Promise<string> {
  if (!places) throw new TypeError('a reader writes nothing');
  const mac = await crypto.subtle.sign('HMAC', places, utf8.encode(JSON.stringify(path)));
  return toText(new Uint8Array(mac).subarray(0, 16));
}
