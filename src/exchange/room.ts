import type { ShelfKeys } from './keys';
import { openLine } from './line';
import { SealedRows } from './sealed-rows';
import { TryingAgain } from './trying-again';

/** Who stands in a room: a small document beside the shelf, of which nothing is kept here. */
export interface RoomHost {
  readonly address: string;
  readonly device: string;
  readonly wait: (milliseconds: number) => Promise<void>;
  /** The line is up and all that is there has been heard; again after each time that it broke. */
  readonly onUp: (rows: SealedRows) => void;
  /** Something came, or something written here was acknowledged. */
  readonly onChange: (rows: SealedRows) => void;
  readonly onDown: (why: 'lost' | 'refused') => void;
}

/** Stays in a room until it is told to leave, and comes back whenever the line breaks. Each time begins from what the server has. */
export async function stayIn(keys: ShelfKeys, host: RoomHost, stop: AbortSignal): Promise<void> {
  const again = new TryingAgain();
  while (!stop.aborted) {
    const rows = new SealedRows(keys, host.device, null);
    let hangUp: () => void = () => undefined;
    let over: () => void = () => undefined;
    const why = await new Promise<'lost' | 'refused' | 'over'>((resolve) => {
      over = () => resolve('over');
      stop.addEventListener('abort', over);
      let up = false;
      hangUp = openLine(host.address, keys, rows.doc, {
        onSynced: () => {
          if (up) return;
          up = true;
          void rows.settled().then(() => {
            if (stop.aborted) return;
            again.succeeded();
            rows.watch(() => host.onChange(rows));
            host.onUp(rows);
          });
        },
        onKept: (kept) => {
          rows.hearKept(kept);
          host.onChange(rows);
        },
        onRefused: () => resolve('refused'),
        onLost: () => resolve('lost'),
      });
      if (stop.aborted) over();
    });
    stop.removeEventListener('abort', over);
    hangUp();
    rows.doc.destroy();
    if (why === 'over') return;
    host.onDown(why);
    await host.wait(again.next());
  }
}
