import type { RefObject } from 'react';
import { setFraction } from '../../core/units';

const EIGHTHS = ['1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];
const SIXTEENTHS = ['1/16', '3/16', '5/16', '7/16', '9/16', '11/16', '13/16', '15/16'];
const ANY_FRACTION = /\s*\d+\/\d+\s*/;

/** `3` and `1/2` give `3 1/2`; a fraction already there is replaced. */
export function withFraction(text: string, fraction: string): string {
  const whole = text
    .replace(/^(\s*)\d+\/\d+/, '')
    .replace(/\s\d+\/\d+/, '')
    .replace(ANY_FRACTION, '')
    .trim();
  return whole === '' ? fraction : `${whole} ${fraction}`;
}

interface FractionKeysProps {
  readonly label: string;
  readonly field: RefObject<HTMLInputElement | null>;
  readonly onType: (text: string) => void;
}

/** The fractions of an inch as keys, since a phone's number pad has neither space nor slash. Shown on touch only, over what follows. */
export function FractionKeys({ label, field, onType }: FractionKeysProps) {
  return (
    <fieldset className="fraction-keys screen-only" aria-label={label}>
      {[...EIGHTHS, ...SIXTEENTHS].map((fraction) => (
        <button
          key={fraction}
          type="button"
          tabIndex={-1}
          onPointerDown={(event) => event.preventDefault()}
          onClick={() => onType(withFraction(field.current?.value ?? '', fraction))}
        >
          {setFraction(...(fraction.split('/').map(Number) as [number, number]))}
        </button>
      ))}
    </fieldset>
  );
}
