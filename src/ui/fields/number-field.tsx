import { type ReactNode, useId, useState } from 'react';
import { classNames } from '../frame/class-names';
import { keyIn } from '../frame/keys';
import { useWords } from '../words';
import './field.css';

interface NumberFieldProps {
  readonly label: string;
  readonly help?: ReactNode;
  readonly unit?: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly onChange: (value: number) => void;
  /** How a whole number of these is written, e.g. cents as 12.50; whole numbers unless said. */
  readonly decimals?: number;
  /** Another way to read what is typed, such as a weight in pounds; null where it does not read. */
  readonly read?: (text: string) => number | null;
  /** What to write instead, where bounds alone would not say it. */
  readonly refusal?: string;
}

/** A plain number in bounds: a count, a weight, a price. What cannot be read stays as typed, with what to write. */
export function NumberField({
  label,
  help,
  unit,
  value,
  least,
  most,
  onChange,
  decimals = 0,
  read: readTyped = (text) => readNumber(text, 10 ** decimals),
  refusal,
}: NumberFieldProps) {
  const words = useWords().field;
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const scale = 10 ** decimals;
  const read = typed === null ? value : readTyped(typed);
  const refused = read === null || read < least || read > most;
  const print = (count: number) => (count / scale).toFixed(decimals);

  const type = (text: string) => {
    setTyped(text);
    const number = readTyped(text);
    if (number !== null && number >= least && number <= most) onChange(number);
  };

  return (
    <div className="field">
      <div className="field-head">
        <label htmlFor={id}>{label}</label>
      </div>
      <div className={classNames('field-box', refused && 'field-box-refused')}>
        <input
          id={id}
          type="text"
          inputMode={refusal !== undefined ? 'text' : decimals === 0 ? 'numeric' : 'decimal'}
          autoComplete="off"
          value={typed ?? print(value)}
          aria-invalid={refused}
          aria-describedby={`${id}-help`}
          onChange={(event) => type(event.target.value)}
          onBlur={() => refused || setTyped(null)}
          onKeyDown={(event) => {
            const [act] = keyIn('text', event) ?? [];
            if (act === 'back' || (act === 'take' && !refused)) setTyped(null);
          }}
        />
        {unit !== undefined && <span className="field-unit">{unit}</span>}
      </div>
      <div id={`${id}-help`} className="field-note">
        {refused ? (
          <p className="field-refused">
            {(read === null && refusal) || words.numberBetween(print(least), print(most))}
          </p>
        ) : (
          help
        )}
      </div>
    </div>
  );
}

/** Whole numbers of the smallest part: `12.5` with two decimals is 1250, and so is `$12.50`, as shops write it. Null where it is none. */
function readNumber(text: string, scale: number): number | null {
  const amount = scale === 1 ? text : text.replace(/^\s*[$€£¥]|[$€£¥]\s*$/, '');
  const plain = amount.trim().replace(',', '.');
  if (!/^\d+(\.\d*)?$|^\.\d+$/.test(plain)) return null;
  const number = Number(plain) * scale;
  const whole = Math.round(number);
  return Math.abs(number - whole) < 1e-6 ? whole : null;
}
