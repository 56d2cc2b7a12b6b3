import { useEffect } from 'react';
import { useWorkbook } from '../state/use-workbook';

/** Ctrl or Cmd with Z, Shift Z, Y and S, wherever the focus is; single letters are left to typing. */
export function useShortcuts(): void {
  const undo = useWorkbook((state) => state.undo);
  const redo = useWorkbook((state) => state.redo);
  const keepNow = useWorkbook((state) => state.keepNow);
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if ((!event.ctrlKey && !event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      if (key === 'z') (event.shiftKey ? redo : undo)();
      else if (key === 'y') redo();
      else if (key === 's') void keepNow();
      else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [undo, redo, keepNow]);
}
