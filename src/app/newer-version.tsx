import { useEffect, useState } from 'react';
import type { Workbox } from 'workbox-window';
import { useWorkbook } from '../state/use-workbook';
import { Button } from '../ui/fields/button';
import { useWords } from '../ui/words';

/**
 * Keeps the app in the browser, so that it opens without a network from the second time on, and says when a newer version waits. The
 * newer one is taken only when the maker asks for it and everything they typed is kept.
 */
export function NewerVersion() {
  const words = useWords().frame;
  const keepNow = useWorkbook((state) => state.keepNow);
  const saved = useWorkbook((state) => state.save.state === 'saved');
  const [waiting, setWaiting] = useState<Workbox | null>(null);

  useEffect(() => {
    let left = false;
    void registerWorker((worker) => {
      if (!left) setWaiting(worker);
    });
    return () => {
      left = true;
    };
  }, []);

  if (!waiting) return null;
  const take = async () => {
    await keepNow();
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload());
    const registration = await navigator.serviceWorker.getRegistration();
    // Another tab has taken it: it is in charge here too, and only this page is the older one.
    if (registration?.waiting) waiting.messageSkipWaiting();
    else location.reload();
  };
  return (
    <div className="notice">
      <p>{saved ? words.newerVersion : words.newerVersionUnsaved}</p>
      <Button tone="quiet" disabled={!saved} onClick={() => void take()}>
        {words.takeVersion}
      </Button>
    </div>
  );
}

/** Where the browser has no such workers, or none in this mode, the app works as before: it only needs the network to open. */
async function registerWorker(onWaiting: (worker: Workbox) => void): Promise<void> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  try {
    const { Workbox } = await import('workbox-window');
    const worker = new Workbox('./sw.js');
    worker.addEventListener('waiting', () => onWaiting(worker));
    await worker.register();
  } catch {
    // Refused by the browser: said by its own settings, and nothing the maker typed is touched.
  }
}
