import { Component, type ReactNode, Suspense, useEffect } from 'react';
import { noteMissingPart } from '../state/results/unanswered';
import { askAgainForPages } from './fetched-page';

interface BoundaryProps {
  /** A new address deserves another try. */
  readonly resetBy?: string;
  /** What stands in place of what could not be drawn. */
  readonly instead: (error: Error) => ReactNode;
  readonly children: ReactNode;
}

interface Caught {
  readonly error: Error | null;
  readonly at: string | undefined;
}

/** Holds what could not be fetched or drawn: the rest of the app, and what was typed, stay. */
export class Boundary extends Component<BoundaryProps, Caught> {
  override state: Caught = { error: null, at: this.props.resetBy };

  static getDerivedStateFromError(error: Error): Partial<Caught> {
    return { error };
  }

  static getDerivedStateFromProps({ resetBy }: BoundaryProps, { at }: Caught): Partial<Caught> | null {
    return at === resetBy ? null : { error: null, at: resetBy };
  }

  override componentDidCatch(): void {
    askAgainForPages();
  }

  override render(): ReactNode {
    return this.state.error === null ? this.props.children : this.props.instead(this.state.error);
  }
}

/** A small part that is fetched: where it does not come, `fallback` stays in its place, and the frame says that something is missing. */
export function Part({ children, fallback = null }: { children: ReactNode; fallback?: ReactNode }) {
  return (
    <Boundary instead={() => <Missing>{fallback}</Missing>}>
      <Suspense fallback={fallback}>{children}</Suspense>
    </Boundary>
  );
}

function Missing({ children }: { children: ReactNode }) {
  useEffect(noteMissingPart, []);
  return children;
}
