import type { ExchangeDoor } from '../ports';
import { showEvent, withCounts } from '../shown-event';
import type { Workshop } from '../workshop';
import { joinExchange } from './exchange';
import { compareRows } from './field-changes';

/** The door of one workbook, for whatever carries its rows. */
export const doorOf = (shop: Workshop): ExchangeDoor => ({
  join: (...args) => joinExchange(shop, ...args),
  show: (sharing) => shop.set({ sharing }),
  event: (id) => shop.state.rows.events.get(id),
  shows: (...asked) => showEvent(shop.state.rows, ...asked),
  count(eventId, counts) {
    const event = shop.state.rows.events.get(eventId);
    const counted = event && withCounts(event, counts);
    if (!counted) return;
    const fields = compareRows(event, counted);
    shop.place([{ table: 'events', id: eventId, do: 'edit', fields }]);
  },
  watch(listener) {
    shop.afterKept.add(listener);
    shop.afterOthersKept.add(listener);
    return () => {
      shop.afterKept.delete(listener);
      shop.afterOthersKept.delete(listener);
    };
  },
});
