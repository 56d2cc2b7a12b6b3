import { useEffect, useSyncExternalStore } from 'react';
import { useWorkbook } from '../state/use-workbook';

const DARK = '(prefers-color-scheme: dark)';
const watchSystem = (listener: () => void) => {
  const query = window.matchMedia(DARK);
  query.addEventListener('change', listener);
  return () => query.removeEventListener('change', listener);
};

/** Dresses the page in the chosen light, or in the system's. */
export function useTheme(): void {
  const chosen = useWorkbook(({ settings }) => settings.theme);
  const systemIsDark = useSyncExternalStore(watchSystem, () => window.matchMedia(DARK).matches);
  const look = chosen === 'system' ? (systemIsDark ? 'dark' : 'light') : chosen;
  useEffect(() => {
    document.documentElement.dataset['theme'] = look;
  }, [look]);
}
