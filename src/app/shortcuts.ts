import { useEffect } from 'react';
import { useWorkbook } from '../state/use-workbook';

/** What can be asked for from anywhere: the list of everything that can be done, or the keys alone. */
export type Asked = 'commands' | 'keys';

const isTypedInto = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName));

/**
 * Ctrl or Cmd with Z, Shift Z, Y, S and K wherever the focus is; `/` and `?` only where nothing is typed into. A key that is added here is told in
 * `commands.ts` or `command-list.tsx`.
 */
export function useShortcuts(ask: (what: Asked) => void): void {
  const undo = useWorkbook((state) => state.undo);
  const redo = useWorkbook((state) => state.redo);
  const keepNow = useWorkbook((state) => state.keepNow);
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.altKey || event.defaultPrevented) return;
      const key = event.key.toLowerCase();
      if (event.ctrlKey || event.metaKey) {
        if (key === 'z') (event.shiftKey ? redo : undo)();
        else if (key === 'y') redo();
        else if (key === 's') void keepNow();
        else if (key === 'k') ask('commands');
        else return;
      } else {
        if (isTypedInto(event.target)) return;
        if (key === '/') ask('commands');
        else if (key === '?') ask('keys');
        else return;
      }
      event.preventDefault();
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [undo, redo, keepNow, ask]);
}
