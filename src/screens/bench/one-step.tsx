import { ArrowLeft, ArrowRight } from 'lucide-react';
import type { CardStep } from '../../core/bench';
import { Button } from '../../ui/fields/button';
import { keyIn } from '../../ui/frame/keys';
import { StepWords } from '../../ui/frame/step-list';
import { usePageWords } from '../../ui/words';

interface OneStepProps {
  readonly steps: readonly CardStep[];
  readonly place: number;
  readonly onPlace: (place: number) => void;
}

/** One step a screen, to be read at arm's length and turned over with a knuckle. */
export function OneStep({ steps, place, onPlace }: OneStepProps) {
  const words = usePageWords().bench;
  const step = steps[place];
  if (!step) return null;
  const last = place === steps.length - 1;
  return (
    <section
      className="one-step"
      aria-label={words.stepOf(place + 1, steps.length)}
      onKeyDown={(event) => {
        const [, nth] = keyIn('card', event) ?? [];
        if (nth === 1 && !last) onPlace(place + 1);
        if (nth === 0 && place > 0) onPlace(place - 1);
      }}
    >
      <p className="one-step-count">
        {words.stepOf(place + 1, steps.length)} <span className="soft">{words.kinds[step.kind]}</span>
      </p>
      <div className="one-step-words" aria-live="polite">
        <StepWords step={step} />
      </div>
      <div className="one-step-acts screen-only">
        <Button
          className="bench-button"
          icon={<ArrowLeft aria-hidden="true" />}
          disabled={place === 0}
          onClick={() => onPlace(place - 1)}
        >
          {words.back}
        </Button>
        <Button tone="act" className="bench-button bench-next" onClick={() => onPlace(last ? 0 : place + 1)}>
          {last ? words.again : words.next}
          {!last && <ArrowRight aria-hidden="true" />}
        </Button>
      </div>
    </section>
  );
}
