import type { PieceSupply } from '../../../shared/workbook';
import { useWorkbook } from '../../state/use-workbook';
import { CountStepper } from '../../ui/fields/count-stepper';
import { useWords } from '../../ui/words';
import { PackList } from './pack-list';

/** Seals, clips, foam squares, bags, what is given: packs by the piece, and how many lie in the drawer. */
export function PieceFields({ supply }: { supply: PieceSupply }) {
  const words = useWords().stock;
  const edit = useWorkbook((state) => state.edit);
  const set = (label: string, change: Partial<PieceSupply>) =>
    void edit('supplies', supply.id, label, (old) => ({ ...old, ...change }) as PieceSupply);
  return (
    <>
      <div className="field">
        <span className="field-name">{words.piecesOnHand}</span>
        <CountStepper
          label={words.piecesOnHand}
          value={supply.onHandPieces}
          onChange={(onHandPieces) => set(words.piecesOnHand, { onHandPieces })}
        />
      </div>
      <PackList
        packs={supply.packs}
        holds={{ field: 'pieces', label: words.piecesInPack, most: 100_000 }}
        first={{ pieces: 20, priceMinor: 0 }}
        onChange={(label, packs) => set(label, { packs })}
      />
    </>
  );
}
