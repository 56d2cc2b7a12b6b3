import { Plus, Trash2 } from 'lucide-react';
import type { ComponentProps } from 'react';
import type { FavorEvent, ShopTerms } from '../../../shared/workbook';
import { decimalsOf } from '../../core/plan';
import { useWorkbook } from '../../state/use-workbook';
import { Button, IconButton } from '../../ui/fields/button';
import { NumberField } from '../../ui/fields/number-field';
import { Opening } from '../../ui/frame/opening';
import { usePageWords } from '../../ui/words';

const NO_TERMS: ShopTerms = {
  discounts: [],
  minimumMinor: 0,
  shippingMinor: 0,
  freeShippingFromMinor: null,
  taxHundredths: 0,
};
const MOST_MINOR = 100_000_000;
const MOST_DISCOUNTS = 10;

/** What the shop asks of the whole order. */
export function TermsForm({ event }: { event: FavorEvent }) {
  const words = usePageWords().buying;
  const edit = useWorkbook((state) => state.edit);
  const terms = event.terms ?? NO_TERMS;
  const set = (label: string, change: Partial<ShopTerms>) =>
    void edit('events', event.id, label, (old) => ({ ...old, terms: { ...terms, ...change } }));
  const money = { unit: event.currency, decimals: decimalsOf(event.currency), least: 0, most: MOST_MINOR };
  return (
    <Opening head={words.terms}>
      <p className="soft">{words.termsWhy}</p>
      <div className="terms-form">
        <NumberField
          {...money}
          label={words.minimum}
          value={terms.minimumMinor}
          onChange={(minimumMinor) => set(words.minimum, { minimumMinor })}
        />
        <NumberField
          {...money}
          label={words.shippingCost}
          value={terms.shippingMinor}
          onChange={(shippingMinor) => set(words.shippingCost, { shippingMinor })}
        />
        <NumberField
          {...money}
          label={words.freeShipping}
          help={words.freeShippingHelp}
          value={terms.freeShippingFromMinor ?? 0}
          onChange={(from) => set(words.freeShipping, { freeShippingFromMinor: from === 0 ? null : from })}
        />
        <NumberField
          label={words.taxRate}
          unit="%"
          decimals={2}
          least={0}
          most={10_000}
          value={terms.taxHundredths}
          onChange={(taxHundredths) => set(words.taxRate, { taxHundredths })}
        />
      </div>
      {terms.discounts.map((discount, place) => (
        <DiscountRow
          // biome-ignore lint/suspicious/noArrayIndexKey: discounts have no names, and keep their order
          key={place}
          discount={discount}
          money={money}
          onChange={(label, change) =>
            set(label, {
              discounts: terms.discounts.map((old, at) => (at === place ? { ...old, ...change } : old)),
            })
          }
          onRemove={() =>
            set(words.removeDiscount, { discounts: terms.discounts.filter((_, at) => at !== place) })
          }
        />
      ))}
      {terms.discounts.length < MOST_DISCOUNTS && (
        <Button
          tone="quiet"
          icon={<Plus aria-hidden="true" />}
          onClick={() =>
            set(words.addDiscount, { discounts: [...terms.discounts, { fromMinor: 0, percent: 0 }] })
          }
        >
          {words.addDiscount}
        </Button>
      )}
    </Opening>
  );
}

type Discount = ShopTerms['discounts'][number];

interface DiscountRowProps {
  readonly discount: Discount;
  readonly money: Pick<ComponentProps<typeof NumberField>, 'unit' | 'decimals' | 'least' | 'most'>;
  readonly onChange: (label: string, change: Partial<Discount>) => void;
  readonly onRemove: () => void;
}

/** From so much on, so much off. */
function DiscountRow({ discount, money, onChange, onRemove }: DiscountRowProps) {
  const words = usePageWords().buying;
  return (
    <div className="discount-row">
      <NumberField
        {...money}
        label={words.discountFrom}
        value={discount.fromMinor}
        onChange={(fromMinor) => onChange(words.discountFrom, { fromMinor })}
      />
      <NumberField
        label={words.discountPercent}
        unit="%"
        least={0}
        most={100}
        value={discount.percent}
        onChange={(percent) => onChange(words.discountPercent, { percent })}
      />
      <IconButton label={words.removeDiscount} icon={<Trash2 />} onClick={onRemove} />
    </div>
  );
}
