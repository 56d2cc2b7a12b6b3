import type { ReactNode } from 'react';
import { FilePick } from '../../ui/fields/file-pick';

interface BringFileProps {
  readonly id: string;
  readonly title: string;
  readonly why: string;
  readonly label: string;
  /** Endings of its files, beside plain JSON. */
  readonly accept: string;
  readonly onPick: (file: File) => void;
  /** What has come of the file. */
  readonly children: ReactNode;
}

/** A way to begin a box with a file: what it is for, the field for it, and what has come of the file. */
export function BringFile({ id, title, why, label, accept, onPick, children }: BringFileProps) {
  return (
    <section className="own-net" aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      <p>{why}</p>
      <FilePick label={label} accept={`${accept},application/json`} onPick={([file]) => onPick(file)} />
      {children}
    </section>
  );
}
