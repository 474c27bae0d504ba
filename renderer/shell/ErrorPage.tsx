import { Component, type ReactNode } from 'react';
import { FailedPage } from './FailedPage.tsx';

/** Keeps one failing page from taking the program with it; what was typed and saved is in the workbook. */
export class ErrorPage extends Component<{ readonly children: ReactNode }, { readonly failed: unknown }> {
  override state = { failed: null };

  static getDerivedStateFromError(error: unknown) {
    return { failed: error ?? 'unknown' };
  }

  override render() {
    const { failed } = this.state;
    if (failed === null) return this.props.children;
    return <FailedPage error={failed} onAgain={() => this.setState({ failed: null })} />;
  }
}
