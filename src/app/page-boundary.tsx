import { Component, type ReactNode } from 'react';
import { PageBroken } from './page-broken';

interface PageBoundaryProps {
  /** A new address, or another state of the workbook, deserves another try. */
  readonly resetBy: string;
  readonly children: ReactNode;
}

interface Caught {
  readonly error: Error | null;
  readonly at: string;
}

/** Holds a page that could not be drawn: the rest of the app, and what was typed, stay. */
export class PageBoundary extends Component<PageBoundaryProps, Caught> {
  override state: Caught = { error: null, at: this.props.resetBy };

  static getDerivedStateFromError(error: Error): Partial<Caught> {
    return { error };
  }

  static getDerivedStateFromProps({ resetBy }: PageBoundaryProps, { at }: Caught): Partial<Caught> | null {
    return at === resetBy ? null : { error: null, at: resetBy };
  }

  override render(): ReactNode {
    return this.state.error === null ? this.props.children : <PageBroken detail={this.state.error.message} />;
  }
}
