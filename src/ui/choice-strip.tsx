import { ToggleGroup } from 'radix-ui';
import type { ReactNode } from 'react';
import './choice-strip.css';

export interface StripChoice<Id extends string> {
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
  return (
    <div className="choice-strip-box">
      {named && (
        <span className="choice-strip-label" aria-hidden="true">
          {label}
        </span>
      )}
      <ToggleGroup.Root
        type="single"
        className="choice-strip"
        aria-label={label}
        value={value}
        onValueChange={(id) => id !== '' && onChange(id as Id)}
      >
        {choices.map((choice) => (
          <ToggleGroup.Item key={choice.id} value={choice.id} className="choice" aria-label={choice.label}>
            {choice.face ?? choice.label}
          </ToggleGroup.Item>
        ))}
      </ToggleGroup.Root>
    </div>
  );
}
