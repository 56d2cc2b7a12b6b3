import { useState } from 'react';
import { Link } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { type EasyRow, isTrade, threeRows } from '../../core/fit';
import { mmOfTicks } from '../../core/rows/lengths';
import type { Ticks } from '../../core/units';
import type { StyleRows } from '../../state/results/fit-result';
import { Button } from '../../ui/fields/button';
import { useRuler } from '../../ui/fields/measure';
import { classNames } from '../../ui/frame/class-names';
import { Opening } from '../../ui/frame/opening';
import { usePageWords, useSay } from '../../ui/words';
import { type BoxInHand, EasyCards } from './easy-cards';
import type { MarksEdits } from './marks-edits';
import { MarksPlot } from './marks-plot';
import { apartWords, costWords, paperWords, sizesWords } from './row-words';
import { WhyRow } from './why-row';

interface FoundRowsProps {
  readonly hand: BoxInHand;
  /** Where the maker goes on with the sizes that were taken. */
  readonly next: string;
  readonly recipe: Recipe;
  readonly edits: MarksEdits;
  readonly need: readonly [Ticks, Ticks, Ticks];
  readonly sheet: string;
  readonly found: StyleRows | undefined;
  readonly stale: boolean;
}

/** The rows nothing beats: three as cards, and all as a table, with a plot where paper is traded for ease; pressing either takes its sizes as one step that can be undone. */
export function FoundRows({ recipe, edits, need, sheet, found, stale, hand, next }: FoundRowsProps) {
  const words = usePageWords().marks;
  const ruler = useRuler();
  const [lit, setLit] = useState<number | null>(null);
  const rows = found?.rows ?? [];
  const use = (row: EasyRow) => void edits.use(found?.styleId ?? recipe.styleId, row);
  if (!found) return <p role="status">{words.searching}</p>;
  if (rows.length === 0) return null;
  const points = rows.map((row) => ({
    row,
    label: words.point(
      sizesWords(found.styleId, row, ruler),
      row.roughness,
      paperWords(row, need, sheet, words),
    ),
    inUse: isInUse(recipe, found.styleId, row),
  }));
  return (
    <section className={classNames('marks-rows', stale && 'is-stale')} aria-labelledby="marks-rows-head">
      <h2 id="marks-rows-head">{words.rows}</h2>
      <EasyCards
        chosen={threeRows(rows)}
        hand={hand}
        need={need}
        sheet={sheet}
        inUse={(row) => isInUse(recipe, found.styleId, row)}
        onUse={use}
      />
      <Link className="button button-act easy-go-on" to={next}>
        {words.cards.goOn}
      </Link>
      <Opening head={words.allRows(rows.length)}>
        {isTrade(rows) && <MarksPlot points={points} lit={lit} onLight={setLit} onTake={use} />}
        <RowTable {...{ points, lit, need, sheet }} styleId={found.styleId} onLight={setLit} onUse={use} />
      </Opening>
    </section>
  );
}

interface RowTableProps extends Pick<FoundRowsProps, 'need' | 'sheet'> {
  readonly points: readonly { readonly row: EasyRow; readonly inUse: boolean }[];
  readonly styleId: string;
  readonly lit: number | null;
  readonly onLight: (row: number | null) => void;
  readonly onUse: (row: EasyRow) => void;
}

/** Every row with its sizes, how easy it is, and what it costs. */
function RowTable({ points, styleId, lit, need, sheet, onLight, onUse }: RowTableProps) {
  const words = usePageWords().marks;
  const say = useSay();
  const ruler = useRuler();
  const apart = apartWords(
    styleId,
    points.map(({ row }) => row),
    ruler,
    say,
  );
  return (
    <div className="marks-table">
      <table>
        <thead>
          <tr>
            <th scope="col">{words.sizes}</th>
            <th scope="col">{words.roughness}</th>
            <th scope="col">{words.costs}</th>
            <th scope="col">{words.use}</th>
          </tr>
        </thead>
        <tbody>
          {points.map(({ row, inUse }, i) => (
            <tr
              key={`${Object.values(row.sizes).join(' ')} ${Object.values(row.options).join(' ')}`}
              className={classNames(lit === i && 'marks-lit', inUse && 'marks-in-use')}
              onPointerEnter={() => onLight(i)}
              onPointerLeave={() => onLight(null)}
            >
              <th scope="row">
                {sizesWords(styleId, row, ruler)}
                {apart[i] && <span className="marks-apart">{apart[i]}</span>}
              </th>
              <td className="marks-number">{row.roughness}</td>
              <td>
                {costWords(row, need, sheet, ruler, words)}
                <Opening head={words.why}>
                  <WhyRow row={row} need={need} styleId={styleId} />
                </Opening>
              </td>
              <td>
                {inUse ? (
                  words.inUse
                ) : (
                  <Button onClick={() => onUse(row)} onFocus={() => onLight(i)} onBlur={() => onLight(null)}>
                    {words.use}
                    <span className="said-only"> {sizesWords(styleId, row, ruler)}</span>
                  </Button>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** Whether the recipe already has the row's sizes and construction. */
const isInUse = (recipe: Recipe, styleId: string, row: EasyRow): boolean =>
  recipe.styleId === styleId &&
  Object.entries(row.sizes).every(([name, size]) => size === 0 || recipe.sizesMm[name] === mmOfTicks(size)) &&
  Object.entries(row.options).every(([name, choice]) => recipe.options[name] === choice);
