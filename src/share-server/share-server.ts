import type { IncomingMessage, ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { Database } from '@hocuspocus/extension-database';
import { type Extension, type onAuthenticatePayload, type onChangePayload, Server } from '@hocuspocus/server';
import { parseUpdateMeta } from 'yjs';
import { Guard, type Watched } from './guard';
import { LIMITS } from './limits';
import { isSame, readToken } from './proof';
import { serveApp } from './serve-app';
import type { ShareSettings } from './settings';
import { ShelfFiles } from './shelf-files';

export interface ShareServer {
  readonly port: number;
  /** Frames and callers turned away since the start. */
  readonly turnedAway: () => number;
  /** Says goodbye to everybody, keeps what is left to keep, and ends. */
  readonly close: () => Promise<void>;
}

/** A whole state takes the place of the changes so long after the last of them, and never later than so long. Source: our own. */
const FOLD_MS = 2000;
const FOLD_AT_LATEST_MS = 30_000;
/** What is still open at the end is waited for so long. Source: our own. */
const GOODBYE_MS = 5000;

/** Serves the built app and the exchange from one address. `tell`: a sentence for whoever runs it. */
export async function startShare(
  settings: ShareSettings,
  tell: (sentence: string) => void,
): Promise<ShareServer> {
  const files = await ShelfFiles.open(settings.data);
  const guard = new Guard(settings, () => Date.now());
  const app = serveApp(settings.app);
  const server = new Server(
    {
      quiet: true,
      stopOnSignals: false,
      debounce: FOLD_MS,
      maxDebounce: FOLD_AT_LATEST_MS,
      extensions: [
        ...(await joinedTo(settings.redis)),
        new Database({
          fetch: ({ documentName }) => files.fetch(documentName),
          store: ({ documentName, document }) =>
            files.store(documentName, document, document.getConnectionsCount() > 0),
        }),
        doorOf(files, guard),
        keeperOf(files, tell),
        {
          onRequest: ({ request, response }) => answer(request, response, app),
          onUpgrade: ({ request, socket }) => {
            if (guard.admits(request, port())) return Promise.resolve();
            (socket as { destroy(): void }).destroy();
            return dealtWith();
          },
        },
      ],
    },
    { maxPayload: LIMITS.frameBytes, path: '/exchange' },
  );
  server.webSocketServer.prependListener('connection', (socket: Watched, request: IncomingMessage) =>
    guard.watch(socket, request),
  );
  const port = () => (server.httpServer.address() as AddressInfo).port;
  await new Promise<void>((resolve, reject) => {
    server.httpServer.once('error', reject);
    server.httpServer.listen(settings.port, settings.host, () => resolve());
  });

  return {
    port: port(),
    turnedAway: () => guard.turnedAway,
    async close() {
      server.httpServer.close();
      const { hocuspocus } = server;
      for (const socket of server.webSocketServer.clients) socket.close(1001);
      const end = Date.now() + GOODBYE_MS;
      while (hocuspocus.getDocumentsCount() > 0 && Date.now() < end)
        await new Promise((resolve) => setTimeout(resolve, 20));
      for (const socket of server.webSocketServer.clients) socket.terminate();
      await hocuspocus.hooks('onDestroy', { instance: hocuspocus });
      server.httpServer.closeAllConnections();
      await files.close();
    },
  };
}

/** A refusal without words: the engine closes the door and writes nothing down. */
const refusal = (): Error => new Error('');

/** The engine takes an empty rejection for a request that was answered already. */
const ANSWERED = undefined as unknown as Error;
const dealtWith = () => Promise.reject(ANSWERED);

/** Who may open a shelf, and whether to write in it. One that is not there is made by whoever may write in it. */
function doorOf(files: ShelfFiles, guard: Guard): Extension {
  async function authenticate(call: onAuthenticatePayload): Promise<void> {
    const shown = readToken(call.token);
    if (!shown) throw refusal();
    const known = await files.proofOf(call.documentName);
    if (!known && !(shown.mayWrite && guard.mayCreate(call.request))) throw refusal();
    const wanted = known ?? (await files.create(call.documentName, shown.proof));
    if (!isSame(wanted, shown.proof)) throw refusal();
    call.connectionConfig.readOnly = !shown.mayWrite;
    guard.proven(call.request);
  }
  return {
    onAuthenticate: authenticate,
    beforeHandleMessage: ({ documentName, update }) =>
      files.sizeOf(documentName) + update.length > LIMITS.shelfBytes
        ? Promise.reject(refusal())
        : Promise.resolve(),
    beforeUnloadDocument: ({ documentName, document }) => files.store(documentName, document, false),
    afterUnloadDocument: ({ documentName }) => Promise.resolve(files.forget(documentName)),
  };
}

/** Puts every change on the disk, and only then tells the device that sent it: `{"kept":[[client, clock], …]}`. */
function keeperOf(files: ShelfFiles, tell: (sentence: string) => void): Extension {
  return {
    async onChange({ documentName, update, transactionOrigin }: onChangePayload) {
      try {
        await files.keep(documentName, update);
      } catch (error) {
        tell(`A change could not be put on the disk: ${error instanceof Error ? error.message : ''}`);
        return;
      }
      const kept = [...parseUpdateMeta(update).to];
      const from = transactionOrigin as { sendStateless?: (text: string) => void } | null;
      from?.sendStateless?.(JSON.stringify({ kept }));
    },
  };
}

/** `GET /exchange` says that there is one; everything else is a file of the app. Never lists anything. */
function answer(request: IncomingMessage, response: ServerResponse, app: ReturnType<typeof serveApp>) {
  if (request.url === '/exchange' && request.method === 'GET') {
    response.writeHead(200, { 'Content-Type': 'application/json', 'Cache-Control': 'no-store' });
    response.end('{"exchange":1}');
  } else app(request, response);
  return dealtWith();
}

/** What joins this server to its like; fetched only where there are any. */
const joinedTo = async (redis: URL | null): Promise<Extension[]> =>
  redis ? [await (await import('./joined-servers')).joinedBy(redis)] : [];
