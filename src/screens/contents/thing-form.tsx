import { X } from 'lucide-react';
import { ITEMS } from '../../../shared/catalogue/items';
import { type CareFlag, careFlag, type Item } from '../../core/rows/contents';
import { allergen } from '../../core/rows/guests';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { readGrams, ticks } from '../../core/units';
import { IconButton } from '../../ui/fields/button';
import { CountStepper } from '../../ui/fields/count-stepper';
import { LengthField } from '../../ui/fields/length-field';
import { NumberField } from '../../ui/fields/number-field';
import { TextField } from '../../ui/fields/text-field';
import { Opening } from '../../ui/frame/opening';
import { usePageWords, useSay } from '../../ui/words';
import type { ContentsEdits } from './contents-edits';
import { saidSource } from './said-source';
import { ShapeFields } from './shape-fields';

interface ThingFormProps {
  readonly item: Item;
  readonly edits: ContentsEdits;
  /** The only thing there is stands open. */
  readonly alone: boolean;
}

/** One thing: how many of it in sight, everything else behind a line that opens. */
export function ThingForm({ item, edits, alone }: ThingFormProps) {
  const words = usePageWords().contents;
  const say = useSay();
  const listed = ITEMS.find(({ name }) => name === item.name);
  const set = (label: string, to: Partial<Item>) => void edits.setItem(item.id, label, to);
  return (
    <li className="thing">
      <div className="thing-head">
        <strong>{item.name}</strong>
        <IconButton
          label={words.removeOf(item.name)}
          icon={<X />}
          onClick={() => edits.removeItem(item.id)}
        />
      </div>
      <div className="thing-count">
        <span>{words.howMany}</span>
        <CountStepper
          label={words.howMany}
          value={item.count}
          least={1}
          most={500}
          onChange={(count) => set(words.howMany, { count })}
        />
      </div>
      {listed && (
        <p className="caption">
          {listed.measure && `${words.measureYours} `}
          {saidSource(listed.source, words, say)}
        </p>
      )}
      <Opening head={words.editOf(item.name)} open={alone && !listed}>
        <div className="thing-fields">
          <TextField label={words.name} value={item.name} onChange={(name) => set(words.name, { name })} />
          <ShapeFields size={item.size} onChange={(size, label) => set(label, { size })} />
          <LengthField
            label={words.wrap}
            help={words.wrapHelp}
            value={ticksOfMm(item.wrapMm)}
            least={ticks(0)}
            onChange={(length) => set(words.wrap, { wrapMm: mmOfTicks(length) })}
          />
          <LengthField
            label={words.aboveRim}
            help={words.aboveRimHelp}
            value={ticksOfMm(item.aboveRimMm)}
            least={ticks(0)}
            most={tallest(item)}
            onChange={(length) => set(words.aboveRim, { aboveRimMm: mmOfTicks(length) })}
          />
          <CareOf item={item} edits={edits} />
          <NumberField
            label={words.grams}
            help={<p>{words.gramsHelp}</p>}
            unit="g"
            value={item.gramsEach ?? 0}
            least={0}
            most={100_000}
            read={readGrams}
            refusal={words.gramsRefused}
            onChange={(grams) => set(words.grams, { gramsEach: grams === 0 ? null : grams })}
          />
        </div>
      </Opening>
    </li>
  );
}

/** How a thing lies and what it needs: fragile, food, allergens. */
function CareOf({ item, edits }: Pick<ThingFormProps, 'item' | 'edits'>) {
  const words = usePageWords().contents;
  const say = useSay();
  const set = (label: string, to: Partial<Item>) => void edits.setItem(item.id, label, to);
  const flag = (on: boolean, care: CareFlag) =>
    set(words.care, { care: on ? [...item.care, care] : item.care.filter((one) => one !== care) });
  return (
    <>
      <Ticked
        legend={words.manner}
        of={[
          {
            label: words.thisWayUp,
            on: item.thisWayUp,
            set: (thisWayUp) => set(words.manner, { thisWayUp }),
          },
          { label: words.fragile, on: item.fragile, set: (fragile) => set(words.manner, { fragile }) },
        ]}
      />
      <Ticked
        legend={words.care}
        of={careFlag.options.map((care) => ({
          label: words.cares[care],
          on: item.care.includes(care),
          set: (on) => flag(on, care),
        }))}
      />
      {item.care.some((care) => FOOD.has(care)) && (
        <Ticked
          legend={words.allergens}
          of={[
            ...allergen.options.map((each) => ({
              label: say(each),
              on: item.allergens?.includes(each) ?? false,
              set: (on: boolean) =>
                set(words.allergens, {
                  allergens: [
                    ...(item.allergens ?? []).filter((other) => other !== each),
                    ...(on ? [each] : []),
                  ],
                }),
            })),
            {
              label: words.noAllergens,
              on: item.allergens?.length === 0,
              set: (on: boolean) =>
                on ? set(words.allergens, { allergens: [] }) : edits.forgetLabel(item.id),
            },
          ]}
        />
      )}
    </>
  );
}

/** What is eaten. */
const FOOD: ReadonlySet<CareFlag> = new Set(['food', 'allergens', 'choking-food']);

/** A thing cannot stand out above the rim by all of itself. */
const tallest = ({ size }: Item) =>
  ticks(ticksOfMm('heightMm' in size ? size.heightMm : size.diameterMm) - ticksOfMm(0.1));

interface TickedProps {
  readonly legend: string;
  readonly of: readonly {
    readonly label: string;
    readonly on: boolean;
    readonly set: (on: boolean) => void;
  }[];
}

/** Things that may be so or not, side by side. */
function Ticked({ legend, of }: TickedProps) {
  return (
    <fieldset className="ticked">
      <legend>{legend}</legend>
      {of.map(({ label, on, set }) => (
        <label key={label}>
          <input type="checkbox" checked={on} onChange={(event) => set(event.target.checked)} />
          {label}
        </label>
      ))}
    </fieldset>
  );
}
