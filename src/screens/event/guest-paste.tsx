import { useId, useState } from 'react';
import type { HeardGuests } from '../../../shared/read-guests';
import type { FavorEvent, Guest } from '../../../shared/workbook';
import { noteMissingPart } from '../../state/results/unanswered';
import { Button } from '../../ui/fields/button';
import { FilePick } from '../../ui/fields/file-pick';
import { usePageWords } from '../../ui/words';

interface GuestPasteProps {
  readonly event: FavorEvent;
  readonly names: ReadonlyMap<string, string>;
  /** Null where there is no list to go back to. */
  readonly onLeave: (() => void) | null;
  readonly onTake: (guests: readonly Guest[]) => void;
}

/** A list pasted or opened, looked through before anything of it is kept. */
export function GuestPaste({ event, names, onLeave, onTake }: GuestPasteProps) {
  const words = usePageWords().guests;
  const id = useId();
  const [text, setText] = useState('');
  const [heard, setHeard] = useState<HeardGuests | null>(null);

  const read = async (list: string) => {
    const { readGuests } = await import('../../../shared/read-guests');
    setHeard(
      readGuests(
        list,
        event.lines.map((line) => ({ id: line.id, name: names.get(line.id) ?? '' })),
      ),
    );
  };
  const pick = async (file: File) => read(await file.text());

  return (
    <div className="guest-paste">
      <div className="field">
        <div className="field-head">
          <label htmlFor={id}>{words.paste}</label>
        </div>
        <textarea
          id={id}
          rows={6}
          value={text}
          aria-describedby={`${id}-help`}
          spellCheck={false}
          autoComplete="off"
          onChange={({ target }) => {
            setText(target.value);
            setHeard(null);
          }}
        />
        <p className="field-note" id={`${id}-help`}>
          {words.pasteHelp}
        </p>
      </div>
      <div className="guest-acts">
        <Button
          aria-disabled={text.trim() === ''}
          onClick={() => text.trim() !== '' && void read(text).catch(noteMissingPart)}
        >
          {words.read}
        </Button>
        <FilePick
          tone="quiet"
          label={words.openFile}
          accept=".csv,.tsv,.txt,text/csv,text/plain"
          onPick={([file]) => void pick(file).catch(noteMissingPart)}
        />
        {onLeave && (
          <Button tone="quiet" onClick={onLeave}>
            {words.leave}
          </Button>
        )}
      </div>
      {heard && <Heard heard={heard} onTake={() => onTake(heard.guests)} />}
    </div>
  );
}

const MOST_SHOWN = 8;

function Heard({ heard, onTake }: { heard: HeardGuests; onTake: () => void }) {
  const words = usePageWords().guests;
  const { guests, unread, unknownFavors, left } = heard;
  const tables = new Set(guests.map(({ table }) => table).filter(Boolean)).size;
  const needs = guests.filter((guest) => guest.needs !== '').length;
  return (
    <div className="guest-heard" role="status">
      <p>
        <strong>{guests.length === 0 ? words.noneRead : words.heard(guests.length, tables, needs)}</strong>
      </p>
      {unknownFavors.length > 0 && <p>{words.unknownFavors(unknownFavors.join(', '))}</p>}
      {left > 0 && <p>{words.tooMany(left)}</p>}
      {unread.slice(0, MOST_SHOWN).map(({ line, text }) => (
        <p key={line}>{words.unread(line, text)}</p>
      ))}
      {guests.length > 0 && (
        <Button tone="act" onClick={onTake}>
          {words.take}
        </Button>
      )}
    </div>
  );
}
