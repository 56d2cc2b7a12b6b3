import { readRow } from '../../../shared/tables';
import type { Draft, Journal, WorkbookStorage } from '../../storage/port';
import { isoTime } from '../ports';
import type { Workshop } from '../workshop';
import { draftNote } from './saver';

export type LeftBehind = Awaited<ReturnType<Journal['leftBehind']>>;

/** Notes of tabs that are gone, beyond which they are cleared away. Source: our own. */
const MOST_DRAFT_NOTES = 20;

/**
 * Work that tabs now closed had not kept yet. One after the other, so that two drafts of one row meet like two tabs do. A draft goes as soon as
 * the journal of this tab holds what was in it: were this page loaded again before the disk has it, the page after it would find two drafts
 * of the same work, an older one and a newer one, and take them for two tabs.
 */
export async function takeOverDrafts(shop: Workshop, leftBehind: LeftBehind): Promise<void> {
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
export function notKept(drafts: LeftBehind, notes: Readonly<Record<string, unknown>>): LeftBehind {
  return drafts.filter(({ tab, draft: { number = Infinity }, drop }) => {
    const kept = notes[draftNote(tab)];
    if (typeof kept !== 'number' || number > kept) return true;
    drop();
    return false;
  });
}

/** Forgets which drafts were kept, of tabs long gone. */
export async function forgetOldTabs(
  shop: Workshop,
  storage: WorkbookStorage,
  notes: Readonly<Record<string, unknown>>,
): Promise<void> {
  const there = new Set(shop.ports.journal.tabs().map(draftNote));
  const gone = Object.keys(notes).filter((id) => id.startsWith(draftNote('')) && !there.has(id));
  if (gone.length <= MOST_DRAFT_NOTES) return;
  const none = gone.map((id) => ({ id, value: null }));
  await storage.write([], isoTime(shop.ports.now()), none);
}

/** Whether today's schema reads all of a draft; a draft it does not read stays where it is. */
const isReadable = ({ changes }: Draft): boolean => changes.every(({ table, row }) => readRow(table, row).ok);
