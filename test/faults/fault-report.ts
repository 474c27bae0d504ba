/** What one harness found. `skipped` is neither passed nor failed: the machine did not allow the harness to run. */
export interface FaultReport {
  readonly harness: string;
  readonly outcome: 'passed' | 'failed' | 'skipped';
  /** One figure per line, as printed. */
  readonly figures: readonly string[];
}
