import type { Recipe } from '../../../shared/workbook';
import { styleById } from '../../core/styles';
import type { Ticks } from '../../core/units';
import type { MarksInSight, StyleRows } from '../../state/results/fit-result';
import { Button } from '../../ui/fields/button';
import { useRuler } from '../../ui/fields/measure';
import { usePageWords, useSay } from '../../ui/words';
import type { MarksEdits } from './marks-edits';
import { costWords, sizesWords } from './row-words';

interface CompareStylesProps {
  readonly recipe: Recipe;
  readonly edits: MarksEdits;
  readonly need: readonly [Ticks, Ticks, Ticks];
  readonly sheet: string;
  readonly marks: MarksInSight;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
}

/** The same room in every other style, as they come in; the search can be stopped. */
export function CompareStyles({ recipe, edits, need, sheet, marks, open, onOpen }: CompareStylesProps) {
  const words = usePageWords().marks;
  const say = useSay();
  const ruler = useRuler();
  if (!open)
    return (
      <section className="marks-compare">
        <Button onClick={() => onOpen(true)}>{words.compare}</Button>
        <p className="soft">{words.compareWhy}</p>
      </section>
    );
  const running = marks.done < marks.of;
  return (
    <section className="marks-compare" aria-labelledby="marks-compare-head" aria-busy={running}>
      <h2 id="marks-compare-head">{words.compare}</h2>
      <div className="marks-progress">
        <progress aria-label={words.comparing} max={Math.max(1, marks.of)} value={marks.done} />
        <span role="status">{words.doneOf(marks.done, marks.of)}</span>
        {running && <Button onClick={marks.stop}>{words.stop}</Button>}
      </div>
      <div className="marks-table">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.style}</th>
              <th scope="col">{words.sizes}</th>
              <th scope="col">{words.roughness}</th>
              <th scope="col">{words.costs}</th>
              <th scope="col">{words.use}</th>
            </tr>
          </thead>
          <tbody>
            {[...marks.found].sort(byBest).map((found) => {
              const row = bestOf(found);
              const name = say(styleById(found.styleId)?.name ?? found.styleId);
              return (
                <tr key={found.styleId}>
                  <th scope="row">{name}</th>
                  <td>{row ? sizesWords(found.styleId, row, ruler) : words.cannot}</td>
                  <td className="marks-number">{row?.roughness ?? ''}</td>
                  <td>{row ? costWords(row, need, sheet, ruler, words) : ''}</td>
                  <td>
                    {row && found.styleId !== recipe.styleId && (
                      <Button
                        onClick={() => {
                          onOpen(false);
                          edits.use(found.styleId, row);
                        }}
                      >
                        {words.takeStyle}
                        <span className="said-only"> {name}</span>
                      </Button>
                    )}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </section>
  );
}

/** The easiest row that fits the sheet, or the easiest of all. */
const bestOf = ({ rows }: StyleRows) => rows.find(({ sheetsPerBox }) => sheetsPerBox !== null) ?? rows[0];

/** Styles that fit the sheet first, then the easiest; those without a row last. */
function byBest(a: StyleRows, b: StyleRows): number {
  const rank = (found: StyleRows): number => {
    const row = bestOf(found);
    return row ? (row.sheetsPerBox === null ? 1000 : 0) + row.roughness : 2000;
  };
  return rank(a) - rank(b);
}
