import { ChevronRight } from 'lucide-react';
import type { ReactNode } from 'react';
import './opening.css';

interface OpeningProps {
  readonly head: ReactNode;
  readonly children: ReactNode;
  readonly open?: boolean;
  /** Hears whether it was opened or closed. */
  readonly onToggle?: (open: boolean) => void;
}

/** A line that opens to what lies behind it: the arithmetic of a total, working dimensions, a note. */
export function Opening({ head, children, open = false, onToggle }: OpeningProps) {
  return (
    <details
      className="opening"
      open={open}
      onToggle={onToggle && ((event) => onToggle(event.currentTarget.open))}
    >
      <summary>
        <ChevronRight aria-hidden="true" />
        <span>{head}</span>
      </summary>
      <div className="opening-inside">{children}</div>
    </details>
  );
}
