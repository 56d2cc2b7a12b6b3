import { readRow } from '../../../shared/tables';
import { writeReadable } from '../../../shared/write-workbook';
import type { BinnedAside, Quarantined, Result, Snapshot, WorkbookStorage } from '../../storage/port';
import { isoTime, type StorageFacts } from '../ports';
import { keyText, type RowKey, withRow } from '../shelf';
import type { Refusals } from '../workbook-state';
import type { Workshop } from '../workshop';
import { type ExportWhat, fileOf } from './export-file';
import { FolderBackup } from './folder-backup';
import { type HandOver, handBackup, placeOf, type Told } from './whole-backup';

/** What became of a row that was set aside when it was read once more. */
type TriedAgain = 'read' | 'still-not' | 'gone' | 'not-now';

/** What only the page of safe keeping needs. */
export interface Keeping {
  readonly facts: () => Promise<StorageFacts>;
  /** Asks the browser to promise; null where it cannot be asked. */
  readonly askToPersist: () => Promise<boolean | null>;
  /** Hands everything over as one file, or as several where one would be too large to read in again; says what became of it. */
  readonly backup: (hand: HandOver) => Promise<Told>;
  /** Hands a recipe or an event over as a file called `name`, or everything; a notice tells what the maker could not see. */
  readonly saveFile: (what: ExportWhat, name: string, hand: HandOver) => Promise<void>;
  /** Today where the maker is, in milliseconds. */
  readonly now: () => number;

  /** Whether rows set aside lie in a database that is open, and can be moved. */
  readonly canMoveAside: () => boolean;
  readonly tryAgain: (row: Quarantined) => Promise<TriedAgain>;
  /** False if it could not be moved; it then lies where it lay. */
  readonly binAside: (row: Quarantined) => Promise<boolean>;
  readonly listBinAside: () => Promise<Result<readonly BinnedAside[]>>;
  readonly unbinAside: (binned: BinnedAside) => Promise<boolean>;

  /**
   * Empties the bin, and forgets the earlier states too where `earlier`; on a full disk, also deletes for good what found no room in the bin.
   * How many things went; null if they could not be moved.
   */
  readonly freeRoom: (earlier: boolean) => Promise<number | null>;
  readonly listEarlier: () => Promise<Result<readonly Snapshot[]>>;
  /** Puts an earlier state beside what is there now, under a name and an id of its own. */
  readonly bringBeside: (snapshot: Snapshot, name: string) => Refusals;

  readonly folder: FolderBackup;
}

const NOT_OPEN = { ok: false, fault: { kind: 'absent', detail: 'storage is not open' } } as const;

export function keepingOf(shop: Workshop): Keeping {
  const open = () => (shop.state.salvaged ? null : shop.storage);
  return {
    now: () => shop.ports.now(),
    facts: async () =>
      (await shop.ports.storageFacts?.()) ?? { persisted: null, usedBytes: null, roomBytes: null },

    async askToPersist() {
      const persisted = await shop.ports.askToPersist();
      shop.set({ persisted });
      return persisted;
    },

    backup: (hand) => handBackup(shop, hand),

    async saveFile(what, name, hand) {
      if (what.kind === 'everything') {
        const { code, about } = await handBackup(shop, hand);
        shop.notify(code, about);
        return;
      }
      const file = fileOf(shop.state.rows, what);
      const written = file && writeReadable(file);
      if (written?.ok) hand(name, written.text);
      else if (written) shop.notify('fileNotWritten', placeOf(written.refusals));
    },

    ...asideOf(shop, open),

    async freeRoom(earlier) {
      const freed = await open()?.freeRoom(earlier);
      if (!freed?.ok) return null;
      const isFull = () => shop.state.save.state === 'not-saved' && shop.state.save.why === 'full';
      if (isFull()) await shop.saver.keepNow();
      if (isFull()) await shop.saver.forGood();
      return freed.value;
    },

    listEarlier: async () => (await shop.storage?.listAllSnapshots()) ?? NOT_OPEN,

    bringBeside({ table, row }, name) {
      const now = isoTime(shop.ports.now());
      const id = shop.ports.newId();
      const { example: _, ...own } = row as Record<string, unknown>;
      const reading = readRow(table, { ...own, id, name, rev: 0, createdAt: now, changedAt: now });
      if (!reading.ok) return reading.refusals;
      shop.take('Bring back', [{ table, id, do: 'add', row: reading.row }]);
      return [];
    },

    folder: new FolderBackup(shop),
  };
}

/** Rows that could not be read: looked at again, thrown away and fetched back. */
function asideOf(
  shop: Workshop,
  open: () => WorkbookStorage | null,
): Pick<Keeping, 'canMoveAside' | 'tryAgain' | 'binAside' | 'listBinAside' | 'unbinAside'> {
  const letGo = ({ table, id }: RowKey) =>
    shop.set({
      quarantined: shop.state.quarantined.filter((row) => keyText(row) !== keyText({ table, id })),
    });
  const setAside = (row: Quarantined) => {
    letGo(row);
    shop.set({ quarantined: [...shop.state.quarantined, row] });
  };

  async function tryAgain(row: Quarantined): Promise<TriedAgain> {
    const read = await open()?.readAgain(row.table, row.id);
    if (!read?.ok) return 'not-now';
    if (read.value === 'gone') {
      letGo(row);
      return 'gone';
    }
    if ('refusals' in read.value) {
      setAside(read.value);
      return 'still-not';
    }
    letGo(row);
    shop.set({ rows: withRow(shop.state.rows, row, read.value) });
    shop.saver.found(row, read.value);
    return 'read';
  }

  return {
    canMoveAside: () => open() !== null,
    tryAgain,

    async binAside(row) {
      const moved = await open()?.binAside(row.table, row.id, isoTime(shop.ports.now()));
      if (!moved?.ok || !moved.value) return false;
      letGo(row);
      return true;
    },

    listBinAside: async () => (await open()?.listBinAside()) ?? NOT_OPEN,

    async unbinAside({ table, id: of }) {
      const id = of.slice(table.length + 1);
      const moved = await open()?.unbinAside(table, id);
      if (!moved?.ok || !moved.value) return false;
      await tryAgain({ table, id, raw: null, refusals: [] });
      return true;
    },
  };
}
