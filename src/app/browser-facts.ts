import type { StorageFacts } from '../state/ports';

/** What this browser says of our storage. It may round what it says, and some say nothing. */
export async function storageFacts(): Promise<StorageFacts> {
  const unknown = { persisted: null, usedBytes: null, roomBytes: null };
  if (!('storage' in navigator)) return unknown;
  const persisted = await ask(() => navigator.storage.persisted());
  const estimate = await ask(() => navigator.storage.estimate());
  return { persisted, usedBytes: estimate?.usage ?? null, roomBytes: estimate?.quota ?? null };
}

/** Older browsers lack one or the other, and a private window may refuse to say. */
async function ask<Answer>(question: () => Promise<Answer>): Promise<Answer | null> {
  try {
    return await question();
  } catch {
    return null;
  }
}
