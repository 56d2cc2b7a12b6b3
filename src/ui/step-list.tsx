import { TriangleAlert } from 'lucide-react';
import type { CardStep, CautionCode } from '../core/bench';
import { classNames } from './class-names';
import { useWords } from './words';
import './step-list.css';

interface StepListProps {
  readonly steps: readonly CardStep[];
  /** The words of a caution, from the catalogue. */
  readonly sayCaution: (code: CautionCode) => string;
  /** The step in hand, by place; null where all are shown alike. */
  readonly current?: number | null;
  readonly onStep?: (place: number) => void;
}

/** The card as a list: every step with its numbers large, its tips and its cautions. */
export function StepList({ steps, sayCaution, current = null, onStep }: StepListProps) {
  return (
    <ol className="step-list">
      {steps.map((step, place) => (
        <li key={step.id} className={classNames('step', place === current && 'step-current')}>
          {onStep ? (
            <button type="button" className="step-number" onClick={() => onStep(place)}>
              {place + 1}
            </button>
          ) : (
            <span className="step-number">{place + 1}</span>
          )}
          <StepWords step={step} sayCaution={sayCaution} />
        </li>
      ))}
    </ol>
  );
}

/** One step in words. The marks stand large beside the sentence, which has them too, so ears get them once. */
export function StepWords({ step, sayCaution }: { step: CardStep; sayCaution: StepListProps['sayCaution'] }) {
  const words = useWords().bench;
  return (
    <div className="step-words">
      {step.marks.length > 0 && (
        <p className="step-marks" aria-hidden="true">
          {step.marks.map(({ at, printed }) => (
            <span key={at} className="step-mark">
              {printed.typographic.replace(/ (in|mm)$/, '')}
              <small>
                {printed.lean === null ? '' : `${printed.lean} `}
                {printed.other}
              </small>
            </span>
          ))}
        </p>
      )}
      <p className="step-headline">{step.headline}</p>
      {step.details.map((detail) => (
        <p key={detail} className="step-detail">
          {detail}
        </p>
      ))}
      {step.tips.map((tip) => (
        <p key={tip} className="step-tip">
          <span className="soft">{words.tip} </span>
          {tip}
        </p>
      ))}
      {step.cautions.map((code) => (
        <p key={code} className="step-caution">
          <TriangleAlert aria-hidden="true" />
          <span>
            <strong>{words.caution} </strong>
            {sayCaution(code)}
          </span>
        </p>
      ))}
    </div>
  );
}
