import { use, useEffect, useState } from 'react';
import { useNavigate } from 'react-router';
import { useWorkbook, WorkbookContext } from '../state/use-workbook';
import type { WorkbookStore } from '../state/workbook-store';
import { pageAddress } from '../ui/addresses';
import { EXAMPLE_PAGE, exampleText } from './ahead';
import { fetchWorkbookPage, shelfPage } from './pages';
import { PageOpening } from './phase-gate';
import { placeExample } from './place-example';

/** The shelf; where nothing was ever kept or made, the finished example, without the shelf on the way. */
export function FirstPage() {
  const [opening, setOpening] = useState(useWorkbook((state) => state.fresh));
  return opening ? <ExampleOpening onFailed={() => setOpening(false)} /> : <shelfPage.Page />;
}

function ExampleOpening({ onFailed }: { readonly onFailed: () => void }) {
  const workbook = use(WorkbookContext);
  const navigate = useNavigate();
  useEffect(() => {
    let here = true;
    void openExample(workbook, () => here).then((id) => {
      if (!here) return;
      // The shelf tries once more, and says so if the example does not come.
      if (id === null) onFailed();
      else void navigate(pageAddress({ kind: 'event', id }, EXAMPLE_PAGE), { replace: true });
    });
    return () => {
      here = false;
    };
  }, [workbook, navigate, onFailed]);
  return <PageOpening />;
}

/** Everything it will be drawn with comes first, so that it is drawn in one go. */
async function openExample(workbook: WorkbookStore | null, isHere: () => boolean): Promise<string | null> {
  try {
    const [text] = await Promise.all([exampleText(), fetchWorkbookPage(EXAMPLE_PAGE)]);
    return text === null || !workbook || !isHere() ? null : placeExample(text, workbook.getState());
  } catch {
    return null;
  }
}
