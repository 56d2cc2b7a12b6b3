import { useState } from 'react';
import { codeOf } from '../../print';
import type { Sharing, SharingDesk, ShownHere } from '../../state/sharing';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { LinkToCopy } from '../../ui/fields/link-to-copy';
import { SelectField } from '../../ui/fields/text-field';
import { useKeepingWords } from '../../ui/words/keeping-words';
import { addressOf } from './use-sharing';

interface ShownEventsProps {
  readonly desk: SharingDesk;
  readonly sharing: Sharing;
}

/** Links that show one event to helpers or learners: made, handed over, taken back. */
export function ShownEvents({ desk, sharing }: ShownEventsProps) {
  const words = useKeepingWords().sharing.shown;
  const unit = useWorkbook((state) => state.settings.unit);
  const rows = useWorkbook((state) => state.rows.events);
  const events = [...rows.values()].filter(({ lines, example }) => lines.length > 0 && !example);
  const [wanted, setWanted] = useState('');
  const [said, setSaid] = useState('');
  const eventId = rows.has(wanted) ? wanted : (events[0]?.id ?? '');
  const make = async (kind: ShownHere['kind']) =>
    setSaid((await desk.showEvent(eventId, kind, unit)) ? '' : words.notNow);
  const withdraw = async (id: string) => setSaid((await desk.withdraw(id)) ? '' : words.notWithdrawn);
  return (
    <>
      <h3>{words.title}</h3>
      <p className="soft">{words.why}</p>
      {events.length === 0 ? (
        <p>{words.noEvents}</p>
      ) : (
        <>
          <div className="keeping-name">
            <SelectField
              label={words.event}
              value={eventId}
              choices={events.map(({ id, name }) => ({ id, label: name }))}
              onChange={setWanted}
            />
          </div>
          <div className="keeping-acts">
            <Button onClick={() => void make('bench')}>{words.make.bench}</Button>
            <Button onClick={() => void make('class')}>{words.make.class}</Button>
          </div>
        </>
      )}
      <p role="status">{said}</p>
      {sharing.shown.length === 0 && sharing.line !== 'joined' && <p className="soft">{words.away}</p>}
      <ul className="keeping-rows">
        {sharing.shown.map((shown) => (
          <Shown
            key={shown.id}
            shown={shown}
            name={rows.get(shown.eventId)?.name}
            withdraw={() => void withdraw(shown.id)}
          />
        ))}
      </ul>
    </>
  );
}

interface ShownProps {
  readonly shown: ShownHere;
  /** Of the event; left out once it is deleted. */
  readonly name: string | undefined;
  readonly withdraw: () => void;
}

function Shown({ shown: { kind, link, helpers, isShown, isGoing }, name, withdraw }: ShownProps) {
  const { sharing } = useKeepingWords();
  const words = sharing.shown;
  const [asked, setAsked] = useState(false);
  const title = words.kinds[kind](name ?? words.gone);
  const address = addressOf(link);
  const shows = name === undefined ? words.asItWas : words.newest;
  return (
    <li>
      <p className="keeping-row-face">
        <strong>{title}</strong>
        {': '}
        <span role="status">
          {isGoing ? words.going : isShown ? shows : words.notYet}
          {kind === 'bench' && !isGoing && ` ${words.helpers(helpers)}`}
        </span>
      </p>
      {!isGoing && !asked && (
        <Button tone="quiet" aria-label={words.withdrawOf(title)} onClick={() => setAsked(true)}>
          {words.withdraw}
        </Button>
      )}
      {asked && !isGoing && (
        <div className="keeping-look">
          <p>{words.withdrawWhy[kind]}</p>
          <div className="keeping-acts">
            <Button tone="act" onClick={withdraw}>
              {words.withdrawOf(title)}
            </Button>
            <Button onClick={() => setAsked(false)}>{sharing.cancel}</Button>
          </div>
        </div>
      )}
      {!isGoing && (
        <details className="keeping-link">
          <summary>{words.showLink}</summary>
          <LinkToCopy label={words.linkOf(title)} address={address} code={codeOf(address)} words={sharing} />
        </details>
      )}
    </li>
  );
}
