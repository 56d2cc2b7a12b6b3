import { type ReactNode, useId } from 'react';
import './field.css';

interface Framed {
  readonly label: string;
  /** What the label is about, where the page already shows it: only said aloud. */
  readonly of?: string;
  readonly help?: ReactNode;
}

interface TextFieldProps extends Framed {
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly most?: number;
  readonly type?: 'text' | 'date' | 'time' | 'search';
}

/** A name, a date, a time of day, or what is looked for. */
export function TextField({ value, onChange, most = 200, type = 'text', ...framed }: TextFieldProps) {
  return (
    <FieldFrame {...framed}>
      {(named) => (
        <input
          {...named}
          type={type}
          value={value}
          maxLength={most}
          autoComplete="off"
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </FieldFrame>
  );
}

interface Choice {
  readonly id: string;
  readonly label: string;
}

interface SelectFieldProps extends Framed {
  readonly value: string;
  readonly choices: readonly Choice[];
  readonly onChange: (id: string) => void;
}

/** One of several by name; the browser's own list, which every phone and reader knows. */
export function SelectField({ value, choices, onChange, ...framed }: SelectFieldProps) {
  return (
    <FieldFrame {...framed}>
      {(named) => (
        <select {...named} value={value} onChange={(event) => onChange(event.target.value)}>
          {choices.map((choice) => (
            <option key={choice.id} value={choice.id}>
              {choice.label}
            </option>
          ))}
        </select>
      )}
    </FieldFrame>
  );
}

interface Named {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
}

function FieldFrame({ label, of, help, children }: Framed & { children: (named: Named) => ReactNode }) {
  const id = useId();
  const helpId = help === undefined ? undefined : `${id}-help`;
  return (
    <div className="field">
      <div className="field-head">
        <label htmlFor={id}>
          {label}
          {of !== undefined && <span className="said-only">, {of}</span>}
        </label>
      </div>
      <div className="field-box">{children({ id, 'aria-describedby': helpId })}</div>
      {help !== undefined && (
        <div id={helpId} className="field-note">
          {help}
        </div>
      )}
    </div>
  );
}
