import { useEffect, useState } from 'react';
import type { SharingDesk } from '../../state/sharing';
import { useWorkbook } from '../../state/use-workbook';

/** What sharing can do; null until it has been fetched, and where there is no way to it. */
export function useSharingDesk(): SharingDesk | null {
  const fetchDesk = useWorkbook((state) => state.sharingDesk);
  const [desk, setDesk] = useState<SharingDesk | null>(null);
  useEffect(() => {
    let here = true;
    void fetchDesk().then(
      (fetched) => {
        if (here) setDesk(fetched);
      },
      () => undefined,
    );
    return () => {
      here = false;
    };
  }, [fetchDesk]);
  return desk;
}

/** The address of this app with something after `#/`. */
export const addressOf = (link: string): string => `${location.href.replace(/#.*$/, '')}#/${link}`;
