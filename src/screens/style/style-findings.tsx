import { Flag, OctagonX } from 'lucide-react';
import { memo, useMemo, useState } from 'react';
import type { Recipe } from '../../../shared/workbook';
import type { Draft } from '../../core/draft/draft';
import { looseEnds } from '../../core/draft/loose-ends';
import { notABox } from '../../core/proof';
import { mmOfTicks } from '../../core/rows/lengths';
import type { StyleRefusal } from '../../core/style-file/style-refusal';
import { sayReason } from '../../core/units/reason';
import type { BoxResult } from '../../state/results/box-result';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { Findings } from '../../ui/frame/findings';
import { useWording } from '../../ui/frame/wording';
import { useSay } from '../../ui/words';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { StyleProofView } from './style-proof';

interface StyleFindingsProps {
  readonly recipe: Recipe;
  readonly box: BoxResult;
  readonly text: string;
  readonly draft: Draft;
}

/** Most shown at once; what follows from the first need not be read. source: our own */
const MOST_REASONS = 3;
/** Fewer panels round the room close no box. */
const LEAST_WALLS = 4;

/** What is wrong at the size that is shown, what keeps it from being a box at all, and the trial at many sizes. */
export const StyleFindings = memo(function StyleFindings({ recipe, box, text, draft }: StyleFindingsProps) {
  const words = useDraftingWords();
  const say = useSay();
  const edit = useWorkbook((state) => state.edit);
  const [tried, setTried] = useState<string | null>(null);
  const refusals = useMemo(() => notABox(box.style), [box.style]);
  const isUnfinished = box.net.pieces.every(({ shell }) => shell.length < LEAST_WALLS);
  const loose = useMemo(() => looseEnds(draft), [draft]);
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
      <div className="style-acts">
        <Button tone="act" onClick={() => setTried(text)}>
          {tried === null ? words.tryIt : words.tryAgain}
        </Button>
      </div>
      {tried !== null && tried !== text && <p className="soft">{words.changedSince}</p>}
      {tried !== null && <StyleProofView key={tried} text={tried} />}
    </>
  );
});

interface ReasonsProps {
  readonly of: readonly StyleRefusal[];
  readonly severity: 'stop' | 'warn';
  readonly title: string;
}

/** What a drawing lacks, as findings are shown. */
function Reasons({ of, severity, title }: ReasonsProps) {
  const wording = useWording();
  const Icon = severity === 'stop' ? OctagonX : Flag;
  if (of.length === 0) return null;
  return (
    <ul className="findings" aria-label={title}>
      {of.slice(0, MOST_REASONS).map((refusal) => (
        <li key={`${refusal.code} ${refusal.path}`} className={`finding finding-${severity}`}>
          <Icon aria-hidden="true" />
          <div>
            <strong className="said-only">{title} </strong>
            <p>{sayReason(refusal, wording)}</p>
            <p className="soft">{sayReason({ ...refusal, says: refusal.remedy }, wording)}</p>
          </div>
        </li>
      ))}
    </ul>
  );
}
