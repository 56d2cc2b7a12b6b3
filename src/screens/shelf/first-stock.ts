import { useWorkbook } from '../../state/use-workbook';
import { useWords } from '../../ui/words';

const NO_SQUARING = { left: 0, right: 0, near: 0, far: 0 };

/** A new paper, supply or tool as it starts: the commonest there is, to be changed. source: common practice, no source. */
export function useFirstStock() {
  const words = useWords().shelf;
  const create = useWorkbook((state) => state.create);
  const unit = useWorkbook((state) => state.settings.unit);
  return (table: 'papers' | 'supplies' | 'tools') => {
    const inch = unit === 'in';
    if (table === 'papers')
      return create(
        'papers',
        {
          name: words.newPaper,
          colour: '#f4efe4',
          acrossMm: inch ? 215.9 : 210,
          upMm: inch ? 279.4 : 297,
          grain: 'up',
          gsm: inch ? 216 : 250,
          caliperUm: 300,
          squaringMm: NO_SQUARING,
          packs: [],
          onHandSheets: 0,
        },
        words.newPaper,
      );
    if (table === 'supplies')
      return create(
        'supplies',
        {
          name: words.newSupply,
          kind: 'tape',
          widthMm: inch ? 6.35 : 6,
          rollMm: inch ? 25_146 : 25_000,
          priceMinor: 0,
          onHandRolls: 0,
          wastePercent: 5,
        },
        words.newSupply,
      );
    return create(
      'tools',
      {
        name: words.newTool,
        kind: 'fence',
        unit,
        finestMarkMm: inch ? 1.5875 : 1,
        reachMm: inch ? 304.8 : 300,
        longestCutMm: inch ? 304.8 : 300,
        stack: 1,
      },
      words.newTool,
    );
  };
}
