import type { ReactNode } from 'react';
import './blank-state.css';

interface BlankStateProps {
  readonly title: string;
  readonly children?: ReactNode;
  /** The next act, one button. */
  readonly act?: ReactNode;
  readonly picture?: ReactNode;
}

/** A page or a part of one that has nothing yet: what it is for, and the one next act. */
export function BlankState({ title, children, act, picture }: BlankStateProps) {
  return (
    <div className="blank-state">
      {picture}
      <h2>{title}</h2>
      {children}
      {act}
    </div>
  );
}
