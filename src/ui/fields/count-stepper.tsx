import { Minus, Plus } from 'lucide-react';
import { useId, useState } from 'react';
import { keyIn } from '../frame/keys';
import { useWords } from '../words';
import { IconButton } from './button';
import './count-stepper.css';

interface CountStepperProps {
  readonly label: string;
  readonly value: number;
  readonly least?: number;
  readonly most?: number;
  readonly onChange: (count: number) => void;
}

/** A whole number with a step down and up on either side; typing it works as well. What is no such number stays as typed, with what to write. */
export function CountStepper({ label, value, least = 0, most = 100_000, onChange }: CountStepperProps) {
  const words = useWords().field;
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const read = (text: string) => (/^\s*\d+\s*$/.test(text) ? Number(text) : Number.NaN);
  const fits = (count: number) => count >= least && count <= most;
  const refused = typed !== null && typed !== '' && !fits(read(typed));
  const put = (count: number) => {
    setTyped(null);
    onChange(Math.min(most, Math.max(least, count)));
  };
  return (
    <div className="count-stepper">
      <label htmlFor={id} className="said-only">
        {label}
      </label>
      <IconButton
        label={words.oneFewer(label)}
        icon={<Minus />}
        disabled={value <= least}
        onClick={() => put(value - 1)}
      />
      <input
        id={id}
        type="text"
        inputMode="numeric"
        autoComplete="off"
        value={typed ?? value}
        onFocus={(event) => event.target.select()}
        onChange={(event) => {
          const text = event.target.value;
          setTyped(text);
          if (fits(read(text))) onChange(read(text));
        }}
        aria-invalid={refused}
        aria-describedby={refused ? `${id}-refused` : undefined}
        onBlur={() => refused || setTyped(null)}
        onKeyDown={(event) => {
          const [act, nth] = keyIn('count', event) ?? [];
          if (act === undefined) return;
          event.preventDefault();
          put(value + (nth === 0 ? 1 : -1) * (act === 'stride' ? 10 : 1));
        }}
      />
      <IconButton
        label={words.oneMore(label)}
        icon={<Plus />}
        disabled={value >= most}
        onClick={() => put(value + 1)}
      />
      {refused && (
        <p id={`${id}-refused`} className="field-refused" role="alert">
          {words.numberBetween(`${least}`, `${most}`)}
        </p>
      )}
    </div>
  );
}
