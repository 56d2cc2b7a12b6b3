import { type KeyboardEvent, type ReactNode, useId, useState } from 'react';
import { withTicksMore } from '../../core/draft/forms';
import { sayReason } from '../../core/units/reason';
import { useRuler } from '../../ui/fields/measure';
import { keyIn } from '../../ui/frame/keys';
import { useWording } from '../../ui/frame/wording';
import type { Refused } from './use-draft';

const STRIDE = 8;

interface FormFieldProps {
  readonly label: string;
  readonly value: string;
  readonly help?: ReactNode;
  readonly most?: number;
  /** Arrows change its plain length by one mark of the ruler, Shift by eight. */
  readonly steps?: true;
  /** Told on Enter and on leaving, if something else stands there; says why it can’t be so. */
  readonly onTake: (text: string) => Refused;
}

/** A length or a sum of sizes, or a name, typed as a whole: it counts on Enter or on leaving. What can’t be taken stays as typed, with the reason. */
export function FormField({ label, value, help, most = 120, steps, onTake }: FormFieldProps) {
  const id = useId();
  const wording = useWording();
  const ruler = useRuler();
  const [typed, setTyped] = useState<string | null>(null);
  const [refused, setRefused] = useState<Refused>([]);
  const take = () => {
    if (typed === null) return;
    const why = typed.trim() === value ? [] : onTake(typed);
    setRefused(why);
    if (why.length === 0) setTyped(null);
  };
  const step = (marks: number): boolean => {
    const next = withTicksMore(typed ?? value, marks * ruler.finest);
    if (next === null) return false;
    const why = onTake(next);
    setRefused(why);
    setTyped(why.length === 0 ? null : next);
    return true;
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const [move, nth] = steps ? (keyIn('length', event) ?? []) : [];
    if (move === 'step' || move === 'stride') {
      if (step((nth === 0 ? 1 : -1) * (move === 'stride' ? STRIDE : 1))) event.preventDefault();
      return;
    }
    const [act] = keyIn('text', event) ?? [];
    if (act === 'take') take();
    if (act !== 'back') return;
    setTyped(null);
    setRefused([]);
  };
  const [why] = refused;
  return (
    <div className="field">
      <div className="field-head">
        <label htmlFor={id}>{label}</label>
      </div>
      <div className={why ? 'field-box field-box-refused' : 'field-box'}>
        <input
          id={id}
          type="text"
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          enterKeyHint="done"
          maxLength={most}
          value={typed ?? value}
          aria-invalid={why !== undefined}
          aria-describedby={`${id}-help`}
          onChange={({ target }) => setTyped(target.value)}
          onKeyDown={onKeyDown}
          onBlur={take}
        />
      </div>
      <div id={`${id}-help`} className="field-note" role={why ? 'status' : undefined}>
        {why ? (
          <p className="field-refused">
            {sayReason(why, wording)} {sayReason({ ...why, says: why.remedy }, wording)}
          </p>
        ) : (
          help !== undefined && <p>{help}</p>
        )}
      </div>
    </div>
  );
}
