import { type Reason, sayReason } from '../../core/units/reason';
import { useWords } from '../words';
import { Opening } from './opening';
import { useWording } from './wording';
import './working.css';

interface WorkingProps {
  readonly why: readonly Reason[];
  /** Of the money in it, if there is any. */
  readonly currency?: string;
}

/** How a number comes about, line by line, in the reader's own units. */
export function Working({ why, currency }: WorkingProps) {
  const wording = useWording(currency);
  return (
    <ul className="working">
      {why.map((reason, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines of one working may say the same, and keep their order
        <li key={place}>{sayReason(reason, wording)}</li>
      ))}
    </ul>
  );
}

/** The same behind a line that opens; `of` is the number's name, for ears. */
export function WhyOpening({ of, ...working }: WorkingProps & { readonly of: string }) {
  const words = useWords().working;
  return (
    <Opening
      head={
        <span className="why-head">
          {words.how}
          <span className="said-only">, {of}</span>
        </span>
      }
    >
      <Working {...working} />
    </Opening>
  );
}
