import type { ReactNode } from 'react';
import './wide-box.css';

/** Something wider than a phone: it scrolls sideways in its own box, by keyboard too. */
export function WideBox({ label, children }: { label: string; children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard (WCAG 2.1.1)
    <section className="wide-box" aria-label={label} tabIndex={0}>
      {children}
    </section>
  );
}
