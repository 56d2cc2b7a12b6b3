import type { DeviceNote } from './devices';
import { readLink, type ShelfLink, toBytes, toText, writeLink } from './keys';
import type { Pairing } from './memory-of-sharing';

/** A shelf has moved: the new link, sealed once for each device that goes along. Who is not named has been taken off the list. */
export interface Moved {
  readonly by: JsonWebKey;
  readonly links: Readonly<Record<string, string>>;
}

const CURVE = { name: 'ECDH', namedCurve: 'P-256' };
const AES = { name: 'AES-GCM', length: 256 };
const utf8 = new TextEncoder();

export const newPair = (): Promise<CryptoKeyPair> => crypto.subtle.generateKey(CURVE, false, ['deriveKey']);

export const publicOf = (pair: CryptoKeyPair): Promise<JsonWebKey> =>
  crypto.subtle.exportKey('jwk', pair.publicKey);

async function between(pair: CryptoKeyPair, other: JsonWebKey): Promise<CryptoKey> {
  const key = await crypto.subtle.importKey('jwk', other, CURVE, false, []);
  return crypto.subtle.deriveKey({ name: 'ECDH', public: key }, pair.privateKey, AES, false, [
    'encrypt',
    'decrypt',
  ]);
}

/** Seals the new link for each of these devices. */
export async function handOver(
  { pair }: Pairing,
  link: ShelfLink,
  devices: readonly DeviceNote[],
): Promise<Moved> {
  const links: Record<string, string> = {};
  for (const { id, key } of devices) {
    const iv = crypto.getRandomValues(new Uint8Array(12));
    const how = { name: 'AES-GCM', iv };
    const sealed = await crypto.subtle.encrypt(how, await between(pair, key), utf8.encode(writeLink(link)));
    links[id] = `${toText(iv)}.${toText(new Uint8Array(sealed))}`;
  }
  return { by: await publicOf(pair), links };
}

/** The new link, if it was sealed for this device; null: it was taken off the list. */
export async function takeOver({ pair, device }: Pairing, moved: unknown): Promise<ShelfLink | null> {
  const { by, links } = (moved ?? {}) as Partial<Moved>;
  const [iv, sealed] = (links?.[device] ?? '').split('.');
  if (!by || !iv || !sealed) return null;
  try {
    const how = { name: 'AES-GCM', iv: toBytes(iv) };
    const plain = await crypto.subtle.decrypt(how, await between(pair, by), toBytes(sealed));
    return readLink(new TextDecoder().decode(plain));
  } catch {
    return null;
  }
}
