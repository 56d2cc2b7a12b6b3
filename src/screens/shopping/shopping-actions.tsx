import type { EventPlan } from '../../core/plan';
import { PrintActs } from '../../ui/frame/print-acts';
import { usePrinter } from '../../ui/frame/printer';
import { usePageWords } from '../../ui/words';

/** The list on paper, and as a table for a spreadsheet. */
export function ShoppingActions({ plan }: { plan: EventPlan }) {
  const words = usePageWords();
  const printer = usePrinter();
  return (
    <PrintActs
      acts={[
        { label: words.shopping.print, tone: 'act', make: (paper) => printer.shoppingList(plan, paper) },
        { label: words.printing.table, make: () => printer.shoppingTable(plan) },
      ]}
    />
  );
}
