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

/** Everything that can be asked; what the chosen question has no use for stays as it was. */
interface Asking {
  readonly what: Asked;
  readonly size: string;
  readonly by: Ticks;
  readonly margin: Ticks;
  readonly sheet: string;
}

type NamedSize = ReturnType<typeof useSizes>[number];

const STEP = { in: inches(0, 1, 8), mm: millimetres(3) } as const; // our own: what a maker would try first
const MOST_STEP = millimetres(200);
const FAMILIES: readonly string[] = ['North American', 'ISO A', 'craft', 'press'];

/** What if a size were smaller, the sheets squared or not, or of another size: the difference in sheets and money, at once. */
export function WhatIfPanel({ event, plan }: { event: FavorEvent; plan: EventPlan }) {
  const words = usePageWords().sheets;
  const { unit } = useRuler();
  const papers = useWorkbook((state) => state.rows.papers);
  const sizes = useSizes(event);
  const [asked, setAsked] = useState<Asking>(() => ({
    what: 'nothing',
    size: '',
    by: STEP[unit],
    margin: STEP[unit],
    sheet: unit === 'in' ? 'square-12' : 'a3',
  }));
  const what = useMemo(() => whatOf(asked, sizes), [asked, sizes]);
  const answer = useWhatIf(event.id, what);
  return (
    <section className="what-if screen-only" aria-labelledby="what-if-head">
      <h2 id="what-if-head">{words.whatIf}</h2>
      <p className="soft">{words.whatIfWhy}</p>
      <div className="what-if-asks">
        <Asks asked={asked} sizes={sizes} onAsk={(change) => setAsked((old) => ({ ...old, ...change }))} />
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

const sizeOf = ({ size }: Asking, sizes: readonly NamedSize[]): NamedSize | undefined =>
  sizes.find(({ id }) => id === size) ?? sizes[0];

/** The question, where it is complete. */
function whatOf(asked: Asking, sizes: readonly NamedSize[]): WhatIf | null {
  const { what, by, margin, sheet } = asked;
  const chosen = sizeOf(asked, sizes);
  const other = SHEETS.find(({ id }) => id === sheet);
  if (what === 'smaller' && chosen)
    return { change: 'smaller', recipeId: chosen.recipeId, symbol: chosen.symbol, by };
  if (what === 'unsquared') return { change: 'squaring', margin: inches(0) };
  if (what === 'squaring') return { change: 'squaring', margin };
  if (what === 'sheet' && other) return { change: 'sheet', across: other.across, up: other.up };
  return null;
}

interface AsksProps {
  readonly asked: Asking;
  readonly sizes: readonly NamedSize[];
  readonly onAsk: (change: Partial<Asking>) => void;
}

/** What is changed, and by how much. */
function Asks({ asked, sizes, onAsk }: AsksProps) {
  const words = usePageWords().sheets;
  const say = useSay();
  const choices: readonly { readonly id: Asked; readonly label: string }[] = [
    { id: 'nothing', label: words.ifNothing },
    ...(sizes.length > 0 ? [{ id: 'smaller' as const, label: words.ifSmaller }] : []),
    { id: 'unsquared', label: words.ifUnsquared },
    { id: 'squaring', label: words.ifSquared },
    { id: 'sheet', label: words.ifSheet },
  ];
  return (
    <>
      <SelectField
        label={words.ifWhat}
        value={asked.what}
        choices={choices}
        onChange={(id) => onAsk({ what: id as Asked })}
      />
      {asked.what === 'smaller' && (
        <>
          <SelectField
            label={words.whichSize}
            value={sizeOf(asked, sizes)?.id ?? ''}
            choices={sizes}
            onChange={(size) => onAsk({ size })}
          />
          <LengthField
            label={words.smallerBy}
            help={words.smallerHelp}
            value={asked.by}
            least={millimetres(0.1)}
            most={MOST_STEP}
            onChange={(by) => onAsk({ by })}
          />
        </>
      )}
      {asked.what === 'squaring' && (
        <LengthField
          label={words.squareBy}
          help={words.squareHelp}
          value={asked.margin}
          least={millimetres(0.1)}
          most={MOST_STEP}
          onChange={(margin) => onAsk({ margin })}
        />
      )}
      {asked.what === 'sheet' && (
        <SelectField
          label={words.whichSheet}
          value={asked.sheet}
          choices={SHEETS.filter(({ family }) => FAMILIES.includes(family)).map(({ id, name }) => ({
            id,
            label: say(name),
          }))}
          onChange={(sheet) => onAsk({ sheet })}
        />
      )}
    </>
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
