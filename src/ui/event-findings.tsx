import { Flag, Info, OctagonX } from 'lucide-react';
import type { EventFinding } from '../core/plan';
import { sayFacts } from './findings';
import { useRuler } from './measure';
import { useWords } from './words';
import './findings.css';

const ICONS = { stop: OctagonX, warn: Flag, note: Info } as const;

/** What stands in the way of an event: which line or paper, value, reason, remedy. Nothing is shown where nothing does. */
export function EventFindings({ findings }: { findings: readonly EventFinding[] }) {
  const ruler = useRuler();
  const words = useWords().findings;
  if (findings.length === 0) return null;
  return (
    <ul className="findings" aria-label={words.event}>
      {findings.map(({ code, where, severity, about, says, remedy, facts }) => {
        const Icon = ICONS[severity];
        const say = (text: string) => sayFacts(text.replace('{about}', about), facts, ruler);
        return (
          <li key={`${code} ${where}`} className={`finding finding-${severity}`}>
            <Icon aria-hidden="true" />
            <div>
              <p>{say(says)}</p>
              <p className="soft">{say(remedy)}</p>
            </div>
          </li>
        );
      })}
    </ul>
  );
}
