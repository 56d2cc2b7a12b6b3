/** What a device holds of a shared shelf: what opens the rows, and what it shows the server. */
export interface ShelfKeys {
  /** The shelf's name on the server: 128 random bits. */
  readonly name: string;
  readonly token: string;
  /** Opens and seals rows; never leaves the device except in a link that the maker hands over. */
  readonly content: CryptoKey;
  /** Names the places of rows so that the server cannot read them. */
  readonly places: CryptoKey;
}

/** A link holds the name and one secret. Who has it can do everything. */
export interface ShelfLink {
  readonly name: string;
  readonly secret: string;
}

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
export const newShelf = (): ShelfLink => ({ name: random(16), secret: random(32) });

/** Bytes made of the secret for one purpose; HKDF with SHA-256 (RFC 5869). */
async function derive(secret: string, purpose: string): Promise<Uint8Array<ArrayBuffer>> {
  const key = await crypto.subtle.importKey('raw', toBytes(secret), 'HKDF', false, ['deriveBits']);
  const how = { name: 'HKDF', hash: 'SHA-256', salt: new Uint8Array(), info: utf8.encode(purpose) };
  return new Uint8Array(await crypto.subtle.deriveBits(how, key, 256));
}

export const keysOf = async ({ name, secret }: ShelfLink): Promise<ShelfKeys> =>
  keysWith(name, secret, `w.${toText(await derive(secret, 'writing'))}`);

async function keysWith(name: string, secret: string, token: string): Promise<ShelfKeys> {
  const [rows, places] = await Promise.all([derive(secret, 'rows'), derive(secret, 'places')]);
  const hmac = { name: 'HMAC', hash: 'SHA-256' };
  return {
    name,
    token,
    content: await crypto.subtle.importKey('raw', rows, 'AES-GCM', false, ['encrypt', 'decrypt']),
    places: await crypto.subtle.importKey('raw', places, hmac, false, ['sign']),
  };
}

/** The address after `#/`: `join/…`. */
export const writeLink = ({ name, secret }: ShelfLink): string => `join/${name}.${secret}`;

/** Reads a whole address or its last part; null: it is no such link. */
export function readLink(text: string): ShelfLink | null {
  const [, name, secret] = /(?:^|[#/])join\/([\w-]{22})\.([\w-]{43})$/.exec(text.trim()) ?? [];
  return name && secret ? { name, secret } : null;
}

/** A link that shows one event and opens nothing of the shelf: `bench` for helpers, who count in it, `class` for learners, who look. */
export interface ShownLink {
  readonly kind: 'bench' | 'class';
  readonly name: string;
  /** Opens what is shown, and nothing else. */
  readonly view: string;
  /** Lets whoever shows it to the server read there, and not write. */
  readonly reading: string;
}

/** What stays on the shelf of such a link: `writing`, from which `reading` follows, and not the other way round. */
export interface OwnShown extends Omit<ShownLink, 'reading'> {
  readonly writing: string;
}

export const newShown = (kind: ShownLink['kind']): OwnShown => ({
  kind,
  name: random(16),
  view: random(32),
  writing: random(32),
});

/** The link to hand over. */
export async function linkOf({ kind, name, view, writing }: OwnShown): Promise<ShownLink> {
  const reading = await crypto.subtle.digest('SHA-256', toBytes(writing));
  return { kind, name, view, reading: toText(new Uint8Array(reading)) };
}

export const writeShown = ({ kind, name, view, reading }: ShownLink): string =>
  `${kind}/${name}.${view}.${reading}`;

/** Reads a whole address or its last part; null: it is no such link. */
export function readShown(text: string): ShownLink | null {
  const [, kind, name, view, reading] =
    /(?:^|[#/])(bench|class)\/([\w-]{22})\.([\w-]{43})\.([\w-]{43})$/.exec(text.trim()) ?? [];
  return kind && name && view && reading ? { kind: kind as ShownLink['kind'], name, view, reading } : null;
}

/** Opens what a link shows: to read for whoever has the link, to write for the shelf. */
export const shownKeys = (link: ShownLink | OwnShown): Promise<ShelfKeys> =>
  keysWith(link.name, link.view, 'writing' in link ? `w.${link.writing}` : `r.${link.reading}`);

/** Where helpers write what they counted, apart from what they are shown: follows from the link, and leads nowhere else. */
export async function countingKeys({ view }: Pick<ShownLink, 'view'>): Promise<ShelfKeys> {
  const name = (await derive(view, 'name of counts')).slice(0, 16);
  return keysOf({ name: toText(name), secret: toText(await derive(view, 'counts')) });
}

/** What names of helpers of one link begin with; no device of the shelf has such a name. */
export const helpersOf = (name: string): string =>
  `h-${[...toBytes(name).subarray(0, 6)].map((byte) => byte.toString(16).padStart(2, '0')).join('')}-`;

/** A name for a device: letters and digits. */
export const newDevice = (prefix: string): string =>
  prefix +
  random(9)
    .toLowerCase()
    .replace(/[^a-z0-9]/g, '0');

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
  const mac = await crypto.subtle.sign('HMAC', places, utf8.encode(JSON.stringify(path)));
  return toText(new Uint8Array(mac).subarray(0, 16));
}
