import { Trash2 } from 'lucide-react';
import { useState } from 'react';
import type { FavorEvent } from '../../../shared/workbook';
import { favorNames, tablesOf } from '../../core/plan';
import { useWorkbook } from '../../state/use-workbook';
import { WideBox } from '../../ui/drawing/wide-box';
import { Button } from '../../ui/fields/button';
import { Opening } from '../../ui/frame/opening';
import { usePageWords } from '../../ui/words';
import type { EventEdits } from './event-edits';
import { GuestList } from './guest-list';
import { GuestPaste } from './guest-paste';
import { NameCardsForm } from './name-cards-form';
import './guests.css';

interface GuestsFormProps {
  readonly event: FavorEvent;
  readonly edits: EventEdits;
}

/** The guest list, which an event can do without: read in, shown by table, changed, printed. */
export function GuestsForm({ event, edits }: GuestsFormProps) {
  const words = usePageWords().guests;
  const { recipes, papers } = useWorkbook((state) => state.rows);
  const [again, setAgain] = useState(false);
  const guests = event.guests ?? [];
  const names = favorNames(event, recipes, papers);
  return (
    <Opening head={<strong>{words.head}</strong>} open={guests.length > 0}>
      <p className="soft">{words.why}</p>
      {guests.length === 0 || again ? (
        <GuestPaste
          event={event}
          names={names}
          onLeave={again ? () => setAgain(false) : null}
          onTake={(heard) => {
            edits.setGuests(words.take, heard);
            setAgain(false);
          }}
        />
      ) : (
        <>
          <ByTable event={event} names={names} />
          <GuestList event={event} edits={edits} names={names} />
          <div className="guest-acts">
            <Button onClick={() => setAgain(true)}>{words.change}</Button>
            <Button
              tone="quiet"
              icon={<Trash2 aria-hidden="true" />}
              onClick={() => edits.setGuests(words.clear, [])}
            >
              {words.clear}
            </Button>
          </div>
          <div>
            <label className="guest-tick">
              <input
                type="checkbox"
                checked={event.shareGuests ?? false}
                onChange={({ target }) => edits.shareGuests(target.checked)}
              />
              {words.share}
            </label>
            <p className="field-note">{words.shareWhy}</p>
          </div>
          <NameCardsForm event={event} edits={edits} />
        </>
      )}
    </Opening>
  );
}

/** How many of each favor go to which table. */
function ByTable({ event, names }: { event: FavorEvent; names: ReadonlyMap<string, string> }) {
  const words = usePageWords().guests;
  const tables = tablesOf(event);
  const countOf = (counts: (typeof tables)[number]['counts'], id: string) =>
    counts.find(({ lineId }) => lineId === id)?.count ?? 0;
  return (
    <WideBox label={words.byTable}>
      <table className="event-table guest-tables">
        <caption>{words.byTable}</caption>
        <thead>
          <tr>
            <th scope="col">{words.table}</th>
            {event.lines.map(({ id }) => (
              <th scope="col" key={id}>
                {names.get(id)}
              </th>
            ))}
            <th scope="col">{words.inAll}</th>
          </tr>
        </thead>
        <tbody>
          {tables.map(({ table, guests, counts }) => (
            <tr key={table}>
              <th scope="row">{table === '' ? words.noTable : table}</th>
              {event.lines.map(({ id }) => (
                <td key={id}>{countOf(counts, id)}</td>
              ))}
              <td>{guests.length}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{words.inAll}</th>
            {event.lines.map(({ id }) => (
              <td key={id}>{tables.reduce((sum, { counts }) => sum + countOf(counts, id), 0)}</td>
            ))}
            <td>{event.guests?.length}</td>
          </tr>
        </tfoot>
      </table>
    </WideBox>
  );
}
