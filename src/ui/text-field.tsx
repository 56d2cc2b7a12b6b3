import { type ReactNode, useId } from 'react';
import './field.css';

interface FieldFrameProps {
  readonly label: string;
  /** What the label is about, where the page already shows it: only said aloud. */
  readonly of?: string;
  readonly help?: ReactNode;
}

interface TextFieldProps extends FieldFrameProps {
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly most?: number;
  readonly type?: 'text' | 'date';
}

/** A name or a date. */
export function TextField({ label, of, help, value, onChange, most = 200, type = 'text' }: TextFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <div className="field-head">
        <label htmlFor={id}>
          {label}
          {of !== undefined && <span className="said-only">, {of}</span>}
        </label>
      </div>
      <div className="field-box">
        <input
          id={id}
          type={type}
          value={value}
          maxLength={most}
          autoComplete="off"
          aria-describedby={help === undefined ? undefined : `${id}-help`}
          onChange={(event) => onChange(event.target.value)}
        />
      </div>
      {help !== undefined && (
        <div id={`${id}-help`} className="field-note">
          {help}
        </div>
      )}
    </div>
  );
}

export interface Choice {
  readonly id: string;
  readonly label: string;
}

interface SelectFieldProps extends FieldFrameProps {
  readonly value: string;
  readonly choices: readonly Choice[];
  readonly onChange: (id: string) => void;
}

/** One of several by name; the browser's own list, which every phone and reader knows. */
export function SelectField({ label, of, help, value, choices, onChange }: SelectFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <div className="field-head">
        <label htmlFor={id}>
          {label}
          {of !== undefined && <span className="said-only">, {of}</span>}
        </label>
      </div>
      <div className="field-box">
        <select
          id={id}
          value={value}
          aria-describedby={help === undefined ? undefined : `${id}-help`}
          onChange={(event) => onChange(event.target.value)}
        >
          {choices.map((choice) => (
            <option key={choice.id} value={choice.id}>
              {choice.label}
            </option>
          ))}
        </select>
      </div>
      {help !== undefined && (
        <div id={`${id}-help`} className="field-note">
          {help}
        </div>
      )}
    </div>
  );
}
