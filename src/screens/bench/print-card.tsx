import type { Recipe } from '../../../shared/workbook';
import { PrintActs } from '../../ui/frame/print-acts';
import { usePrinter } from '../../ui/frame/printer';
import { usePageWords } from '../../ui/words';

/** The card on paper, to lie beside the trimmer. */
export function PrintCard({ recipe }: { recipe: Recipe }) {
  const words = usePageWords().bench;
  const printer = usePrinter();
  return (
    <PrintActs
      acts={[
        { label: words.printCard, make: (paper) => printer.benchCard(recipe, paper) },
        { label: words.printRoomy, make: (paper) => printer.benchCard(recipe, paper, 'roomy') },
      ]}
    />
  );
}
