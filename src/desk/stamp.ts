import { type PrintStamp, shortId } from '../print';
import type { Desk } from './verb';

/** What a print carries in its foot: the saved row's id and when it last changed, so that the same row gives the same bytes; else the time of day. */
export const stampOf = (
  row: { readonly id: string; readonly changedAt: string } | null,
  desk: Desk,
): PrintStamp => (row ? { code: shortId(row.id), madeAt: row.changedAt } : { code: '', madeAt: desk.now() });
