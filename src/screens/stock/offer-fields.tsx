import type { Offer } from '../../../shared/workbook';
import { NumberField } from '../../ui/fields/number-field';
import { useWords } from '../../ui/words';

/** So many bought, so many free; none free is no offer. */
export function OfferFields({
  offer,
  onChange,
}: {
  offer: Offer | undefined;
  onChange: (offer: Offer | undefined) => void;
}) {
  const words = useWords().stock;
  const put = (buy: number, free: number) => onChange(free > 0 ? { buy, free } : undefined);
  return (
    <>
      <NumberField
        label={words.offerFree}
        help={words.offerHelp}
        value={offer?.free ?? 0}
        least={0}
        most={100}
        onChange={(free) => put(offer?.buy ?? 1, free)}
      />
      {offer && (
        <NumberField
          label={words.offerBuy}
          value={offer.buy}
          least={1}
          most={100}
          onChange={(buy) => put(buy, offer.free)}
        />
      )}
    </>
  );
}

/** A pack or roll with this offer, or with none. */
export function withOffer<Sold extends { readonly offer?: Offer | undefined }>(
  sold: Sold,
  offer: Offer | undefined,
): Sold {
  const { offer: _, ...plain } = sold;
  return (offer ? { ...plain, offer } : plain) as Sold;
}
