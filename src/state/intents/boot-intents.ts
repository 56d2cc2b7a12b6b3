import { readRow, sortRows, TABLES } from '../../../shared/tables';
import type { Change, Draft, Journal, Result, StorageEvent, WorkbookStorage } from '../../storage/port';
import { dayOf } from '../keeping/day-of';
import type { Keeping } from '../keeping/keeping';
import { readHistory } from '../keeping/kept-history';
import { readSettings } from '../keeping/notes';
import { draftNote } from '../keeping/saver';
import { bringStyles } from '../own-styles';
import { isoTime } from '../ports';
import type { SharingDesk } from '../sharing';
import { shelfOf } from '../shelf';
import type { WorkbookIntents } from '../workbook-state';
import type { Workshop } from '../workshop';

type BootIntents = Pick<
  WorkbookIntents,
  'boot' | 'keepNow' | 'acceptLoss' | 'carryOnInMemory' | 'eraseEverything' | 'keeping' | 'sharingDesk'
>;

type LeftBehind = Awaited<ReturnType<Journal['leftBehind']>>;

/** Things lie in the bin for so many days on which the app was opened. Source: our own. */
const BIN_DAYS = 30;
/** Notes of tabs that are gone, beyond which they are cleared away. Source: our own. */
const MOST_DRAFT_NOTES = 20;
/** After a database that did not answer. Source: our own. */
const TRY_AGAIN_MS = 1000;

/** From nothing to a shelf with everything on it, and back. */
export function bootIntents(shop: Workshop): BootIntents {
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
    const { rows, quarantined } = sortRows(opened.fault.salvaged ?? {});
    shop.set({ rows: shelfOf(rows), quarantined, salvaged: opened.fault.salvaged ?? null });
    shop.saver.stop(opened.fault);
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
    hear = hearStorage;
    // In the same breath as the rows, so that a field never shows for a moment what was there before the last keys.
    const taken = takeOverDrafts(left);
    for (const event of early) hear(event);
    if (notes['folder'])
      void keeping().then(
        ({ folder }) => folder.start(notes['folder']),
        () => undefined,
      );
    await taken;
    await forgetOldTabs(storage, notes);
    if (!loss && shop.ports.sharing?.isShared()) void sharingDesk().catch(() => undefined);
    // Where nothing was ever kept, nothing was thrown away.
    if (!loss && !fresh) await storage.openDay(dayOf(shop.ports.now()), BIN_DAYS);
  }

  function hearStorage(event: StorageEvent): void {
    if (event.event === 'changed-elsewhere') {
      void shop.saver.refresh(event.keys);
      void shop.hearNotes(event.notes, event.generation);
    } else shop.saver.stop(event.fault);
  }

  /**
   * Work that tabs now closed had not kept yet. One after the other, so that two drafts of one row meet like two tabs do. A draft goes as soon as
   * the journal of this tab holds what was in it: were this page loaded again before the disk has it, the page after it would find two drafts
   * of the same work, an older one and a newer one, and take them for two tabs.
   */
  async function takeOverDrafts(leftBehind: LeftBehind): Promise<void> {
    for (const { draft, drop, leave } of leftBehind) {
      if (!isReadable(draft)) {
        leave();
        continue;
      }
      const { took, noted } = shop.saver.takeOver(draft);
      if (noted) drop();
      if (took) await shop.saver.keepNow();
      if (!noted && shop.state.save.state === 'saved') drop();
      else if (!noted) leave();
      if (took && shop.state.save.state === 'saved')
        shop.notify('draftRestored', draft.changes[0]?.row.name ?? '');
    }
  }

  /** Drafts whose rows were not kept: a browser that was killed may hold one that is older than its rows. */
  function notKept(drafts: LeftBehind, notes: Readonly<Record<string, unknown>>): LeftBehind {
    return drafts.filter(({ tab, draft: { number = Infinity }, drop }) => {
      const kept = notes[draftNote(tab)];
      if (typeof kept !== 'number' || number > kept) return true;
      drop();
      return false;
    });
  }

  /** Forgets which drafts were kept, of tabs long gone. */
  async function forgetOldTabs(storage: WorkbookStorage, notes: Readonly<Record<string, unknown>>) {
    const there = new Set(shop.ports.journal.tabs().map(draftNote));
    const gone = Object.keys(notes).filter((id) => id.startsWith(draftNote('')) && !there.has(id));
    if (gone.length <= MOST_DRAFT_NOTES) return;
    const none = gone.map((id) => ({ id, value: null }));
    await storage.write([], isoTime(shop.ports.now()), none);
  }

  function carryOnInMemory(): void {
    void (async () => {
      const memory = await Promise.resolve(shop.ports.openMemory()).catch(() => null);
      // Said by the page that offered it, which stays.
      if (!memory) return;
      const { salvaged, quarantined } = shop.state;
      if (!salvaged) return loadFrom(memory);
      // What could be read of the old database stays at hand; the database itself is left as it is.
      await memory.write(salvagedChanges(salvaged), isoTime(shop.ports.now()));
      await loadFrom(memory);
      shop.set({ salvaged, quarantined });
    })();
  }

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
    desk ??= import('../keeping/exchange').then(({ joinExchange }) =>
      sharing.open({
        join: (...args) => joinExchange(shop, ...args),
        show: (sharing) => shop.set({ sharing }),
      }),
    );
    // What does not come is asked for again the next time.
    desk.catch(() => {
      desk = null;
    });
    return desk;
  };

  return {
    boot,
    keeping,
    sharingDesk,
    carryOnInMemory,
    keepNow: () => shop.saver.keepNow(),

    async acceptLoss() {
      const accepted = await shop.storage?.acceptLoss();
      if (accepted?.ok) shop.set({ phase: { phase: 'ready' } });
    },

    async eraseEverything() {
      if (!shop.storage) return { ok: false, fault: { kind: 'absent', detail: 'storage is not open' } };
      await (await kept)?.folder.forget();
      const erased = await shop.storage.eraseAll();
      if (!erased.ok) return erased;
      shop.ports.journal.clear();
      await loadFrom(shop.storage);
      // The maker has just cleared the table; no example is put on it unasked.
      shop.set({ fresh: false });
      return erased;
    },
  };
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

/** Whether today's schema reads all of a draft; a draft it does not read stays where it is. */
const isReadable = ({ changes }: Draft): boolean => changes.every(({ table, row }) => readRow(table, row).ok);
