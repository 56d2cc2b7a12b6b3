import { X } from 'lucide-react';
import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import { useLocation, useNavigate } from 'react-router';
import { useWorkbook } from '../state/use-workbook';
import { Button, IconButton } from '../ui/button';
import { useWords } from '../ui/words';
import { type Command, commandsFrom, findCommands } from './commands';
import { commandMessages as own } from './messages/commands';
import type { Asked } from './shortcuts';
import './command-list.css';

interface CommandListProps {
  readonly asked: Asked;
  readonly onClose: () => void;
}

/** Everything that can be done from here, found by typing; or the keys that do it without. */
export function CommandList({ asked, onClose }: CommandListProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [view, setView] = useState(asked);
  useEffect(() => {
    dialog.current?.showModal();
    dialog.current?.querySelector('input')?.focus();
  }, []);
  return (
    <dialog
      ref={dialog}
      className="command-list"
      aria-label={own[view === 'keys' ? 'keys' : 'find']}
      onClose={onClose}
    >
      <header>
        <h2>{view === 'keys' ? own.keys : own.find}</h2>
        <IconButton label={own.close} icon={<X />} onClick={() => dialog.current?.close()} />
      </header>
      {view === 'keys' ? (
        <Keys />
      ) : (
        <Finder onDone={() => dialog.current?.close()} onKeys={() => setView('keys')} />
      )}
    </dialog>
  );
}

function useCommands(): readonly Command[] {
  const state = useWorkbook((all) => all);
  const { pathname } = useLocation();
  const navigate = useNavigate();
  const words = useWords();
  return commandsFrom({ state, pathname, go: (address) => void navigate(address), words, own });
}

const MOST = 50; // shown at once; typing on finds the others. source: our own

/** A text field over a list of choices, by the combobox pattern of WAI-ARIA: the focus stays in the field. */
function Finder({ onDone, onKeys }: { onDone: () => void; onKeys: () => void }) {
  const id = useId();
  const [typed, setTyped] = useState('');
  const [at, setAt] = useState(0);
  const all = findCommands(useCommands(), typed);
  const found = all.slice(0, MOST);
  const current = found[Math.min(at, found.length - 1)];
  const chosen = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // What it answers is a promise in newer browsers, and no way to clean up.
    chosen.current?.scrollIntoView({ block: 'nearest' });
  });
  const take = (command: Command | undefined) => {
    if (!command) return;
    onDone();
    command.run();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') take(current);
    else if (event.key === 'ArrowDown') setAt((at + 1) % Math.max(1, found.length));
    else if (event.key === 'ArrowUp') setAt((at + found.length - 1) % Math.max(1, found.length));
    else return;
    event.preventDefault();
  };
  const optionId = (command: Command) => `${id} ${command.id}`.replaceAll(' ', '-');
  return (
    <>
      <label htmlFor={id} className="soft">
        {own.findHelp}
      </label>
      <input
        id={id}
        type="text"
        role="combobox"
        autoComplete="off"
        aria-expanded="true"
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        aria-activedescendant={current && optionId(current)}
        value={typed}
        onChange={({ target }) => {
          setTyped(target.value);
          setAt(0);
        }}
        onKeyDown={onKeyDown}
      />
      <p role="status" className="said-only">
        {all.length === 0 ? own.none : own.found(all.length)}
      </p>
      <div id={`${id}-list`} role="listbox" aria-label={own.find} className="command-options">
        {found.map((command) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are heard by the field, which keeps the focus
          <div
            key={command.id}
            ref={command === current ? chosen : null}
            id={optionId(command)}
            role="option"
            tabIndex={-1}
            aria-selected={command === current}
            className="command-option"
            onClick={() => take(command)}
          >
            <span>{command.says}</span>
            <span className="soft">{command.keys ?? own.kinds[command.kind]}</span>
          </div>
        ))}
        {found.length === 0 && <p className="soft">{own.none}</p>}
      </div>
      <Button tone="quiet" onClick={onKeys}>
        {own.toKeys}
      </Button>
    </>
  );
}

/** Keys that are heard where the focus is, beside those of the commands. */
const ELSEWHERE = [
  ['Ctrl K, /', own.thisList],
  ['?', own.theseKeys],
  ['↑ ↓', own.fieldUp],
  ['Shift ↑ ↓', own.fieldUpMore],
  ['Esc', own.fieldBack],
  ['Enter', own.fieldTake],
  ['+', own.zoomIn],
  ['−', own.zoomOut],
  ['0', own.zoomWhole],
] as const;

function Keys() {
  const commands = useCommands().flatMap(({ keys, says }) => (keys ? [[keys, says] as const] : []));
  return (
    <>
      <p className="soft">{own.keysWhy}</p>
      <dl className="command-keys">
        {[...commands, ...ELSEWHERE].map(([keys, says]) => (
          <div key={keys}>
            <dt>
              <kbd>{keys}</kbd>
            </dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
