import { useEffect } from 'react';
import { useWorkbook } from '../state/use-workbook';
import { keyIn } from '../ui/frame/keys';
import type { Asked } from './asked';

const isTypedInto = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.matches('input, textarea, select, [contenteditable]');

/**
 * The keys that are heard wherever the focus is; those without Ctrl only where nothing is typed into. While a text field holds typing that
 * its own undo can take back, undo and redo are left to it.
 */
export function useShortcuts(ask: (what: Asked) => void): void {
  const undo = useWorkbook((state) => state.undo);
  const redo = useWorkbook((state) => state.redo);
  const keepNow = useWorkbook((state) => state.keepNow);
  const typedBack = useWorkbook((state) => state.typedBack);
  useEffect(() => {
    const typing = typingWatch(typedBack);
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.defaultPrevented) return;
      const [act] = keyIn('anywhere', event) ?? [];
      if (act === undefined) return;
      if (!event.ctrlKey && !event.metaKey && isTypedInto(event.target)) return;
      if ((act === 'undo' || act === 'redo') && typing.takes(act, event.target)) return;
      event.preventDefault();
      if (act === 'undo') undo();
      else if (act === 'redo') redo();
      else if (act === 'keep') void keepNow();
      else ask(act === 'find' ? 'commands' : 'keys');
    };
    window.addEventListener('keydown', onKeyDown);
    return () => {
      typing.end();
      window.removeEventListener('keydown', onKeyDown);
    };
  }, [undo, redo, keepNow, typedBack, ask]);
}

/** Hears the keys for as long as it stands; fetched beside the first page, which nobody can type into sooner. */
export function Shortcuts({ ask }: { readonly ask: (what: Asked) => void }): null {
  useShortcuts(ask);
  return null;
}

type TextField = HTMLInputElement | HTMLTextAreaElement;

/** A field that takes letters, and has an undo of its own for them. */
const isTextField = (target: EventTarget | null): target is TextField =>
  target instanceof HTMLTextAreaElement ||
  (target instanceof HTMLInputElement && /^(text|search|url|tel|email|number|password)$/.test(target.type));

interface Typing {
  readonly field: TextField;
  /** Its text when it got the focus, and after the last keystroke. */
  readonly before: string;
  readonly now: string;
  /** The last change of it was the browser's own undo or redo. */
  readonly wayBack: boolean;
}

interface TypingWatch {
  /** Whether the browser's own undo or redo has something to do in this field. */
  readonly takes: (act: 'undo' | 'redo', target: EventTarget | null) => boolean;
  readonly end: () => void;
}

/**
 * Watches what is typed into the field with the focus. A text that an arrow, a mend or a spelling has put there is not typing any more.
 * `onWayBack` is told after the browser's own undo has been heard by the page.
 */
function typingWatch(onWayBack: () => void): TypingWatch {
  let typing: Typing | null = null;
  const onFocus = ({ target }: Event) => {
    typing = isTextField(target)
      ? { field: target, before: target.value, now: target.value, wayBack: false }
      : null;
  };
  // Before the page hears of it, which may spell the text again.
  const onType = (event: Event) => {
    if (typing === null || typing.field !== event.target) return;
    const wayBack = event instanceof InputEvent && event.inputType.startsWith('history');
    typing = { ...typing, now: typing.field.value, wayBack };
  };
  const afterType = (event: Event) => {
    if (event instanceof InputEvent && event.inputType === 'historyUndo') onWayBack();
  };
  window.addEventListener('focusin', onFocus);
  window.addEventListener('input', onType, { capture: true });
  window.addEventListener('input', afterType);
  return {
    takes: (act, target) =>
      typing !== null &&
      typing.field === target &&
      typing.field.value === typing.now &&
      (act === 'undo' ? typing.now !== typing.before : typing.wayBack),
    end() {
      window.removeEventListener('focusin', onFocus);
      window.removeEventListener('input', onType, { capture: true });
      window.removeEventListener('input', afterType);
    },
  };
}
