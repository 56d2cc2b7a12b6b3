import { Flag, Info, OctagonX } from 'lucide-react';
import type { EventFinding } from '../../core/plan';
import { sayReason } from '../../core/units/reason';
import { Button } from '../fields/button';
import { useWords } from '../words';
import { useWording } from './wording';
import './findings.css';

const ICONS = { stop: OctagonX, warn: Flag, note: Info } as const;

/** A mend that one press makes. */
interface EventMend {
  readonly label: string;
  readonly mend: () => void;
}
export type MendOf = (finding: EventFinding) => EventMend | null;

interface EventFindingsProps {
  readonly findings: readonly EventFinding[];
  /** The mend that one press can make, if there is one. */
  readonly mendOf: MendOf;
}

/** What stands in the way of an event: which line or paper, value, reason, remedy. Nothing is shown where nothing does. */
export function EventFindings({ findings, mendOf }: EventFindingsProps) {
  const wording = useWording();
  const words = useWords().findings;
  if (findings.length === 0) return null;
  return (
    <ul className="findings" aria-label={words.event}>
      {findings.map((finding) => {
        const { code, where, severity, about, remedy } = finding;
        const fix = mendOf(finding);
        const Icon = ICONS[severity];
        return (
          <li key={`${code} ${where}`} className={`finding finding-${severity}`}>
            <Icon aria-hidden="true" />
            <div>
              <p>
                {about !== '' && <strong>{about}: </strong>}
                {sayReason(finding, wording)}
              </p>
              <p className="soft">{sayReason({ ...finding, says: remedy }, wording)}</p>
            </div>
            {fix && <Button onClick={fix.mend}>{fix.label}</Button>}
          </li>
        );
      })}
    </ul>
  );
}
