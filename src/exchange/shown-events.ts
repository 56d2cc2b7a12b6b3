import type { ExchangeDoor } from '../state/ports';
import type { ShownHere } from '../state/sharing';
import { textOf } from './fields';
import {
  countingKeys,
  helpersOf,
  linkOf,
  newDevice,
  newShown,
  type OwnShown,
  type ShownLink,
  shownKeys,
  writeShown,
} from './keys';
import { type RoomHost, stayIn } from './room';
import type { SealedRows } from './sealed-rows';
import { allNotes, difference, OVER, readCounts, shownNotes } from './shown-notes';

/** A link as the devices of the shelf know it, in the shelf itself: `['#shown', id]`. */
interface OwnLink extends OwnShown {
  readonly id: string;
  readonly eventId: string;
  /** In which its maker thinks. */
  readonly unit: 'in' | 'mm';
  /** Withdrawn; stays until the server has heard of it. */
  readonly isOver: boolean;
}

/** A link and how it stands. */
interface Carried {
  readonly own: OwnLink;
  readonly link: ShownLink;
  readonly stop: AbortController;
  sheet: SealedRows | null;
  counts: SealedRows | null;
}

/** Entries that helpers of one link may have; what is beyond them is left out. Source: our own. */
const MOST_COUNTS = 400;
/** Rows that change in one burst are shown once. Source: our own. */
const PAUSE_MS = 200;

/** Carries what links show to the server, and what helpers counted to the shelf, while this device is joined to it. */
export class ShownEvents {
  readonly #door: ExchangeDoor;
  readonly #host: Pick<RoomHost, 'address' | 'device' | 'wait'>;
  readonly #rows: SealedRows;
  readonly #changed: () => void;
  readonly #carried = new Map<string, Carried>();
  readonly #unwatch: () => void;
  #pause: ReturnType<typeof setTimeout> | undefined;
  #isOpen = true;

  /** `changed` hears whenever `list` says something else. */
  constructor(
    door: ExchangeDoor,
    host: Pick<RoomHost, 'address' | 'device' | 'wait'>,
    rows: SealedRows,
    changed: () => void,
  ) {
    this.#door = door;
    this.#host = host;
    this.#rows = rows;
    this.#changed = changed;
    this.#unwatch = door.watch(() => {
      this.#pause ??= setTimeout(() => {
        this.#pause = undefined;
        for (const each of this.#carried.values()) this.#carry(each);
      }, PAUSE_MS);
    });
    void this.follow();
  }

  close(): void {
    this.#isOpen = false;
    this.#unwatch();
    clearTimeout(this.#pause);
    for (const { stop } of this.#carried.values()) stop.abort();
    this.#carried.clear();
  }

  list(): ShownHere[] {
    return [...this.#carried.values()].map(({ own, link, sheet, counts }) => ({
      id: own.id,
      kind: own.kind,
      eventId: own.eventId,
      link: writeShown(link),
      helpers: new Set(counts ? this.#countsIn(own, counts).map(({ by }) => by) : []).size,
      isShown: sheet?.isQuiet ?? false,
      isGoing: own.isOver,
    }));
  }

  make(eventId: string, kind: ShownHere['kind'], unit: 'in' | 'mm'): void {
    const own: OwnLink = { ...newShown(kind), id: newDevice(''), eventId, unit, isOver: false };
    this.#rows.write([[['#shown', own.id], own]]);
    void this.follow();
  }

  withdraw(id: string): void {
    const found = this.#carried.get(id);
    if (!found) return;
    this.#rows.write([[['#shown', id], { ...found.own, isOver: true }]]);
    void this.follow();
  }

  /** Takes up the links that the shelf names now, and lets go of the others. */
  async follow(): Promise<void> {
    const named = this.#rows.notes('#shown').flatMap(({ value }) => readOwn(value));
    const ids = new Set(named.map(({ id }) => id));
    for (const [id, { stop }] of this.#carried)
      if (!ids.has(id)) {
        stop.abort();
        this.#carried.delete(id);
      }
    for (const own of named) {
      const known = this.#carried.get(own.id);
      if (known && known.own.isOver === own.isOver) continue;
      known?.stop.abort();
      const stop = new AbortController();
      const carried: Carried = { own, link: await linkOf(own), stop, sheet: null, counts: null };
      // Another call may have been here meanwhile, or the session may be over.
      if (!this.#isOpen) return;
      if (this.#carried.get(own.id) !== known) continue;
      this.#carried.set(own.id, carried);
      void this.#enter(carried);
    }
    this.#changed();
  }

  async #enter(carried: Carried): Promise<void> {
    const { own, stop } = carried;
    const room = (which: 'sheet' | 'counts'): RoomHost => {
      const hear = (rows: SealedRows) => {
        carried[which] = rows;
        this.#carry(carried);
        this.#changed();
      };
      const onChange = (rows: SealedRows) => {
        // What another device of the shelf shows is not written over: it may know more.
        if (which === 'counts') hear(rows);
        else if (own.isOver) this.#forget(own, rows);
        this.#changed();
      };
      const onDown = () => {
        carried[which] = null;
        this.#changed();
      };
      return { ...this.#host, onUp: hear, onChange, onDown };
    };
    void stayIn(await shownKeys(own), room('sheet'), stop.signal);
    if (own.kind === 'bench' && !own.isOver)
      void stayIn(await countingKeys(own), room('counts'), stop.signal);
  }

  /** Shows what the event has come to, and takes in what was counted. */
  #carry({ own, sheet, counts }: Carried): void {
    if (counts) this.#door.count(own.eventId, this.#countsIn(own, counts));
    if (!sheet) return;
    if (own.isOver) {
      sheet.write(difference(allNotes(sheet), OVER));
      this.#forget(own, sheet);
      return;
    }
    const shown = this.#door.shows(own.eventId, own.kind, own.unit);
    if (shown) sheet.write(difference(allNotes(sheet), shownNotes(shown, own.eventId)));
  }

  /** The shelf forgets a link when nobody can see anything by it any more. */
  #forget({ id }: OwnLink, sheet: SealedRows): void {
    const path = ['#shown', id];
    const isNamed = this.#rows.notes('#shown').some((note) => textOf(note.path) === textOf(path));
    if (!isNamed || !sheet.isQuiet) return;
    this.#rows.write([[path, undefined]]);
    void this.follow();
  }

  /** Only under names that helpers of this link have. */
  #countsIn({ name, eventId }: OwnLink, counts: SealedRows) {
    const prefix = helpersOf(name);
    return readCounts(counts.notes('#count'), this.#door.event(eventId))
      .filter(({ by }) => by?.startsWith(prefix))
      .slice(0, MOST_COUNTS);
  }
}

function readOwn(value: unknown): OwnLink[] {
  const own = value as Partial<Record<keyof OwnLink, unknown>> | null;
  const isWhole =
    typeof own === 'object' &&
    own !== null &&
    (own.kind === 'bench' || own.kind === 'class') &&
    (own.unit === 'in' || own.unit === 'mm') &&
    [own.id, own.eventId, own.name, own.view, own.writing].every((text) => typeof text === 'string');
  return isWhole ? [own as unknown as OwnLink] : [];
}
