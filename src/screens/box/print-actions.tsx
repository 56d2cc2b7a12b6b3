import type { Recipe } from '../../../shared/workbook';
import { PrintActs } from '../../ui/print-acts';
import { usePrinter } from '../../ui/printer';
import { usePageWords } from '../../ui/words';

/** The bench card, and the net at true size. */
export function PrintActions({ recipe }: { recipe: Recipe }) {
  const words = usePageWords().box;
  const printer = usePrinter();
  return (
    <PrintActs
      acts={[
        { label: words.benchCard, tone: 'act', make: (paper) => printer.benchCard(recipe, paper) },
        { label: words.template, make: (paper) => printer.template(recipe, paper) },
      ]}
    />
  );
}
