import { useEffect } from 'react';
import { useWorkbook } from '../state/use-workbook';
import { keyIn } from '../ui/frame/keys';
import type { Asked } from './asked';
import { typingWatch } from './typing-watch';

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
