import type { PlannedPaper } from '../../core/plan';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { inches, millimetres } from '../../core/units';
import { offcutsOf, shelvedOffcut, useShelveOffcuts } from '../../state/intents/offcuts';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { LengthField } from '../../ui/fields/length-field';
import { sizeWords, useRuler } from '../../ui/fields/measure';
import { usePageWords } from '../../ui/words';

/** Narrowest strip that is worth keeping, unless the maker says otherwise. source: common practice, no source */
const USUAL_LEAST = { in: inches(1, 1, 2), mm: millimetres(40) } as const;

/** What is left of one paper, size by size, each to be put on the shelf. */
export function OffcutList({ planned }: { planned: PlannedPaper }) {
  const words = usePageWords().sheets;
  const ruler = useRuler();
  const { papers } = useWorkbook((state) => state.rows);
  const { usableOffcutMm } = useWorkbook((state) => state.settings);
  const changeSettings = useWorkbook((state) => state.changeSettings);
  const shelve = useShelveOffcuts();
  const least = usableOffcutMm === undefined ? USUAL_LEAST[ruler.unit] : ticksOfMm(usableOffcutMm);
  const lots = offcutsOf(planned, least);
  if (planned.plan.layouts.every(({ offcuts }) => offcuts.length === 0)) return null;
  if (papers.get(planned.paperId)?.offcutOfId !== undefined) return null;
  return (
    <section className="offcuts" aria-label={words.offcutsHead}>
      <h3>{words.offcutsHead}</h3>
      <p className="soft">{words.offcutsWhy}</p>
      <div className="offcut-least screen-only">
        <LengthField
          label={words.offcutLeast}
          help={words.offcutLeastHelp}
          value={least}
          least={millimetres(1)}
          most={millimetres(2000)}
          onChange={(length) => changeSettings({ usableOffcutMm: mmOfTicks(length) })}
        />
      </div>
      <ul className="offcut-lots">
        {lots.map((lot, place) => {
          const size = sizeWords([lot.across, lot.up], ruler);
          const shelved = shelvedOffcut(papers, planned.paperId, lot);
          return (
            <li key={`${lot.across} ${lot.up}`}>
              <span>
                {words.lot(place + 1, size, lot.count)}
                {shelved && <span className="soft"> · {words.onShelf(shelved.onHandSheets)}</span>}
              </span>
              <Button
                className="screen-only"
                aria-label={`${words.shelve}: ${size}`}
                onClick={() =>
                  shelve(planned.paperId, lot, words.offcutName(planned.name, size), words.shelve)
                }
              >
                {words.shelve}
              </Button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
