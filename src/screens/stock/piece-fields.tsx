import { Plus, Trash2 } from 'lucide-react';
import type { PieceSupply } from '../../../shared/workbook';
import { useWorkbook } from '../../state/use-workbook';
import { Button, IconButton } from '../../ui/button';
import { CountStepper } from '../../ui/count-stepper';
import { NumberField } from '../../ui/number-field';
import { useWords } from '../../ui/words';
import { OfferFields, withOffer } from './offer-fields';

/** The saved format takes no more. */
const MOST_PACKS = 10;

/** Seals, clips, foam squares, bags, what is given: packs by the piece, and how many lie in the drawer. */
export function PieceFields({ supply }: { supply: PieceSupply }) {
  const words = useWords().stock;
  const edit = useWorkbook((state) => state.edit);
  const set = (label: string, change: Partial<PieceSupply>) =>
    void edit('supplies', supply.id, label, (old) => ({ ...old, ...change }) as PieceSupply);
  const setPack = (at: number, change: Partial<PieceSupply['packs'][number]>) =>
    set(words.packs, { packs: supply.packs.map((pack, i) => (i === at ? { ...pack, ...change } : pack)) });
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
      <fieldset className="packs">
        <legend>{words.packs}</legend>
        {supply.packs.map((pack, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: packs have no other name than their place
          <div key={at} className="pack-row">
            <NumberField
              label={words.piecesInPack}
              value={pack.pieces}
              least={1}
              most={100_000}
              onChange={(pieces) => setPack(at, { pieces })}
            />
            <NumberField
              label={words.packPrice}
              decimals={2}
              value={pack.priceMinor}
              least={0}
              most={100_000_000}
              onChange={(priceMinor) => setPack(at, { priceMinor })}
            />
            <OfferFields
              offer={pack.offer}
              onChange={(offer) =>
                set(words.offer, {
                  packs: supply.packs.map((old, i) => (i === at ? withOffer(old, offer) : old)),
                })
              }
            />
            <IconButton
              label={words.removePack(at + 1)}
              icon={<Trash2 />}
              onClick={() => set(words.packs, { packs: supply.packs.filter((_, i) => i !== at) })}
            />
          </div>
        ))}
        {supply.packs.length < MOST_PACKS && (
          <Button
            icon={<Plus aria-hidden="true" />}
            onClick={() => set(words.addPack, { packs: [...supply.packs, { pieces: 20, priceMinor: 0 }] })}
          >
            {words.addPack}
          </Button>
        )}
      </fieldset>
    </>
  );
}
