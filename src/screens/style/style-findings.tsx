import { memo, useMemo } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { looseEnds, notABox } from '../../core/proof';
import { mmOfTicks } from '../../core/rows/lengths';
import type { BoxResult } from '../../state/results/box-result';
import { useWorkbook } from '../../state/use-workbook';
import { Findings } from '../../ui/frame/findings';
import { Reasons } from '../../ui/frame/reasons';
import { useSay } from '../../ui/words';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { StyleTrial } from './style-trial';

interface StyleFindingsProps {
  readonly recipe: Recipe;
  readonly box: BoxResult;
  readonly text: string;
}

/** Fewer panels round the room close no box. */
const LEAST_WALLS = 4;

/** What is wrong at the size that is shown, what keeps it from being a box at all, and the trial at many sizes. */
export const StyleFindings = memo(function StyleFindings({ recipe, box, text }: StyleFindingsProps) {
  const words = useDraftingWords();
  const say = useSay();
  const edit = useWorkbook((state) => state.edit);
  const refusals = useMemo(() => notABox(box.style), [box.style]);
  const isUnfinished = box.net.pieces.every(({ shell }) => shell.length < LEAST_WALLS);
  const loose = useMemo(() => looseEnds(box.style), [box.style]);
  const nameOf = (symbol: string) => say(box.style.symbols[symbol]?.label ?? symbol);
  return (
    <>
      {isUnfinished && <p className="style-hint">{words.unfinished}</p>}
      <Reasons of={refusals} severity="stop" title={words.notABox} />
      <Reasons of={loose} severity="warn" title={words.loose} />
      {(refusals.length + loose.length === 0 || box.findings.length > 0) && (
        <Findings
          findings={box.findings}
          nameOf={nameOf}
          sound={words.sound}
          onFix={({ symbol, value }) =>
            edit('recipes', recipe.id, nameOf(symbol), (row) => ({
              ...row,
              sizesMm: { ...row.sizesMm, [symbol]: mmOfTicks(value) },
            }))
          }
        />
      )}
      <StyleTrial text={text} />
    </>
  );
});
