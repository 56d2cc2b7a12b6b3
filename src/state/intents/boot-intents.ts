import { sortRows, TABLES } from '../../../shared/tables';
import type {
  Change,
  Result,
  StorageEvent,
  StorageFault,
  TraceShelf,
  WorkbookStorage,
} from '../../storage/port';
import { dayOf } from '../keeping/day-of';
import type { Keeping } from '../keeping/keeping';
import { readHistory } from '../keeping/kept-history';
import { forgetOldTabs, notKept, takeOverDrafts } from '../keeping/left-drafts';
import { readSettings } from '../keeping/notes';
import { bringStyles } from '../own-styles';
import { isoTime } from '../ports';
import type { SharingDesk } from '../sharing';
import { shelfOf } from '../shelf';
import type { WorkbookIntents } from '../workbook-state';
import type { Workshop } from '../workshop';

type BootIntents = Pick<
  WorkbookIntents,
  | 'boot'
  | 'keepNow'
  | 'acceptLoss'
  | 'carryOnInMemory'
  | 'eraseEverything'
  | 'keeping'
  | 'traces'
  | 'sharingDesk'
>;

/** Things lie in the bin for so many days on which the app was opened. Source: our own. */
const BIN_DAYS = 30;
/** After a database that did not answer. Source: our own. */
const TRY_AGAIN_MS = 1000;

/** From nothing to a shelf with everything on it, and back. */
export function bootIntents(shop: Workshop): BootIntents {
  const desks = fetchedDesks(shop);
  const { boot, loadFrom, carryOnInMemory } = shelfOpener(shop, desks);
  return {
    boot,
    keeping: desks.keeping,
    sharingDesk: desks.sharingDesk,
    traces: desks.traces,
    carryOnInMemory,
    keepNow: () => shop.saver.keepNow(),

    async acceptLoss() {
      const accepted = await shop.storage?.acceptLoss();
      if (accepted?.ok) shop.set({ phase: { phase: 'ready' } });
    },

    async eraseEverything() {
      if (!shop.storage) return { ok: false, fault: { kind: 'absent', detail: 'storage is not open' } };
      await (await desks.keptAlready())?.folder.forget();
      const erased = await shop.storage.eraseAll();
      if (!erased.ok) return erased;
      shop.ports.journal.clear();
      const beside = await eraseBeside(shop);
      await loadFrom(shop.storage);
      // The maker has just cleared the table; no example is put on it unasked.
      shop.set({ fresh: false });
      return beside;
    },
  };
}

async function eraseBeside({ ports }: Workshop): Promise<Result<null>> {
  try {
    await ports.eraseBeside?.();
    return { ok: true, value: null };
  } catch (why) {
    return {
      ok: false,
      fault: { kind: 'lost', detail: why instanceof Error ? why.message : 'no reason given' },
    };
  }
}

/** Opens the database, reads what it keeps and takes over what closed tabs had not kept. */
function shelfOpener(shop: Workshop, { keeping, sharingDesk }: ReturnType<typeof fetchedDesks>) {
  async function boot(): Promise<void> {
    const opened = await shop.ports
      .openStorage(() => shop.set({ phase: { phase: 'blocked' } }))
      .catch(unfetched);
    if (opened.ok) return loadFrom(opened.value);
    if (opened.fault.kind === 'slow') {
      // Busy, as a rule with the work of another tab: what is there is waited for, and nothing is shown in its place.
      await new Promise((resolve) => setTimeout(resolve, TRY_AGAIN_MS));
      return boot();
    }
    if (opened.fault.kind === 'absent') {
      carryOnInMemory();
      return;
    }
    stopWith(shop, opened.fault);
  }

  let unwatch = (): void => undefined;

  async function loadFrom(storage: WorkbookStorage): Promise<void> {
    // Drafts first: a page that is just going keeps its last rows and clears its draft in one breath, so rows read before
    // that breath would stand here without either.
    const drafts = await shop.ports.journal.leftBehind();
    // What other tabs keep from here on is newer than what is read below.
    const early: StorageEvent[] = [];
    let hear = (event: StorageEvent): void => void early.push(event);
    unwatch();
    unwatch = storage.watch((event) => hear(event));
    const loaded = await storage.load((read, of) => {
      if (shop.state.phase.phase === 'opening') shop.set({ phase: { phase: 'opening', read, of } });
    });
    if (!loaded.ok) {
      for (const { leave } of drafts) leave();
      shop.saver.stop(loaded.fault);
      return;
    }
    const { rows, quarantined, notes, loss } = loaded.value;
    // Boxes of a maker's own style are drawn at once, like the others; without a network what reads them may be missing.
    if (rows.recipes.some(({ ownStyle }) => ownStyle !== undefined))
      await bringStyles(rows.recipes).catch(() => undefined);
    shop.storage = storage;
    const shelf = shelfOf(rows);
    shop.saver.start(storage, shelf);
    const left = notKept(drafts, notes);
    const bare = Object.keys(notes).length === 0 && isBare(rows) && quarantined.length === 0;
    const fresh = bare && !loss && left.length === 0;
    shop.set({
      fresh,
      rows: shelf,
      quarantined,
      settings: readSettings(notes['settings'], shop.ports.firstSettings),
      history: readHistory(notes['history'], shelf),
      keeps: storage.keeps,
      save: { state: 'saved' },
      phase: loss ? { phase: 'lossFound', loss } : { phase: 'ready' },
    });
    shop.startNotes(loaded.value);
    hear = (event) => hearStorage(shop, event);
    // In the same breath as the rows, so that a field never shows for a moment what was there before the last keys.
    const taken = takeOverDrafts(shop, left);
    for (const event of early) hear(event);
    if (notes['folder'])
      void keeping().then(
        ({ folder }) => folder.start(notes['folder']),
        () => undefined,
      );
    await taken;
    await forgetOldTabs(shop, storage, notes);
    if (loss) return;
    if (shop.ports.sharing?.isShared()) void sharingDesk().catch(() => undefined);
    // Where nothing was ever kept, nothing was thrown away.
    if (!fresh) await storage.openDay(dayOf(shop.ports.now()), BIN_DAYS);
  }

  const carryOnInMemory = (): void => void openMemory(shop, loadFrom);

  return { boot, loadFrom, carryOnInMemory };
}

/** A shelf that nothing keeps, with what could be read of the old database; that database is left as it is. */
async function openMemory(
  shop: Workshop,
  loadFrom: (storage: WorkbookStorage) => Promise<void>,
): Promise<void> {
  const memory = await Promise.resolve(shop.ports.openMemory()).catch(() => null);
  // Said by the page that offered it, which stays.
  if (!memory) return;
  const { salvaged, quarantined } = shop.state;
  if (salvaged) await memory.write(salvagedChanges(salvaged), isoTime(shop.ports.now()));
  await loadFrom(memory);
  if (salvaged) shop.set({ salvaged, quarantined });
}

/** Shows what could be read of a database that failed, and keeps nothing more. */
function stopWith(shop: Workshop, fault: StorageFault): void {
  const salvaged = fault.salvaged ?? null;
  const { rows, quarantined } = sortRows(salvaged ?? {});
  shop.set({ rows: shelfOf(rows), quarantined, salvaged });
  shop.saver.stop(fault);
}

function hearStorage(shop: Workshop, event: StorageEvent): void {
  if (event.event === 'changed-elsewhere') {
    void shop.saver.refresh(event.keys);
    void shop.hearNotes(event.notes, event.generation);
  } else shop.saver.stop(event.fault);
}

/** What is fetched when it is first asked for, once. What did not come is asked for again the next time. */
function fetchedDesks(shop: Workshop) {
  let kept: Promise<Keeping> | null = null;
  const keeping = () =>
    (kept ??= import('../keeping/keeping').then(
      ({ keepingOf }) => keepingOf(shop),
      (why: unknown) => {
        kept = null;
        throw why;
      },
    ));

  let desk: Promise<SharingDesk | null> | null = null;
  const sharingDesk = () => {
    const { sharing } = shop.ports;
    if (!sharing) return Promise.resolve(null);
    desk ??= import('../keeping/exchange-door').then(({ doorOf }) => sharing.open(doorOf(shop)));
    // What does not come is asked for again the next time.
    desk.catch(() => {
      desk = null;
    });
    return desk;
  };

  let shelf: Promise<TraceShelf> | null = null;
  const traces = () => {
    shelf ??= shop.ports.traces?.() ?? Promise.reject(new Error('pictures can’t be kept here'));
    shelf.catch(() => {
      shelf = null;
    });
    return shelf;
  };

  return { keeping, sharingDesk, traces, keptAlready: () => kept };
}

const unfetched = (why: unknown): Result<WorkbookStorage> => ({
  ok: false,
  fault: { kind: 'unfetched', detail: why instanceof Error ? why.message : 'no reason given' },
});

const salvagedChanges = (salvaged: Readonly<Record<string, readonly unknown[]>>): Change[] => {
  const { rows } = sortRows(salvaged);
  return TABLES.flatMap((table) =>
    rows[table].map((row): Change => ({ table, id: row.id, row, deleted: false, basedOn: null })),
  );
};

const isBare = (rows: object): boolean =>
  Object.values(rows).every((table: { length: number }) => table.length === 0);
