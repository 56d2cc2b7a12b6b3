import { X } from 'lucide-react';
import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import { IconButton } from '../ui/fields/button';
import { KeyList } from '../ui/frame/key-list';
import { keyIn } from '../ui/frame/keys';
import { useWords } from '../ui/words';
import { commandMessages as own, printMessages } from '../ui/words/english/commands';
import { keyMessages } from '../ui/words/english/keys';
import type { Asked } from './asked';
import type { Command } from './commands';
import { findCommands } from './find-commands';
import { PrintList } from './print-list';
import { useCommands } from './use-commands';
import './command-list.css';

interface CommandListProps {
  readonly asked: Asked;
  readonly ask: (what: Asked) => void;
  readonly onClose: () => void;
  readonly leaveFor: (address: string) => void;
}

/** Everything that can be done from here, found by typing; the keys that do it without; or everything that prints. */
export function CommandList({ asked, ask, onClose, leaveFor }: CommandListProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const head = { commands: own.find, keys: own.keys, prints: printMessages.title }[asked];
  useEffect(() => {
    dialog.current?.showModal();
    dialog.current?.querySelector('input')?.focus();
  }, []);
  return (
    <dialog ref={dialog} className="command-list" aria-label={head} onClose={onClose}>
      <header>
        <h2>{head}</h2>
        <IconButton label={own.close} icon={<X />} onClick={() => dialog.current?.close()} />
      </header>
      {asked === 'keys' && (
        <>
          <p className="soft">{keyMessages.why}</p>
          <KeyList words={keyMessages} />
        </>
      )}
      {asked === 'commands' && (
        <Finder onDone={() => dialog.current?.close()} ask={ask} leaveFor={leaveFor} />
      )}
      {asked === 'prints' && <PrintList leaveFor={leaveFor} />}
    </dialog>
  );
}

const MOST = 50; // shown at once; typing on finds the others. source: our own

interface FinderProps extends Pick<CommandListProps, 'ask' | 'leaveFor'> {
  readonly onDone: () => void;
}

/** Doing what was chosen: at once, or with a word of how it goes where it takes a while. */
function useTaking(onDone: () => void) {
  /** What was taken opened something else in the place of this list. */
  const left = useRef(false);
  const instead =
    <What,>(go: (what: What) => void) =>
    (what: What) => {
      left.current = true;
      go(what);
    };
  const [doing, setDoing] = useState<'making' | 'failed' | readonly string[] | null>(null);
  const take = async (command: Command | undefined) => {
    if (!command || doing === 'making') return;
    if (!command.slow) {
      command.run();
      if (!left.current) onDone();
      return;
    }
    setDoing('making');
    try {
      const lost = await command.run();
      if (Array.isArray(lost) && lost.length > 0) setDoing(lost as string[]);
      else onDone();
    } catch {
      setDoing('failed');
    }
  };
  return { doing, setDoing, take, instead };
}

/** A text field over a list of choices, by the combobox pattern of WAI-ARIA: the focus stays in the field. */
function Finder({ onDone, ask, leaveFor }: FinderProps) {
  const { doing, setDoing, take, instead } = useTaking(onDone);
  const id = useId();
  const { printing } = useWords();
  const [typed, setTyped] = useState('');
  const [at, setAt] = useState(0);
  const all = findCommands(useCommands(instead(ask), instead(leaveFor)), typed, own.also);
  const found = all.slice(0, MOST);
  const current = found[Math.min(at, found.length - 1)]?.command;
  const chosen = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // What it answers is a promise in newer browsers, and no way to clean up.
    chosen.current?.scrollIntoView({ block: 'nearest' });
  });
  const onKeyDown = (event: KeyboardEvent) => {
    const [act, nth] = keyIn('list', event) ?? [];
    if (act === undefined) return;
    const many = Math.max(1, found.length);
    if (act === 'take') void take(current);
    else setAt((at + (nth === 0 ? many - 1 : 1)) % many);
    event.preventDefault();
  };
  const optionId = (command: Command) => `${id} ${command.id}`.replaceAll(' ', '-');
  const said = doing === 'making' ? printing.making : printing.failed;
  const state =
    doing && (typeof doing === 'string' ? said : `${printing.lost(doing.join(' '))} ${printing.anyway}?`);
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
          setDoing(null);
        }}
        onKeyDown={onKeyDown}
      />
      <p role="status" className={state ? '' : 'said-only'}>
        {state ?? (all.length === 0 ? own.none : own.found(all.length))}
      </p>
      <div id={`${id}-list`} role="listbox" aria-label={own.find} className="command-options">
        {found.map(({ command, by }) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are heard by the field, which keeps the focus
          <div
            key={command.id}
            ref={command === current ? chosen : null}
            id={optionId(command)}
            role="option"
            tabIndex={-1}
            aria-selected={command === current}
            className="command-option"
            onClick={() => void take(command)}
          >
            <span>
              {command.says}
              {by.length > 0 && <span className="soft"> {own.by(by)}</span>}
            </span>
            <span className="soft">{command.keys ?? own.kinds[command.kind]}</span>
          </div>
        ))}
        {found.length === 0 && <p className="soft">{own.none}</p>}
      </div>
    </>
  );
}
