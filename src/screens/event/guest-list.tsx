import { Plus, Trash2 } from 'lucide-react';
import { useState } from 'react';
import type { FavorEvent, Guest } from '../../../shared/workbook';
import { lineOfGuest } from '../../core/plan';
import { Button, IconButton } from '../../ui/fields/button';
import { Opening } from '../../ui/frame/opening';
import { usePageWords } from '../../ui/words';
import type { EventEdits } from './event-edits';

interface GuestListProps {
  readonly event: FavorEvent;
  readonly edits: EventEdits;
  readonly names: ReadonlyMap<string, string>;
}

/** Every guest, to be changed one by one; laid out only once it is opened. */
export function GuestList({ event, edits, names }: GuestListProps) {
  const words = usePageWords().guests;
  const [open, setOpen] = useState(false);
  const guests = event.guests ?? [];
  const change = (label: string, guest: Guest) =>
    void edits.setGuests(
      label,
      guests.map((each) => (each.id === guest.id ? guest : each)),
    );
  return (
    <Opening head={words.all(guests.length)} onToggle={setOpen} open={open}>
      {open && (
        <>
          <ul className="guest-list">
            {guests.map((guest) => (
              <li key={guest.id}>
                <Cell
                  label={words.nameOf(guest.name)}
                  head={words.name}
                  value={guest.name}
                  onChange={(name) => name !== '' && change(words.name, { ...guest, name })}
                />
                <Cell
                  label={words.tableOf(guest.name)}
                  head={words.table}
                  value={guest.table}
                  onChange={(table) => change(words.table, { ...guest, table })}
                />
                <Cell
                  label={words.needsOf(guest.name)}
                  head={words.needs}
                  value={guest.needs}
                  onChange={(needs) => change(words.needs, { ...guest, needs })}
                />
                {event.lines.length > 1 && (
                  <label className="guest-cell">
                    <span aria-hidden="true">{words.favor}</span>
                    <select
                      aria-label={words.favorOf(guest.name)}
                      value={lineOfGuest(event, guest)?.id ?? ''}
                      onChange={({ target }) => change(words.favor, { ...guest, lineId: target.value })}
                    >
                      {event.lines.map(({ id }) => (
                        <option key={id} value={id}>
                          {names.get(id)}
                        </option>
                      ))}
                    </select>
                  </label>
                )}
                <IconButton
                  label={words.removeOf(guest.name)}
                  icon={<Trash2 />}
                  onClick={() =>
                    edits.setGuests(
                      words.remove,
                      guests.filter(({ id }) => id !== guest.id),
                    )
                  }
                />
              </li>
            ))}
          </ul>
          <Button
            icon={<Plus aria-hidden="true" />}
            onClick={() =>
              edits.setGuests(words.add, [
                ...guests,
                { id: freshId(guests), name: words.newGuest, table: '', needs: '', lineId: null },
              ])
            }
          >
            {words.add}
          </Button>
        </>
      )}
    </Opening>
  );
}

interface CellProps {
  readonly label: string;
  readonly head: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
}

/** One thing about a guest; kept when the field is left, so that a half-typed name is no name. */
function Cell({ label, head, value, onChange }: CellProps) {
  return (
    <label className="guest-cell">
      <span aria-hidden="true">{head}</span>
      <input
        key={value}
        aria-label={label}
        defaultValue={value}
        maxLength={200}
        autoComplete="off"
        onBlur={({ target }) => target.value.trim() !== value && onChange(target.value.trim())}
      />
    </label>
  );
}

function freshId(guests: readonly Guest[]): string {
  for (let number = guests.length + 1; ; number++)
    if (guests.every(({ id }) => id !== `guest-new-${number}`)) return `guest-new-${number}`;
}
