import { type ReactNode, useId } from 'react';
import './choice-strip.css';

interface StripChoice<Id extends string> {
  readonly id: Id;
  readonly label: string;
  readonly face?: ReactNode;
}

interface ChoiceStripProps<Id extends string> {
  readonly label: string;
  readonly value: Id;
  readonly choices: readonly StripChoice<Id>[];
  readonly onChange: (id: Id) => void;
  /** Shows the label above the strip; else it is only said aloud. */
  readonly named?: boolean;
}

/** A few choices side by side, one of them taken; arrows move along. */
export function ChoiceStrip<Id extends string>({
  label,
  value,
  choices,
  onChange,
  named = false,
}: ChoiceStripProps<Id>) {
  const group = useId();
  return (
    <div className="choice-strip-box">
      {named && (
        <span className="choice-strip-label" aria-hidden="true">
          {label}
        </span>
      )}
      <div role="radiogroup" className="choice-strip" aria-label={label}>
        {choices.map((choice) => (
          <label key={choice.id} className="choice">
            <input
              type="radio"
              className="choice-radio"
              name={group}
              aria-label={choice.label}
              checked={choice.id === value}
              onChange={() => onChange(choice.id)}
            />
            {choice.face ?? choice.label}
          </label>
        ))}
      </div>
    </div>
  );
}
