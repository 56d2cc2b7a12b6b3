import { useMemo, useState } from 'react';
import { SHEETS } from '../../../shared/catalogue';
import type { FavorEvent } from '../../../shared/workbook';
import { type EventPlan, printMoney } from '../../core/plan';
import { inches, millimetres, type Ticks } from '../../core/units';
import { boxOfRecipe } from '../../state/results/box-result';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { paperMoney, useWhatIf, type WhatIf, wholeSheets } from '../../state/results/what-if';
import { useWorkbook } from '../../state/use-workbook';
import { LengthField } from '../../ui/fields/length-field';
import { useRuler } from '../../ui/fields/measure';
import { SelectField } from '../../ui/fields/text-field';
import { classNames } from '../../ui/frame/class-names';
import { usePageWords, useSay } from '../../ui/words';

type Asked = 'nothing' | WhatIf['change'] | 'unsquared';

const STEP = { in: inches(0, 1, 8), mm: millimetres(3) } as const; // our own: what a maker would try first
const MOST_STEP = millimetres(200);
const FAMILIES: readonly string[] = ['North American', 'ISO A', 'craft', 'press'];

/** What if a size were smaller, the sheets squared or not, or of another size: the difference in sheets and money, at once. */
export function WhatIfPanel({ event, plan }: { event: FavorEvent; plan: EventPlan }) {
  const all = usePageWords();
  const words = all.sheets;
  const say = useSay();
  const { unit } = useRuler();
  const papers = useWorkbook((state) => state.rows.papers);
  const sizes = useSizes(event);
  const [asked, setAsked] = useState<Asked>('nothing');
  const [size, setSize] = useState('');
  const [by, setBy] = useState<Ticks>(STEP[unit]);
  const [margin, setMargin] = useState<Ticks>(STEP[unit]);
  const [sheet, setSheet] = useState(unit === 'in' ? 'square-12' : 'a3');
  const chosen = sizes.find(({ id }) => id === size) ?? sizes[0];

  const what = useMemo((): WhatIf | null => {
    const other = SHEETS.find(({ id }) => id === sheet);
    if (asked === 'smaller' && chosen)
      return { change: 'smaller', recipeId: chosen.recipeId, symbol: chosen.symbol, by };
    if (asked === 'unsquared') return { change: 'squaring', margin: inches(0) };
    if (asked === 'squaring') return { change: 'squaring', margin };
    if (asked === 'sheet' && other) return { change: 'sheet', across: other.across, up: other.up };
    return null;
  }, [asked, chosen, by, margin, sheet]);
  const answer = useWhatIf(event.id, what);
  const choices: readonly { readonly id: Asked; readonly label: string }[] = [
    { id: 'nothing', label: words.ifNothing },
    ...(sizes.length > 0 ? [{ id: 'smaller' as const, label: words.ifSmaller }] : []),
    { id: 'unsquared', label: words.ifUnsquared },
    { id: 'squaring', label: words.ifSquared },
    { id: 'sheet', label: words.ifSheet },
  ];
  return (
    <section className="what-if screen-only" aria-labelledby="what-if-head">
      <h2 id="what-if-head">{words.whatIf}</h2>
      <p className="soft">{words.whatIfWhy}</p>
      <div className="what-if-asks">
        <SelectField
          label={words.ifWhat}
          value={asked}
          choices={choices}
          onChange={(id) => setAsked(id as Asked)}
        />
        {asked === 'smaller' && (
          <>
            <SelectField
              label={words.whichSize}
              value={chosen?.id ?? ''}
              choices={sizes}
              onChange={setSize}
            />
            <LengthField
              label={words.smallerBy}
              help={words.smallerHelp}
              value={by}
              least={millimetres(0.1)}
              most={MOST_STEP}
              onChange={setBy}
            />
          </>
        )}
        {asked === 'squaring' && (
          <LengthField
            label={words.squareBy}
            help={words.squareHelp}
            value={margin}
            least={millimetres(0.1)}
            most={MOST_STEP}
            onChange={setMargin}
          />
        )}
        {asked === 'sheet' && (
          <SelectField
            label={words.whichSheet}
            value={sheet}
            choices={SHEETS.filter(({ family }) => FAMILIES.includes(family)).map(({ id, name }) => ({
              id,
              label: say(name),
            }))}
            onChange={setSheet}
          />
        )}
      </div>
      {what !== null && (
        <div
          className={classNames('what-if-answer', answer.stale && 'is-stale')}
          role="status"
          aria-busy={answer.stale}
        >
          {answer.plan === null ? (
            <p className="soft">{words.working}</p>
          ) : (
            <Difference now={plan} then={answer.plan} event={event} papers={papers} />
          )}
        </div>
      )}
    </section>
  );
}

function Difference({
  now,
  then,
  event,
  papers,
}: {
  now: EventPlan;
  then: EventPlan;
  event: FavorEvent;
  papers: Parameters<typeof wholeSheets>[1];
}) {
  const { sheets: words, locale } = usePageWords();
  const money = (minor: number) => printMoney(minor, event.currency, locale);
  const [before, after] = [paperMoney(now), paperMoney(then)];
  const missing = then.papers.some(({ plan }) => plan.unplaced.length > 0);
  return (
    <>
      <p>
        <strong>{words.sheetsDiffer(wholeSheets(now, papers), wholeSheets(then, papers))}</strong>
        {missing && ` ${words.doesNotFit}`}
      </p>
      <p>
        {before === null || after === null
          ? words.moneyUnknown
          : words.moneyDiffers(money(before), money(after), money(Math.abs(after - before)), after > before)}
      </p>
    </>
  );
}

/** Every size of every recipe of the event, by name. */
function useSizes(event: FavorEvent) {
  const recipes = useWorkbook((state) => state.rows.recipes);
  const tool = useToolInHand();
  const say = useSay();
  return useMemo(() => {
    const ids = [...new Set(event.lines.map(({ recipeId }) => recipeId))];
    return ids.flatMap((recipeId) => {
      const recipe = recipes.get(recipeId);
      const box = recipe && boxOfRecipe(recipe, tool);
      return Object.entries(box?.style.symbols ?? {}).flatMap(([symbol, { role, label }]) =>
        role === 'size'
          ? [
              {
                id: `${recipeId} ${symbol}`,
                recipeId,
                symbol,
                label: ids.length > 1 ? `${recipe?.name}: ${say(label)}` : say(label),
              },
            ]
          : [],
      );
    });
  }, [event, recipes, tool, say]);
}
