import { Plus, Trash2 } from 'lucide-react';
import type { Offer } from '../../../shared/workbook';
import { Button, IconButton } from '../../ui/fields/button';
import { NumberField } from '../../ui/fields/number-field';
import { useWords } from '../../ui/words';
import { OfferFields, withOffer } from './offer-fields';

/** The saved format takes no more. */
const MOST_PACKS = 10;

interface Pack {
  readonly priceMinor: number;
  readonly offer?: Offer | undefined;
}

interface PackListProps<Sold extends Pack> {
  readonly packs: readonly Sold[];
  /** What a pack holds so many of: the field that counts it, its label, and the most it may say. */
  readonly holds: { readonly field: keyof Sold; readonly label: string; readonly most: number };
  /** A pack as it begins. */
  readonly first: Sold;
  readonly onChange: (label: string, packs: Sold[]) => void;
}

/** The packs a paper or a supply is sold in, each with its price and the shop's offer. */
export function PackList<Sold extends Pack>({ packs, holds, first, onChange }: PackListProps<Sold>) {
  const words = useWords().stock;
  const put = (label: string, place: number, change: (old: Sold) => Sold) =>
    onChange(
      label,
      packs.map((old, at) => (at === place ? change(old) : old)),
    );
  return (
    <fieldset className="packs">
      <legend>{words.packs}</legend>
      {packs.map((pack, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: packs have no other name than their place
        <div key={place} className="pack-row">
          <NumberField
            label={holds.label}
            value={Number(pack[holds.field])}
            least={1}
            most={holds.most}
            onChange={(count) => put(words.packs, place, (old) => ({ ...old, [holds.field]: count }))}
          />
          <NumberField
            label={words.packPrice}
            decimals={2}
            value={pack.priceMinor}
            least={0}
            most={100_000_000}
            onChange={(priceMinor) => put(words.packs, place, (old) => ({ ...old, priceMinor }))}
          />
          <OfferFields
            offer={pack.offer}
            onChange={(offer) => put(words.offer, place, (old) => withOffer(old, offer))}
          />
          <IconButton
            label={words.removePack(place + 1)}
            icon={<Trash2 />}
            onClick={() =>
              onChange(
                words.packs,
                packs.filter((_, at) => at !== place),
              )
            }
          />
        </div>
      ))}
      {packs.length < MOST_PACKS && (
        <Button
          tone="quiet"
          icon={<Plus aria-hidden="true" />}
          onClick={() => onChange(words.addPack, [...packs, first])}
        >
          {words.addPack}
        </Button>
      )}
    </fieldset>
  );
}
