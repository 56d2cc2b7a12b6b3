import type { IncomingMessage } from 'node:http';
import { Allowance, LIMITS } from './limits';
import type { ShareSettings } from './settings';

/** What the guard needs of an open connection. */
export interface Watched {
  emit(event: string, ...args: readonly unknown[]): boolean;
  once(event: 'close', done: () => void): unknown;
  terminate(): void;
}

const NAME = new RegExp(`^[A-Za-z0-9_-]{${LIMITS.nameLetters}}$`);
/** The kinds of message that devices send, by the numbers of the protocol: sync (0), proof (2), answer to a sync (4), goodbye (7). */
const KINDS = [0, 2, 4, 7];

/** Watches over who comes in, and how much they send. Nothing of what they send is written down. */
export class Guard {
  readonly #settings: ShareSettings;
  readonly #now: () => number;
  readonly #connections = new Map<string, number>();
  readonly #newShelves = new Map<string, Allowance>();
  readonly #waiting = new Map<string, () => void>();
  #turnedAway = 0;

  constructor(settings: ShareSettings, now: () => number) {
    this.#settings = settings;
    this.#now = now;
  }

  /** Frames and callers turned away since the start. */
  get turnedAway(): number {
    return this.#turnedAway;
  }

  /** Whether a page of ours asks, and this caller has not too many connections already. */
  admits(request: IncomingMessage, port: number): boolean {
    const { origin } = this.#settings;
    const ours = origin ? [origin] : [`http://127.0.0.1:${port}`, `http://localhost:${port}`];
    const path = (request.url ?? '').replace(/\?.*$/, '');
    const few = (this.#connections.get(this.#caller(request)) ?? 0) < LIMITS.connectionsPerCaller;
    const admitted = path === '/exchange' && ours.includes(request.headers.origin ?? '') && few;
    if (!admitted) this.#turnedAway++;
    return admitted;
  }

  /** Stands between a connection and whoever reads it: what is too much, or no message of ours, ends it. */
  watch(socket: Watched, request: IncomingMessage): void {
    const caller = this.#caller(request);
    this.#connections.set(caller, (this.#connections.get(caller) ?? 0) + 1);
    const frames = new Allowance(LIMITS.framesAtOnce, LIMITS.framesPerSecond, this.#now());
    const bytes = new Allowance(LIMITS.bytesAtOnce, LIMITS.bytesPerSecond, this.#now());
    const shelves = new Set<string>();
    const emit = socket.emit.bind(socket);
    const silent = setTimeout(() => socket.terminate(), LIMITS.silence);
    socket.emit = (event, ...args) => {
      if (event !== 'message') return emit(event, ...args);
      const frame = args[0];
      const head = frame instanceof Uint8Array ? readHead(frame) : null;
      if (head) shelves.add(head.name);
      const fine =
        head !== null &&
        KINDS.includes(head.kind) &&
        shelves.size <= LIMITS.shelvesPerConnection &&
        frames.take(1, this.#now()) &&
        bytes.take((frame as Uint8Array).length, this.#now());
      if (fine) return emit(event, ...args);
      this.#turnedAway++;
      socket.terminate();
      return false;
    };
    this.#waiting.set(keyOf(request), () => clearTimeout(silent));
    socket.once('close', () => {
      clearTimeout(silent);
      this.#waiting.delete(keyOf(request));
      const left = (this.#connections.get(caller) ?? 1) - 1;
      if (left > 0) this.#connections.set(caller, left);
      else this.#connections.delete(caller);
    });
  }

  /** This connection has shown that it may open a shelf. */
  proven(request: IncomingMessage): void {
    this.#waiting.get(keyOf(request))?.();
  }

  /** Whether this caller may make one more shelf. */
  mayCreate(request: IncomingMessage): boolean {
    const most = LIMITS.newShelvesPerHour;
    const caller = this.#caller(request);
    if (this.#newShelves.size > 10_000) this.#newShelves.clear();
    const allowance = this.#newShelves.get(caller) ?? new Allowance(most, most / 3600, this.#now());
    this.#newShelves.set(caller, allowance);
    return allowance.take(1, this.#now());
  }

  #caller(request: IncomingMessage): string {
    const told = this.#settings.behindProxy ? request.headers['x-forwarded-for'] : undefined;
    // The last one is what our own proxy saw; the ones before it are hearsay.
    const last = String(told ?? '')
      .split(',')
      .at(-1)
      ?.trim();
    return last || (request.socket.remoteAddress ?? '');
  }
}

/** A connection by the request that opened it. */
const keyOf = (request: IncomingMessage): string => String(request.headers['sec-websocket-key']);

/** Which shelf a frame is for and what kind of message it is: a length, so many letters, and a number below 128. Null: neither. */
function readHead(frame: Uint8Array): { readonly name: string; readonly kind: number } | null {
  const end = 1 + LIMITS.nameLetters;
  if (frame.length <= end || frame[0] !== LIMITS.nameLetters) return null;
  const name = String.fromCharCode(...frame.subarray(1, end));
  const kind = frame[end] ?? 128;
  return NAME.test(name) && kind < 128 ? { name, kind } : null;
}
