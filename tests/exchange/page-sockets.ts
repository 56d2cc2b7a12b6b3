import WebSocket from 'ws';

/** Lines from here come from this origin, as a page's do. Returns a function that puts back what was there. */
export function socketsOfPage(origin: string): () => void {
  const usual = globalThis.WebSocket;
  globalThis.WebSocket = class extends WebSocket {
    constructor(address: string) {
      super(address, { origin });
      // A page does not hear of a line that is given up before it stands.
      this.on('error', () => undefined);
    }
  } as unknown as typeof usual;
  return () => {
    globalThis.WebSocket = usual;
  };
}
