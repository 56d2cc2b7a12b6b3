import { Check } from 'lucide-react';
import { Link } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import type { FirstBox } from '../../core/plan';
import { printLength, type Ticks } from '../../core/units';
import { Button } from '../../ui/fields/button';
import { sizeWords, useRuler } from '../../ui/fields/measure';
import { RecipePicture } from '../../ui/folded/recipe-picture';
import { pageAddress } from '../../ui/frame/addresses';
import { usePageWords } from '../../ui/words';
import type { useRun } from './use-run';

interface FirstBoxProps {
  readonly first: FirstBox;
  readonly recipe: Recipe | undefined;
  readonly right: boolean;
  readonly step: string;
  readonly run: ReturnType<typeof useRun>;
  readonly onCard: (recipeId: string) => void;
  readonly onBack: (() => void) | null;
  readonly onNext: (() => void) | null;
}

const sidesOf = ({ width, depth, height }: FirstBox['inside']) => [width, depth, height] as const;

/** The first box of a line: what to measure on it, and whether it is right, before the batch is cut. */
export function FirstBoxView({ first, recipe, right, step, run, onCard, onBack, onNext }: FirstBoxProps) {
  const words = usePageWords().run;
  const ruler = useRuler();
  const size = (...lengths: readonly Ticks[]) => (
    <dd>
      {sizeWords(lengths, ruler)}{' '}
      <span className="soft">{lengths.map((each) => printLength(each, ruler).other).join(' × ')}</span>
    </dd>
  );
  return (
    <section className="bench-step run-step" aria-label={step}>
      <header className="bench-step-head">
        <p className="one-step-count">
          {step} <span className="soft">{words.firstBox}</span>
        </p>
        <h2>{words.firstHead}</h2>
        <p className="soft">{[first.name, first.paper].filter((part) => part !== null).join(', ')}</p>
      </header>
      <div className="bench-step-words">
        <p>{words.firstWhy}</p>
        <dl className="first-sizes">
          {first.blanks.map(({ label, size: blank }) => (
            <div key={label}>
              <dt>
                {words.blank}
                {first.blanks.length > 1 && ` (${label})`}
              </dt>
              {size(blank.across, blank.up)}
            </div>
          ))}
          <div>
            <dt>{words.inside}</dt>
            {size(...sidesOf(first.inside))}
          </div>
          <div>
            <dt>{words.outside}</dt>
            {size(...sidesOf(first.outside))}
          </div>
        </dl>
        <p className="soft">{words.tolerance}</p>
        <p className="first-links">
          <Button tone="quiet" onClick={() => onCard(first.recipeId)}>
            {words.toCard}
          </Button>
          {!right && (
            <Link
              className="button button-quiet"
              to={pageAddress({ kind: 'recipe', id: first.recipeId }, 'box')}
            >
              {words.firstWrong}
            </Link>
          )}
        </p>
      </div>
      {recipe && (
        <div className="bench-step-picture">
          <RecipePicture recipe={recipe} />
        </div>
      )}
      <Confirm {...{ first, right, run, onBack, onNext }} />
    </section>
  );
}

type ConfirmProps = Pick<FirstBoxProps, 'first' | 'right' | 'run' | 'onBack' | 'onNext'>;

/** Is it right? Pressed again it is open once more. */
function Confirm({ first, right, run, onBack, onNext }: ConfirmProps) {
  const words = usePageWords().run;
  const ruler = useRuler();
  return (
    <div className="bench-acts screen-only">
      <p className="bench-act-all run-count" role="status">
        {right ? (
          <>
            <Check aria-hidden="true" /> {words.firstConfirmed}
          </>
        ) : (
          words.firstAsk(sizeWords(sidesOf(first.inside), ruler))
        )}
      </p>
      <Button
        tone={right ? 'plain' : 'act'}
        className="bench-act-all"
        icon={right ? undefined : <Check aria-hidden="true" />}
        onClick={() => run.confirmFirst(first.lineId, first.name, !right)}
      >
        {right ? words.firstAgain : words.firstRight}
      </Button>
      <Button className="bench-act-back" disabled={!onBack} onClick={() => onBack?.()}>
        {words.back}
      </Button>
      <Button className="bench-act-next" disabled={!onNext} onClick={() => onNext?.()}>
        {words.next}
      </Button>
    </div>
  );
}
