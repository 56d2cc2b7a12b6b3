/** A new id of 32 hexadecimal digits. `crypto.randomUUID` is there only where the address is a secure one; this is there everywhere. */
export const randomId = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join(
    '',
  );
