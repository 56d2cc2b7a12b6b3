import { type ReactNode, useEffect, useState } from 'react';
import { useOutletContext } from 'react-router';
import { useWorkbook } from '../../state/use-workbook';
import type { ShelfDoors } from '../../ui/frame/shelf-doors';

/** The first time, the example opens by itself and nothing of the shelf is fetched; else, or where it cannot be fetched, the shelf. */
export function FirstVisit({ shelf }: { readonly shelf: (exampleFailed: boolean) => ReactNode }) {
  const { openExample } = useOutletContext<ShelfDoors>();
  const fresh = useWorkbook((state) => state.fresh);
  const isStillFresh = useWorkbook((state) => state.isStillFresh);
  const [opening, setOpening] = useState(fresh);

  useEffect(() => {
    if (!opening) return;
    let here = true;
    const open = async () => {
      const opened = (await isStillFresh()) && here && (await openExample('supper'));
      if (here && !opened) setOpening(false);
    };
    void open();
    return () => {
      here = false;
    };
  }, [opening, openExample, isStillFresh]);

  if (opening) return <main id="page" className="page page-opening" aria-busy="true" tabIndex={-1} />;
  return shelf(fresh);
}
