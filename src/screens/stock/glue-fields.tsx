import type { GlueSupply } from '../../../shared/workbook';
import { useWorkbook } from '../../state/use-workbook';
import { CountStepper } from '../../ui/fields/count-stepper';
import { NumberField } from '../../ui/fields/number-field';
import { useWords } from '../../ui/words';

/** Numbers of a glue: how each is asked for. */
const NUMBERS = [
  { name: 'bottleGrams', unit: 'g', least: 1, most: 10_000, decimals: 0 },
  { name: 'gramsPerSquareMetre', unit: 'g/m²', least: 1, most: 1000, decimals: 0 },
  { name: 'pressMinutes', unit: 'min', least: 0, most: 1440, decimals: 0 },
  { name: 'dryMinutes', unit: 'min', least: 0, most: 10_080, decimals: 0 },
  { name: 'priceMinor', unit: '', least: 0, most: 100_000_000, decimals: 2 },
] as const;

/** Liquid glue: the bottle, how thick it is spread, how long it is held and left to dry. */
export function GlueFields({ supply }: { supply: GlueSupply }) {
  const words = useWords().stock;
  const edit = useWorkbook((state) => state.edit);
  const set = (label: string, change: Partial<GlueSupply>) =>
    void edit('supplies', supply.id, label, (old) => ({ ...old, ...change }) as GlueSupply);
  return (
    <>
      {NUMBERS.map(({ name, unit, least, most, decimals }) => (
        <NumberField
          key={name}
          label={words.glue[name]}
          {...(unit === '' ? {} : { unit })}
          {...(name === 'gramsPerSquareMetre' ? { help: words.spreadHelp } : {})}
          value={supply[name]}
          least={least}
          most={most}
          decimals={decimals}
          onChange={(value) => set(words.glue[name], { [name]: value })}
        />
      ))}
      <div className="field">
        <span className="field-name">{words.glue.onHandBottles}</span>
        <CountStepper
          label={words.glue.onHandBottles}
          value={supply.onHandBottles}
          onChange={(onHandBottles) => set(words.glue.onHandBottles, { onHandBottles })}
        />
      </div>
    </>
  );
}
