import { TriangleAlert } from 'lucide-react';
import { CAUTIONS, type CardStep, type CautionCode } from '../../core/bench';
import { setFractions } from '../../core/draw/strokes/set-fractions';
import { usePageWords, useSay } from '../words';
import { classNames } from './class-names';
import { Opening } from './opening';
import './step-list.css';

interface StepListProps {
  readonly steps: readonly CardStep[];
  /** The step in hand, by place; null where all are shown alike. */
  readonly current?: number | null;
  readonly onStep?: (place: number) => void;
}

/** The card as a list: every step with its numbers large, its tips and its cautions. */
export function StepList({ steps, current = null, onStep }: StepListProps) {
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
          <StepWords step={step} />
        </li>
      ))}
    </ol>
  );
}

/** One step in words. The marks stand large beside the sentence, which has them too, so ears get them once. */
export function StepWords({ step }: { step: CardStep }) {
  const words = usePageWords().bench;
  const say = useSay();
  return (
    <div className="step-words">
      {step.marks.length > 0 && (
        <p className="step-marks" aria-hidden="true">
          {step.marks.map(({ at, reads, printed }) => (
            <span key={`${reads} ${at}`} className="step-mark">
              {printed.typographic.replace(/ (in|mm)$/, '')}
              <small>
                {printed.lean === null ? '' : `${say(printed.lean)} `}
                {printed.other}
              </small>
              <small>{say(reads)}</small>
            </span>
          ))}
        </p>
      )}
      <p className="step-headline">{setFractions(say(step.headline))}</p>
      {step.details.map((detail) => (
        <p key={detail} className="step-detail">
          {setFractions(say(detail))}
        </p>
      ))}
      {step.template.length > 0 && (
        <Opening head={words.template}>
          {step.template.map((row) => (
            <p key={row} className="step-template">
              {setFractions(row)}
            </p>
          ))}
        </Opening>
      )}
      {step.tips.map((tip) => (
        <p key={tip} className="step-tip">
          <span className="soft">{words.tip} </span>
          {setFractions(say(tip))}
        </p>
      ))}
      {step.cautions.map((code) => (
        <Care key={code} code={code} />
      ))}
    </div>
  );
}

/** A caution where hands meet blades or heat. */
export function Care({ code }: { code: CautionCode }) {
  const words = usePageWords().bench;
  const say = useSay();
  return (
    <p className="step-caution">
      <TriangleAlert aria-hidden="true" />
      <span>
        <strong>{words.caution} </strong>
        {say(CAUTIONS[code])}
      </span>
    </p>
  );
}
