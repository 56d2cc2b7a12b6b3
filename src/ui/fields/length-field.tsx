import { type KeyboardEvent, type RefObject, useId, useRef } from 'react';
import { printLength, setFraction, type Ticks } from '../../core/units';
import { classNames } from '../frame/class-names';
import { keyIn } from '../frame/keys';
import { useWords } from '../words';
import { Button } from './button';
import { useRuler } from './measure';
import { type SizesTogether, useTypedLength } from './typed-length';
import './field.css';

const EIGHTHS = ['1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];

const SIXTEENTHS = ['1/16', '3/16', '5/16', '7/16', '9/16', '11/16', '13/16', '15/16'];

const ANY_FRACTION = /\s*\d+\/\d+\s*/;

interface LengthFieldProps {
  readonly label: string;
  readonly help?: string;
  readonly value: Ticks;
  /** Told on every keystroke that reads as a length in bounds, on an arrow, and when Esc puts the old one back. */
  readonly onChange: (length: Ticks) => void;
  /** Told when they are done with the field: on Enter and on leaving it. */
  readonly onCommit?: () => void;
  readonly least?: Ticks;
  readonly most?: Ticks;
  readonly together?: SizesTogether | undefined;
  /** Lit together with the same length elsewhere. */
  readonly lit?: boolean;
  readonly onLight?: (lit: boolean) => void;
}

/**
 * One length, typed as a maker writes it and said back in both units. What cannot be read stays as typed, with the reason and what to write;
 * a length between the marks of their ruler is kept, and the nearest mark offered. Arrows step along the ruler.
 */
export function LengthField(props: LengthFieldProps) {
  const { label, help, lit = false, onLight } = props;
  const ruler = useRuler();
  const words = useWords().field;
  const field = useTypedLength(props);
  const input = useRef<HTMLInputElement>(null);
  const id = useId();
  const note = field.note;

  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    const [act, nth] = keyIn('length', event) ?? [];
    if (act === undefined) return;
    if (act === 'take') field.commit();
    else if (act === 'back') field.restore();
    else field.step(nth === 0 ? 1 : -1, act === 'stride');
    if (act !== 'take') event.preventDefault();
  };

  return (
    <div
      className={classNames('field length-field', lit && 'field-lit')}
      onPointerEnter={() => onLight?.(true)}
      onPointerLeave={() => onLight?.(false)}
    >
      <div className="field-head">
        <label htmlFor={id}>{label}</label>
        <output className={classNames('field-echo', field.echo.strong && 'field-echo-strong')} htmlFor={id}>
          {field.echo.text}
        </output>
      </div>
      <div className={classNames('field-box', note?.kind === 'refused' && 'field-box-refused')}>
        <input
          ref={input}
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          enterKeyHint="done"
          value={field.text}
          aria-invalid={note?.kind === 'refused'}
          aria-describedby={`${id}-help`}
          onChange={({ target, nativeEvent }) =>
            field.type(target.value, (nativeEvent as InputEvent).inputType === 'insertFromPaste')
          }
          onKeyDown={onKeyDown}
          onFocus={() => onLight?.(true)}
          onBlur={() => {
            field.commit();
            onLight?.(false);
          }}
        />
        <span className="field-unit">{field.typedUnit ?? ruler.unit}</span>
        {ruler.unit === 'in' && (
          <FractionKeys label={words.fractions} field={input} onType={(text) => field.type(text)} />
        )}
      </div>
      <div id={`${id}-help`} className="field-note" role={note ? 'status' : undefined}>
        {note === null ? (
          help && <p>{help}</p>
        ) : (
          <>
            <p className={`field-${note.kind}`}>{note.says}</p>
            {note.offer !== null && (
              <Button tone="quiet" onClick={() => field.accept(note.offer)}>
                {words.use(printLength(note.offer, ruler).typographic)}
              </Button>
            )}
          </>
        )}
      </div>
    </div>
  );
}

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
function FractionKeys({ label, field, onType }: FractionKeysProps) {
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
