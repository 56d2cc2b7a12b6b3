import { encodeStateAsUpdate } from 'yjs';
import type { Joined } from '../state/keeping/exchange';
import type { ComingRow } from '../state/ports';
import { keysOf, type ShelfLink } from './keys';
import { openLine } from './line';
import { type Note, SealedRows } from './sealed-rows';

/** What a session needs of whoever runs it. */
export interface SessionHost {
  readonly address: string;
  readonly device: string;
  /** The document as this device last had it with everything laid in and kept; null: never yet. */
  readonly readState: () => Promise<Uint8Array | null>;
  /** What was agreed before there was such a document. */
  readonly agreedBefore: () => Promise<readonly ComingRow[]>;
  readonly keepState: (state: Uint8Array) => Promise<void>;
  /** The line is up, before any row is laid in; false: it is not to go on. */
  readonly onUp: (rows: SealedRows) => Promise<boolean>;
  /** Joins the shelf; `agreed`: every row as both sides had it. */
  readonly join: (rows: SealedRows, agreed: readonly ComingRow[]) => Joined;
  readonly onNotes: (notes: readonly Note[]) => void;
  readonly onChange: () => void;
}

/** A document that is quiet is kept so long after. Source: our own. */
const KEEP_MS = 500;

/**
 * One session, from the line's coming up to its end: what the others did meanwhile is heard first, the shelf is joined to it, and only then
 * is anything told. What was told and not acknowledged is not kept in the document of this device, so that the next session measures the
 * shelf against what both sides truly had. Ends with `lost`, or `refused` by the server, or `over` because it was told to.
 */
export async function runSession(
  link: ShelfLink,
  host: SessionHost,
  stop: AbortSignal,
): Promise<'lost' | 'refused' | 'over'> {
  const keys = await keysOf(link);
  const state = await host.readState();
  const rows = new SealedRows(keys, host.device, state);
  await rows.settled();
  const agreed = state ? rows.all() : await host.agreedBefore();
  let joined: Joined | null = null;
  let changed = false;
  rows.doc.on('update', () => {
    changed = true;
  });
  const keep = async () => {
    if (!changed || !joined?.isSettled() || !rows.isQuiet) return;
    changed = false;
    await host.keepState(encodeStateAsUpdate(rows.doc));
  };
  const timer = setInterval(() => void keep(), KEEP_MS);
  let hangUp = () => {};
  let over = () => {};
  const end = await new Promise<'lost' | 'refused' | 'over'>((resolve) => {
    over = () => resolve('over');
    stop.addEventListener('abort', over);
    const join = async () => {
      await rows.settled();
      if (!(await host.onUp(rows))) {
        resolve('over');
        return;
      }
      rows.watch((_, notes) => {
        if (notes.length > 0) host.onNotes(notes);
        host.onChange();
      });
      joined = host.join(rows, agreed);
      host.onChange();
    };
    let up = false;
    hangUp = openLine(host.address, keys, rows.doc, {
      onSynced: () => {
        if (up) return;
        up = true;
        void join();
      },
      onKept: (told) => {
        rows.hearKept(told);
        host.onChange();
      },
      onRefused: () => resolve('refused'),
      onLost: () => resolve('lost'),
    });
    if (stop.aborted) resolve('over');
  });
  clearInterval(timer);
  stop.removeEventListener('abort', over);
  (joined as Joined | null)?.leave();
  hangUp();
  rows.doc.destroy();
  return end;
}
