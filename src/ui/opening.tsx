import { ChevronRight } from 'lucide-react';
import type { ReactNode } from 'react';
import './opening.css';

interface OpeningProps {
  readonly head: ReactNode;
  readonly children: ReactNode;
  readonly open?: boolean;
}

/** A line that opens to what lies behind it: the arithmetic of a total, working dimensions, a note. */
export function Opening({ head, children, open = false }: OpeningProps) {
  return (
    <details className="opening" open={open}>
      <summary>
        <ChevronRight aria-hidden="true" />
        <span>{head}</span>
      </summary>
      <div className="opening-inside">{children}</div>
    </details>
  );
}
