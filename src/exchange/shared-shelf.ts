import type { OnMany } from '../state/keeping/exchange';
import type { ComingRow, ExchangeDoor } from '../state/ports';
import type { Sharing, SharingDesk, ShownHere } from '../state/sharing';
import { type DeviceNote, listDevices, newsOf, readDevice } from './devices';
import { keysOf, newDevice, newShelf, readLink, type ShelfLink, writeLink } from './keys';
import type { MemoryOfSharing, Pairing } from './memory-of-sharing';
import { handOver, newPair, publicOf, takeOver } from './new-key';
import { fillNewShelf } from './new-shelf';
import { exchangeOf, SealedRows } from './sealed-rows';
import { runSession } from './session';
import { ShownEvents } from './shown-events';
import { TryingAgain } from './trying-again';

/** What sharing needs of the browser. */
export interface SharingWorld {
  /** Where the exchange is, beside the app: `https://…/exchange`. */
  readonly address: string;
  readonly memory: MemoryOfSharing;
  readonly now: () => number;
  /** Does this while no other tab does anything of the same name. */
  readonly alone: (work: () => Promise<void>) => Promise<void>;
  /** Resolves when it is worth trying again: after so many milliseconds, or when the network comes back. */
  readonly wait: (milliseconds: number) => Promise<void>;
  /** Remembers outside the database whether there is anything to fetch this for. */
  readonly remember: (isShared: boolean) => void;
}

/** A device says what it has received so long after it came. Source: our own. */
const RECEIPT_MS = 1000;
/** Links are taken back before a shelf moves; so long is waited for the server to hear of it. Source: our own. */
const GOING_MS = 10_000;

/** One shelf shared with other devices, for as long as the tab lives. */
export class SharedShelf implements SharingDesk {
  readonly #door: ExchangeDoor;
  readonly #world: SharingWorld;
  #pairing: Pairing | null = null;
  #stop = new AbortController();
  #rows: SealedRows | null = null;
  #shown: ShownEvents | null = null;
  #line: Sharing['line'] = 'off';
  #onMany: OnMany = 'ask';
  #deletions = 0;
  #receipt: ReturnType<typeof setTimeout> | undefined;
  #lastNotes: readonly DeviceNote[] = [];

  constructor(door: ExchangeDoor, world: SharingWorld) {
    this.#door = door;
    this.#world = world;
  }

  /** Takes up what was shared before. */
  async start(): Promise<void> {
    this.#pairing = await this.#world.memory.readPairing();
    if (this.#pairing) this.#run();
  }

  async isThere(): Promise<'yes' | 'no' | 'not-secure'> {
    if (!isSecureContext) return 'not-secure';
    try {
      const told: unknown = await (await fetch(this.#world.address)).json();
      return typeof told === 'object' && told !== null && 'exchange' in told ? 'yes' : 'no';
    } catch {
      return 'no';
    }
  }

  async begin(deviceName: string): Promise<boolean> {
    if ((await this.isThere()) !== 'yes') return false;
    await this.#pair(newShelf(), deviceName);
    return true;
  }

  async join(text: string, deviceName: string): Promise<boolean> {
    const link = readLink(text);
    if (!link) return false;
    await this.#pair(link, deviceName);
    return true;
  }

  link(): string | null {
    return this.#pairing && writeLink(this.#pairing.link);
  }

  async remove(deviceId: string): Promise<boolean> {
    const [rows, pairing] = [this.#rows, this.#pairing];
    if (!rows || !pairing || !(await this.#withdrawAll())) return false;
    const link = newShelf();
    if (!(await fillNewShelf(link, this.#hostOf(link, pairing), this.#door))) return false;
    const others = rows.notes('#device').flatMap(readDevice);
    const moved = await handOver(
      pairing,
      link,
      others.filter(({ id }) => id !== deviceId),
    );
    rows.empty({ path: ['#moved'], value: moved });
    await rows.settled();
    while (!rows.isQuiet && this.#rows === rows) await this.#world.wait(100);
    await this.#keep({ ...pairing, link, before: pairing.link });
    this.#restart();
    return true;
  }

  showEvent(eventId: string, kind: ShownHere['kind'], unit: 'in' | 'mm'): Promise<boolean> {
    this.#shown?.make(eventId, kind, unit);
    return Promise.resolve(this.#shown !== null);
  }

  withdraw(id: string): Promise<boolean> {
    this.#shown?.withdraw(id);
    return Promise.resolve(this.#shown !== null);
  }

  /** A device that is taken off the list knows the links, and could write where they show. */
  async #withdrawAll(): Promise<boolean> {
    const end = this.#world.now() + GOING_MS;
    for (const { id } of this.#shown?.list() ?? []) this.#shown?.withdraw(id);
    while ((this.#shown?.list().length ?? 0) > 0) {
      if (this.#world.now() > end) return false;
      await this.#world.wait(100);
    }
    return true;
  }

  async leave(): Promise<void> {
    this.#stop.abort();
    this.#pairing = null;
    await this.#world.memory.forget();
    this.#world.remember(false);
    this.#door.show(null);
  }

  decide(take: boolean): void {
    this.#onMany = take ? 'take' : 'keep';
    this.#restart();
  }

  async #pair(link: ShelfLink, name: string): Promise<void> {
    const pair = await newPair();
    await this.#keep({ link, device: newDevice('d-'), name, pair, edits: 0 });
    this.#world.remember(true);
    this.#run();
  }

  #restart(): void {
    this.#stop.abort();
    this.#run();
  }

  async #keep(pairing: Pairing): Promise<void> {
    this.#pairing = pairing;
    await this.#world.memory.keepPairing(pairing);
  }

  #run(): void {
    const stop = new AbortController();
    this.#stop = stop;
    this.#say('off');
    void this.#world.alone(() => this.#carry(stop.signal));
  }

  async #carry(stop: AbortSignal): Promise<void> {
    const again = new TryingAgain();
    while (!stop.aborted && this.#pairing) {
      this.#say('joining');
      const end = await this.#session(this.#pairing, stop, () => again.succeeded());
      this.#shown?.close();
      this.#shown = null;
      this.#rows = null;
      if (end === 'over') return;
      if (end === 'refused') {
        this.#say('refused');
        return;
      }
      this.#say('offline');
      await this.#world.wait(again.next());
    }
  }

  async #session(pairing: Pairing, stop: AbortSignal, onUp: () => void) {
    const { link } = pairing;
    const host = this.#hostOf(link, pairing);
    const told = () => {
      if (this.#pairing) void this.#keep({ ...this.#pairing, edits: this.#pairing.edits + 1 });
    };
    return runSession(
      link,
      {
        ...host,
        onUp: async (rows) => {
          if (await this.#hasMoved(rows, pairing)) return false;
          onUp();
          this.#rows = rows;
          return true;
        },
        join: (rows, agreed) => {
          const joined = this.#door.join(exchangeOf(rows, agreed, told), this.#onMany, (deletions) => {
            this.#deletions = deletions;
            this.#say('asks');
          });
          if (this.#line !== 'asks') {
            this.#onMany = 'ask';
            this.#say('joined');
          }
          void this.#sign(rows);
          const host = { address: this.#world.address, device: pairing.device, wait: this.#world.wait };
          this.#shown = new ShownEvents(this.#door, host, rows, () => this.#say(this.#line));
          return joined;
        },
        onNotes: (notes) => {
          const rows = this.#rows;
          if (!rows) return;
          if (notes.some(({ path }) => path[0] === '#moved')) void this.#hasMoved(rows, pairing);
          if (notes.some(({ path }) => path[0] === '#shown')) void this.#shown?.follow();
        },
        onChange: () => {
          this.#say(this.#line);
          clearTimeout(this.#receipt);
          this.#receipt = setTimeout(() => void (this.#rows && this.#sign(this.#rows)), RECEIPT_MS);
        },
      },
      stop,
    );
  }

  #hostOf(link: ShelfLink, pairing: Pairing) {
    const { memory, address } = this.#world;
    return {
      address,
      device: pairing.device,
      readState: () => memory.readState(link.name),
      keepState: (state: Uint8Array) => memory.keepState(link.name, state),
      agreedBefore: async (): Promise<readonly ComingRow[]> => {
        const { before } = pairing;
        const state = before ? await memory.readState(before.name) : null;
        if (!before || !state) return [];
        const rows = new SealedRows(await keysOf(before), pairing.device, state);
        await rows.settled();
        return rows.all();
      },
      onChange: () => undefined,
    };
  }

  /** Whether the shelf has moved on; goes along if this device was named, and keeps what it has if it was not. */
  async #hasMoved(rows: SealedRows, pairing: Pairing): Promise<boolean> {
    const moved = rows.notes('#moved')[0]?.value;
    if (moved === undefined || this.#pairing?.link !== pairing.link) return moved !== undefined;
    const link = await takeOver(pairing, moved);
    if (link) {
      await this.#keep({ ...pairing, link, before: pairing.link });
      this.#restart();
    } else {
      this.#stop.abort();
      this.#world.remember(false);
      await this.#world.memory.forget();
      this.#say('removed');
      this.#pairing = null;
    }
    return true;
  }

  /** Says of this device what it is called, what it told and what it has received. */
  async #sign(rows: SealedRows): Promise<void> {
    const pairing = this.#pairing;
    if (!pairing || this.#line !== 'joined') return;
    const news = newsOf(rows.notes('#device').flatMap(readDevice), pairing);
    if (!news) return;
    const lastAt = new Date(this.#world.now()).toISOString();
    rows.write([[['#device', news.id], { ...news, lastAt, key: await publicOf(pairing.pair) }]]);
  }

  #say(line: Sharing['line']): void {
    this.#line = line;
    const pairing = this.#pairing;
    if (!pairing) return;
    const notes = this.#rows?.notes('#device').flatMap(readDevice) ?? this.#lastNotes;
    this.#lastNotes = notes;
    this.#door.show({
      line,
      device: pairing.device,
      unsent: this.#rows?.unsent ?? 0,
      devices: listDevices(notes, pairing.device, pairing.edits),
      deletions: this.#deletions,
      shown: this.#shown?.list() ?? [],
    });
  }
}
