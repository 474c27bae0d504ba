import { Component, type ReactNode } from 'react';
import { WordingContext } from '../components/words.ts';

/** Keeps one failing page from taking the program with it; what was typed and saved is in the workbook. */
export class ErrorPage extends Component<{ readonly children: ReactNode }, { readonly failed: boolean }> {
  static override contextType = WordingContext;
  declare context: React.ContextType<typeof WordingContext>;
  override state = { failed: false };

  static getDerivedStateFromError() {
    return { failed: true };
  }

  override render() {
    if (!this.state.failed) return this.props.children;
    const { words } = this.context;
    return (
      <div className="empty" role="alert">
        <p>{words.frame.pageFailed}</p>
        <button type="button" className="control" onClick={() => this.setState({ failed: false })}>
          {words.frame.reloadPage}
        </button>
      </div>
    );
  }
}
