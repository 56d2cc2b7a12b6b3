import { readRow, sortRows, TABLES } from '../../../shared/tables';
import type { Change, Draft, Journal, Result, WorkbookStorage } from '../../storage/port';
import type { Keeping } from '../keeping/keeping';
import { readHistory } from '../keeping/kept-history';
import { readBackupNote, readSettings } from '../keeping/notes';
import { isoTime } from '../ports';
import { shelfOf } from '../shelf';
import type { WorkbookIntents } from '../workbook-state';
import type { Workshop } from '../workshop';

type BootIntents = Pick<
  WorkbookIntents,
  'boot' | 'keepNow' | 'acceptLoss' | 'carryOnInMemory' | 'eraseEverything' | 'keeping'
>;

type LeftBehind = Awaited<ReturnType<Journal['leftBehind']>>;

const BIN_DAYS = 30;
const DAY_MS = 86_400_000;

/** From nothing to a shelf with everything on it, and back. */
export function bootIntents(shop: Workshop): BootIntents {
  async function boot(): Promise<void> {
    const opened = await shop.ports
      .openStorage(() => shop.set({ phase: { phase: 'blocked' } }))
      .catch(unfetched);
    if (opened.ok) return loadFrom(opened.value);
    if (opened.fault.kind === 'absent') {
      carryOnInMemory();
      return;
    }
    const { rows, quarantined } = sortRows(opened.fault.salvaged ?? {});
    shop.set({ rows: shelfOf(rows), quarantined, salvaged: opened.fault.salvaged ?? null });
    shop.saver.stop(opened.fault);
  }

  async function loadFrom(storage: WorkbookStorage): Promise<void> {
    const loaded = await storage.load();
    if (!loaded.ok) {
      shop.saver.stop(loaded.fault);
      return;
    }
    const { rows, quarantined, notes, loss } = loaded.value;
    shop.storage = storage;
    const shelf = shelfOf(rows);
    shop.saver.start(storage, shelf);
    storage.watch((event) => {
      if (event.event === 'changed-elsewhere') void shop.saver.refresh(event.keys);
      else shop.saver.stop(event.fault);
    });
    // Asked for before anything is shown, so that a field never shows for a moment what was there before the last keys.
    const left = await shop.ports.journal.leftBehind();
    const bare = Object.keys(notes).length === 0 && isBare(rows) && quarantined.length === 0;
    const fresh = bare && !loss && left.length === 0;
    shop.set({
      fresh,
      rows: shelf,
      quarantined,
      settings: readSettings(notes['settings'], shop.ports.firstSettings),
      backup: readBackupNote(notes['backup']),
      history: readHistory(notes['history'], shelf),
      keeps: storage.keeps,
      save: { state: 'saved' },
      phase: loss ? { phase: 'lossFound', loss } : { phase: 'ready' },
    });
    const taken = takeOverDrafts(left);
    if (notes['folder'])
      void keeping().then(
        ({ folder }) => folder.start(notes['folder']),
        () => undefined,
      );
    await taken;
    if (shop.ports.exchange && !loss) {
      const [exchange, { joinExchange }] = await Promise.all([
        shop.ports.exchange(),
        import('../keeping/exchange'),
      ]);
      joinExchange(shop, exchange);
    }
    // Where nothing was ever kept, nothing was thrown away.
    if (!loss && !fresh) await storage.purgeBin(isoTime(shop.ports.now() - BIN_DAYS * DAY_MS));
  }

  /** Work that tabs now closed had not kept yet. One after the other, so that two drafts of one row meet like two tabs do. */
  async function takeOverDrafts(leftBehind: LeftBehind): Promise<void> {
    for (const { draft, drop } of leftBehind) {
      if (!isReadable(draft)) continue;
      shop.saver.takeOver(draft);
      await shop.saver.keepNow();
      if (shop.state.save.state !== 'saved') return;
      drop();
      shop.notify('draftRestored', draft.changes[0]?.row.name ?? '');
    }
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

  return {
    boot,
    keeping,
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
      // They has just cleared the table herself; no example is put on it unasked.
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
