import { Copy, Download, Trash2 } from 'lucide-react';
import { Link } from 'react-router';
import type { FavorEvent } from '../../../shared/workbook';
import { addSpareKits, addSpares } from '../../core/plan/event/spares';
import { useWorkbook } from '../../state/use-workbook';
import { IconButton } from '../../ui/fields/button';
import { pageAddress } from '../../ui/frame/addresses';
import { LongList, type Place } from '../../ui/frame/long-list';
import { useWords } from '../../ui/words';
import { useSaveFile } from './save-file';

/** Every event as a line: what, when, how many of what. */
export function EventRows({ events }: { events: readonly FavorEvent[] }) {
  const words = useWords().shelf;
  if (events.length === 0) return <p className="soft">{words.noEvents}</p>;
  return (
    <LongList rows={events} className="event-rows" rowPx={61}>
      {(event, place) => <EventRow key={event.id} event={event} place={place} />}
    </LongList>
  );
}

function EventRow({ event, place }: { event: FavorEvent; place: Place }) {
  const words = useWords();
  const remove = useWorkbook((state) => state.remove);
  const duplicate = useWorkbook((state) => state.duplicate);
  const saveFile = useSaveFile();
  const counted = event.lines.map(({ count }) =>
    event.kits ? addSpareKits(event.kits, count, event.spares) : addSpares(count, event.spares),
  );
  const ordered = counted.reduce((sum, each) => sum + each.ordered, 0);
  // Spares by accuracy are known once the boxes are planned; here only what was asked for is.
  const spares = event.spares.offByMm === undefined ? counted.reduce((sum, each) => sum + each.spares, 0) : 0;
  const key = { table: 'events', id: event.id } as const;
  return (
    <li {...place} className="event-row">
      <Link to={pageAddress({ kind: 'event', id: event.id }, 'event')} className="event-row-face">
        <span>
          <strong>{event.name}</strong>{' '}
          {event.example && <span className="soft">{words.shelf.example} </span>}
        </span>{' '}
        <span>{event.date === null ? words.shelf.noDate : words.shelf.onDate(event.date)}</span>{' '}
        <span>{ordered === 0 ? words.needs.howMany : words.needs.favors(ordered, spares)}</span>
      </Link>
      <IconButton
        label={words.shelf.copyOf(event.name)}
        icon={<Copy />}
        onClick={() => duplicate(key, words.shelf.copyName(event.name))}
      />
      <IconButton
        label={words.shelf.saveFileOf(event.name)}
        icon={<Download />}
        onClick={() => saveFile({ kind: 'event', id: event.id }, event.name)}
      />
      <IconButton label={words.shelf.deleteOf(event.name)} icon={<Trash2 />} onClick={() => remove(key)} />
    </li>
  );
}
