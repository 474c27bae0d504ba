import type { ReactNode } from 'react';

/** One sentence and the next act. */
export function EmptyState({ title, line, children }: { title: string; line?: string; children?: ReactNode }) {
  return (
    <div className="empty">
      <p>
        <strong>{title}</strong> {line}
      </p>
      {children}
    </div>
  );
}
