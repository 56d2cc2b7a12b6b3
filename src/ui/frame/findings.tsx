import { Flag, Info, OctagonX } from 'lucide-react';
import type { Finding } from '../../core/checks/finding';
import { sayReason } from '../../core/units/reason';
import { Button } from '../fields/button';
import { lengthWords, useRuler } from '../fields/measure';
import { useWords } from '../words';
import { useWording } from './wording';
import './findings.css';

const ICONS = { stop: OctagonX, warn: Flag, note: Info } as const;
const ORDER = ['stop', 'warn', 'note'] as const;

type Fix = NonNullable<Finding['fix']>;

interface FindingsProps {
  readonly findings: readonly Finding[];
  /** What the size is called that a mend would change. */
  readonly nameOf: (symbol: string) => string;
  readonly onFix: (fix: Fix) => void;
  readonly onLight?: (where: string | null) => void;
  /** Said when there is nothing to mend. */
  readonly sound: string;
}

/** What is wrong, in one place: value, reason, remedy, and the remedy as a button. Worst first. */
export function Findings({ findings, nameOf, onFix, onLight, sound }: FindingsProps) {
  const ruler = useRuler();
  const wording = useWording();
  const words = useWords().findings;
  if (findings.length === 0) return <p className="findings-sound">{sound}</p>;
  const sorted = ORDER.flatMap((severity) => findings.filter((finding) => finding.severity === severity));
  return (
    <ul className="findings" aria-label={words.title}>
      {sorted.map((finding) => {
        const Icon = ICONS[finding.severity];
        const { fix } = finding;
        return (
          <li
            key={`${finding.code} ${finding.where}`}
            className={`finding finding-${finding.severity}`}
            onPointerEnter={() => onLight?.(finding.where)}
            onPointerLeave={() => onLight?.(null)}
          >
            <Icon aria-hidden="true" />
            <div>
              <strong className="said-only">{words.severity[finding.severity]} </strong>
              <p>{sayReason(finding, wording)}</p>
              <p className="soft">{sayReason({ ...finding, says: finding.remedy }, wording)}</p>
            </div>
            {fix && (
              <Button onClick={() => onFix(fix)}>
                {words.mend(nameOf(fix.symbol), lengthWords(fix.value, ruler))}
              </Button>
            )}
          </li>
        );
      })}
    </ul>
  );
}
