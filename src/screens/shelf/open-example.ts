import { useCallback } from 'react';
import { useNavigate, useOutletContext } from 'react-router';
import { useWorkbook } from '../../state/use-workbook';
import { pageAddress } from '../../ui/frame/addresses';
import type { ShelfDoors } from '../../ui/frame/shelf-doors';

/** Puts the finished example on the shelf and opens it. Answers whether it could be fetched. */
export function useOpenExample(): () => Promise<boolean> {
  const { fetchDemo, fetchExamplePage } = useOutletContext<ShelfDoors>();
  const planImport = useWorkbook((state) => state.planImport);
  const placeExample = useWorkbook((state) => state.placeExample);
  const navigate = useNavigate();
  return useCallback(async () => {
    const [text, { readWorkbook }] = await Promise.all([
      fetchDemo(),
      import('../../../shared/read-workbook'),
      // Where it does not come, the page says so itself when it is opened.
      fetchExamplePage().catch(() => null),
    ]);
    const reading = text === null ? null : readWorkbook(text);
    if (!reading?.ok) return false;
    const plan = planImport(reading.file);
    placeExample(plan);
    const event = plan.rows.find(({ table }) => table === 'events');
    if (event) void navigate(pageAddress({ kind: 'event', id: event.row.id }, 'event'), { replace: true });
    return true;
  }, [fetchDemo, fetchExamplePage, planImport, placeExample, navigate]);
}
