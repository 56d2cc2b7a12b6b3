import type { RollSupply } from '../../../shared/workbook';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { type Ticks, ticks } from '../../core/units';
import { useWorkbook } from '../../state/use-workbook';
import { CountStepper } from '../../ui/fields/count-stepper';
import { LengthField } from '../../ui/fields/length-field';
import { useRuler } from '../../ui/fields/measure';
import { NumberField } from '../../ui/fields/number-field';
import { useWords } from '../../ui/words';
import { OfferFields, withOffer } from './offer-fields';

/** Rolls are sold by the yard or the meter. source: 1 yd = 914.4 mm by definition. */
const ROLL_UNIT = { in: { name: 'yd', mm: 914.4 }, mm: { name: 'm', mm: 1000 } } as const;

/** Tape, ribbon or twine: how wide, how long a roll, what it costs, and how many lie in the drawer. */
export function RollFields({ supply }: { supply: RollSupply }) {
  const words = useWords().stock;
  const { unit } = useRuler();
  const edit = useWorkbook((state) => state.edit);
  const set = (label: string, change: Partial<RollSupply>) =>
    void edit('supplies', supply.id, label, (old) => ({ ...old, ...change }) as RollSupply);
  const roll = ROLL_UNIT[unit];
  const widest: Ticks = ticks(320 * 200);
  return (
    <>
      <LengthField
        label={words.width}
        value={ticksOfMm(supply.widthMm)}
        least={ticks(320)}
        most={widest}
        onChange={(length) => set(words.width, { widthMm: mmOfTicks(length) })}
      />
      <NumberField
        label={words.rollLength}
        unit={roll.name}
        decimals={2}
        value={Math.round((supply.rollMm * 100) / roll.mm)}
        least={1}
        most={100_000}
        onChange={(hundredths) => set(words.rollLength, { rollMm: Math.round(hundredths * roll.mm) / 100 })}
      />
      <NumberField
        label={words.rollPrice}
        decimals={2}
        value={supply.priceMinor}
        least={0}
        most={100_000_000}
        onChange={(priceMinor) => set(words.rollPrice, { priceMinor })}
      />
      <OfferFields
        offer={supply.offer}
        onChange={(offer) =>
          void edit('supplies', supply.id, words.offer, (old) =>
            'rollMm' in old ? withOffer(old, offer) : old,
          )
        }
      />
      <NumberField
        label={words.waste}
        help={words.wasteHelp}
        unit="%"
        value={supply.wastePercent ?? 0}
        least={0}
        most={50}
        onChange={(wastePercent) => set(words.waste, { wastePercent })}
      />
      <div className="field">
        <span className="field-name">{words.rollsOnHand}</span>
        <CountStepper
          label={words.rollsOnHand}
          value={supply.onHandRolls}
          onChange={(onHandRolls) => set(words.rollsOnHand, { onHandRolls })}
        />
      </div>
    </>
  );
}
