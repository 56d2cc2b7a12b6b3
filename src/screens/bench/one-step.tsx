import { useState } from 'react';
import { type BoxCard, CAUTIONS } from '../../core/bench';
import { Button } from '../../ui/fields/button';
import { StepWords } from '../../ui/frame/step-list';
import { usePageWords, useSay } from '../../ui/words';
import { StepView } from './bench-net';
import { ReadAloud } from './read-aloud';
import { useBenchKeys } from './use-bench-keys';
import { useStepInSight } from './use-step-in-sight';

interface OneStepProps {
  readonly card: BoxCard;
  readonly place: number;
  readonly onPlace: (place: number) => void;
}

/** One step a screen, to be read at arm's length and turned over with a knuckle. */
export function OneStep({ card, place, onPlace }: OneStepProps) {
  const words = usePageWords().bench;
  const say = useSay();
  const [aloud, setAloud] = useState(false);
  const { steps } = card;
  const last = place === steps.length - 1;
  useBenchKeys('card', (_, nth) => {
    if (nth === 1 && !last) onPlace(place + 1);
    if (nth === 0 && place > 0) onPlace(place - 1);
  });
  const section = useStepInSight<HTMLElement>(place);
  const step = steps[place];
  if (!step) return null;
  const cautions = step.cautions.map((code) => CAUTIONS[code]);
  return (
    <section ref={section} className="bench-step one-step" aria-label={words.stepOf(place + 1, steps.length)}>
      <header className="bench-step-head">
        <p className="one-step-count">
          {words.stepOf(place + 1, steps.length)} <span className="soft">{words.kinds[step.kind]}</span>
        </p>
        <div aria-live="polite">
          <StepWords step={step} />
        </div>
      </header>
      <div className="bench-step-picture">
        <StepView card={card} step={step} />
      </div>
      <div className="bench-step-words">
        <div className="bench-tools screen-only">
          <ReadAloud
            text={[step.headline, ...step.details, ...cautions].map(say).join(' ')}
            wanted={aloud}
            onWanted={setAloud}
          />
        </div>
      </div>
      <div className="bench-acts screen-only">
        <Button disabled={place === 0} onClick={() => onPlace(place - 1)}>
          {words.back}
        </Button>
        <Button tone="act" className="bench-act-rest" onClick={() => onPlace(last ? 0 : place + 1)}>
          {last ? words.again : words.next}
        </Button>
      </div>
    </section>
  );
}
