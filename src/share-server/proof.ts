import { createHash, timingSafeEqual } from 'node:crypto';

/**
 * What a caller shows to open a shelf, as the devices make it of the shelf's key: `w.` and the secret of those who write, or `r.` and the
 * secret of those who only read, which is the SHA-256 of the first. The server keeps the SHA-256 of the second, from which neither follows.
 */
export interface Shown {
  readonly mayWrite: boolean;
  readonly proof: Uint8Array;
}

const sha256 = (bytes: Uint8Array): Uint8Array => createHash('sha256').update(bytes).digest();

/** What a token shows; null: it is none. */
export function readToken(token: string): Shown | null {
  const [, kind, text = ''] = /^([wr])\.([A-Za-z0-9_-]{43})$/.exec(token) ?? [];
  if (!kind) return null;
  const secret = Buffer.from(text, 'base64url');
  const mayWrite = kind === 'w';
  return { mayWrite, proof: sha256(mayWrite ? sha256(secret) : secret) };
}

export const isSame = (a: Uint8Array, b: Uint8Array): boolean =>
  a.length === b.length && timingSafeEqual(a, b);
