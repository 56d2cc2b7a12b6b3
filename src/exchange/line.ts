import { HocuspocusProvider, HocuspocusProviderWebsocket } from '@hocuspocus/provider';
import type * as Y from 'yjs';
import type { ShelfKeys } from './keys';

interface LineEvents {
  /** Everything the server had is in the document. */
  readonly onSynced: () => void;
  /** The server keeps what these devices wrote up to these clocks. */
  readonly onKept: (kept: readonly (readonly [number, number])[]) => void;
  readonly onRefused: () => void;
  /** The line is broken; it does not mend by itself. */
  readonly onLost: () => void;
}

/** A line without a word for so long is dead; the server is asked for something more often than that. Source: our own. */
const SILENCE_MS = 45_000;
const ASK_MS = 15_000;

/** Opens one line to the server for one document. Returns a function that hangs up. */
export function openLine(
  address: string,
  { name, token }: ShelfKeys,
  document: Y.Doc,
  events: LineEvents,
): () => void {
  let over = false;
  const socket = new HocuspocusProviderWebsocket({
    url: address,
    autoConnect: false,
    maxAttempts: 1,
    messageReconnectTimeout: SILENCE_MS,
    onClose: () => lose(),
  });
  const provider = new HocuspocusProvider({
    websocketProvider: socket,
    name,
    token,
    document,
    awareness: null,
    forceSyncInterval: ASK_MS,
    onSynced: ({ state }) => {
      if (state && !over) events.onSynced();
    },
    onStateless: ({ payload }) => events.onKept(readKept(payload)),
    onAuthenticationFailed: () => {
      hangUp();
      events.onRefused();
    },
  });
  const hangUp = () => {
    if (over) return;
    over = true;
    provider.destroy();
    socket.destroy();
  };
  const lose = () => {
    if (over) return;
    hangUp();
    events.onLost();
  };
  provider.attach();
  socket.connect().catch(lose);
  return hangUp;
}

function readKept(payload: string): readonly (readonly [number, number])[] {
  try {
    const { kept } = JSON.parse(payload) as { kept?: unknown };
    return Array.isArray(kept) ? (kept as [number, number][]) : [];
  } catch {
    return [];
  }
}
