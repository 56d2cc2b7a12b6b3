import { memo, useCallback, useMemo } from 'react';
import type { Recipe } from '../../../shared/workbook';
import {
  type BoxStyle,
  evaluateForm,
  formOf,
  optionsFor,
  type SymbolSpec,
  symbolsFor,
} from '../../core/styles';
import type { Ticks } from '../../core/units';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { LengthField } from '../../ui/fields/length-field';
import type { SizesTogether } from '../../ui/fields/typed-length';
import { Opening } from '../../ui/frame/opening';
import { usePageWords, useSay } from '../../ui/words';
import { PaperChoice } from './paper-choice';
import type { RecipeEdits } from './recipe-edits';
import { StyleChoice } from './style-choice';

interface RecipeFormProps {
  readonly recipe: Recipe;
  /** The recipe as it was when the page last came to rest, for what shows none of its sizes. */
  readonly rested: Recipe;
  readonly style: BoxStyle;
  readonly values: Readonly<Record<string, Ticks>>;
  readonly edits: RecipeEdits;
  /** The size a finding points at. */
  readonly litSize: string | null;
}

/** The option whose choices ask for a size, by the style's own word; it stands under that option. */
const optionOf = ({ given = [] }: SymbolSpec) => Object.keys(given[0] ?? {})[0];
const isMainSize = (symbol: SymbolSpec) => symbol.role === 'size' && optionOf(symbol) === undefined;
const limit = (text: string): Ticks => evaluateForm(formOf(text), {});

/** What goes into a box: style, sizes, paper; the working dimensions and the way of working behind a line that opens. */
export function RecipeForm({ recipe, rested, style, values, edits, litSize }: RecipeFormProps) {
  const words = usePageWords().box;
  const say = useSay();
  const asked = useMemo(() => symbolsFor(style, recipe.options), [style, recipe.options]);
  const together = useSizesTogether(asked, values, edits);
  const fields = (belongs: (symbol: SymbolSpec) => boolean) =>
    asked
      .filter(([, symbol]) => belongs(symbol))
      .map(([name, symbol]) => (
        <SizeField
          key={name}
          name={name}
          symbol={symbol}
          value={values[name]}
          lit={litSize === name}
          edits={edits}
          together={isMainSize(symbol) ? together : undefined}
        />
      ));
  const options = optionsFor(style, recipe.options);
  const lit = litSize === null ? undefined : style.symbols[litSize];
  const litOption = lit && optionOf(lit);
  const needsAllowances = lit?.role === 'allowance' && litOption === undefined;

  return (
    <form className="recipe-form" onSubmit={(event) => event.preventDefault()}>
      <StyleChoice current={style} recipe={rested} onChoose={edits.setStyle} />
      {fields(isMainSize)}
      <PaperChoice paperId={recipe.paperId} caliperUm={recipe.caliperUm} edits={edits} />
      {options.length > 0 && (
        <Opening head={words.construction} open={litOption !== undefined}>
          <div className="recipe-form-inner">
            {options.map(([name, option]) => (
              <div key={name} className="recipe-option">
                <ChoiceStrip
                  named
                  label={say(option.label)}
                  value={recipe.options[name] ?? option.choices[0]?.id ?? ''}
                  choices={option.choices.map(({ id, label }) => ({ id, label: say(label) }))}
                  onChange={(choice) => edits.setOption(name, choice, say(option.label))}
                />
                <p className="field-note">{say(option.help)}</p>
                {fields((symbol) => optionOf(symbol) === name)}
              </div>
            ))}
          </div>
        </Opening>
      )}
      <Opening head={words.workingDimensions} open={needsAllowances}>
        <div className="recipe-form-inner">
          {fields((symbol) => symbol.role === 'allowance' && optionOf(symbol) === undefined)}
          <ChoiceStrip
            named
            label={words.faceUp}
            value={recipe.faceUp}
            choices={[
              { id: 'inside', label: words.faceInside },
              { id: 'outside', label: words.faceOutside },
            ]}
            onChange={edits.setFaceUp}
          />
          <ChoiceStrip
            named
            label={words.grain}
            value={recipe.grain}
            choices={[
              { id: 'upright', label: words.grainUpright },
              { id: 'around', label: words.grainAround },
              { id: 'free', label: words.grainFree },
            ]}
            onChange={edits.setGrain}
          />
        </div>
      </Opening>
    </form>
  );
}

/** The main sizes of a style, in the order shown, that one paste may fill. */
function useSizesTogether(
  asked: ReturnType<typeof symbolsFor>,
  values: RecipeFormProps['values'],
  edits: RecipeEdits,
): SizesTogether {
  const say = useSay();
  return useMemo(() => {
    const sizes = asked.filter(([, symbol]) => isMainSize(symbol));
    return {
      fields: sizes.map(([name, { label, min, max }]) => ({
        label: say(label),
        value: values[name] ?? limit(min),
        least: limit(min),
        most: limit(max),
      })),
      onAll: (lengths: readonly Ticks[]) =>
        void edits.setSizes(
          Object.fromEntries(sizes.flatMap(([name], i) => (lengths[i] ? [[name, lengths[i]]] : []))),
        ),
    };
  }, [asked, values, say, edits]);
}

interface SizeFieldProps {
  readonly name: string;
  readonly symbol: SymbolSpec;
  readonly value: Ticks | undefined;
  readonly lit: boolean;
  readonly edits: RecipeEdits;
  readonly together: SizesTogether | undefined;
}

/** One size; drawn again when it changes itself, or another it is pasted with. */
const SizeField = memo(function SizeField({ name, symbol, value, lit, edits, together }: SizeFieldProps) {
  const say = useSay();
  const label = say(symbol.label);
  const least = limit(symbol.min);
  const set = useCallback((length: Ticks) => edits.setSize(name, length, label), [edits, name, label]);
  return (
    <LengthField
      label={label}
      help={symbol.help && say(symbol.help)}
      value={value ?? least}
      least={least}
      most={limit(symbol.max)}
      lit={lit}
      together={together}
      onChange={set}
    />
  );
});
