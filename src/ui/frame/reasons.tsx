import { Flag, OctagonX } from 'lucide-react';
import type { StyleRefusal } from '../../core/style-file/style-refusal';
import { sayReason } from '../../core/units/reason';
import { useWording } from './wording';

/** Most shown at once; what follows from the first need not be read. source: our own */
const MOST_REASONS = 3;

interface ReasonsProps {
  readonly of: readonly StyleRefusal[];
  readonly severity: 'stop' | 'warn';
  readonly title: string;
}

/** What a style lacks, as findings are shown. */
export function Reasons({ of, severity, title }: ReasonsProps) {
  const wording = useWording();
  const Icon = severity === 'stop' ? OctagonX : Flag;
  if (of.length === 0) return null;
  return (
    <ul className="findings" aria-label={title}>
      {of.slice(0, MOST_REASONS).map((refusal) => (
        <li key={`${refusal.code} ${refusal.path}`} className={`finding finding-${severity}`}>
          <Icon aria-hidden="true" />
          <div>
            <strong className="said-only">{title} </strong>
            <p>{sayReason(refusal, wording)}</p>
            <p className="soft">{sayReason({ ...refusal, says: refusal.remedy }, wording)}</p>
          </div>
        </li>
      ))}
    </ul>
  );
}
